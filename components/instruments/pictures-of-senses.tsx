import styles from './picture.module.css';
import { Bricks, PictureFrame, type Shown, shownValue, within } from './picture-frame';

/** Held under the edge, it shows the underside. */
export function MirrorPicture({ reading }: Shown) {
  const none = reading?.value === 0;
  return (
    <PictureFrame>
      <Bricks x={12} y={4} count={4} width={70} height={34} />
      {!none && <path className={styles.steel} d="M12 40 h292 v7 h-292 z" />}
      <g transform="translate(160 82)">
        <path className={styles.line} d="M44 12 L128 34" strokeWidth={6} strokeLinecap="round" />
        <ellipse className={styles.body} rx={52} ry={27} />
        <ellipse className={styles.vial} rx={47} ry={23} />
        <path className={none ? styles.brick : styles.steel} d="M-38 -6 L38 -6 L32 8 L-32 8 Z" />
      </g>
    </PictureFrame>
  );
}

/** A joint cut through: mortar as far as it is full, and the probe that finds where. */
export function ProbePicture(shown: Shown) {
  const { reading } = shown;
  const full = reading?.unit === '%' ? within(shownValue(shown), 0, 100) / 100 : 1;
  const back = reading?.unit === 'mm' ? within(shownValue(shown), 0, 20) * 3 : 0;
  const deep = 150;
  const from = 200 - back - (1 - full) * deep;
  return (
    <PictureFrame>
      <rect className={styles.brick} x={50} y={-4} width={150} height={54} />
      <rect className={styles.brick} x={50} y={72} width={150} height={54} />
      <rect className={styles.mortar} x={50} y={50} width={Math.max(0, from - 50)} height={22} />
      <path className={styles.line} d={`M${from + 3} 61 H288`} strokeWidth={3} />
      <rect className={styles.blade} x={262} y={52} width={50} height={18} rx={7} />
      <path className={styles.pointer} d="M200 50 l-5 -10 h10 z" />
    </PictureFrame>
  );
}

/** It sounds where metal is: the strap behind is only guessed at. */
export function TieFinderPicture({ reading }: Shown) {
  const found = reading !== null && reading.words !== 'none found';
  return (
    <PictureFrame>
      <rect className={styles.mortar} x={8} y={6} width={304} height={108} />
      <Bricks x={8} y={6} count={2} width={150} height={48} />
      <Bricks x={-70} y={66} count={3} width={150} height={48} />
      {found && <path className={styles.dimension} d="M150 60 h46" strokeDasharray="4 3" strokeWidth={4} />}
      <g transform="translate(173 60)">
        <rect className={styles.body} x={-20} y={-34} width={40} height={68} rx={8} />
        <circle
          cx={0}
          cy={-18}
          r={7}
          fill={found ? 'var(--ochre)' : 'var(--on-chalk)'}
          opacity={found ? 1 : 0.4}
        />
        {found && <path className={styles.line} d="M30 -16 q8 16 0 32 M40 -24 q12 24 0 48" />}
      </g>
    </PictureFrame>
  );
}

/** The sound drawn, for an ear that cannot tell and an eye that can: solid is short and quick, hollow is long and slow. */
export function TapPicture({ reading }: Shown) {
  const hollow = reading?.words?.startsWith('hollow') ?? false;
  const wave = Array.from({ length: 37 }, (_, step) => {
    const fade = 1 - step / (hollow ? 40 : 14);
    const high = Math.max(0, fade) * (step % (hollow ? 6 : 2) < (hollow ? 3 : 1) ? -1 : 1) * 34;
    return `L${128 + step * 5} ${60 + high}`;
  });
  return (
    <PictureFrame>
      <rect className={styles.brick} x={8} y={30} width={84} height={60} rx={2} />
      <g transform="rotate(24 92 60)">
        <rect className={styles.blade} x={94} y={6} width={16} height={44} rx={7} />
      </g>
      <path className={styles.dimension} d="M122 60 H314" />
      {reading !== null && (
        <path className={styles.line} d={`M122 60 ${wave.join(' ')}`} strokeLinejoin="round" />
      )}
    </PictureFrame>
  );
}

const GRAINS = [
  [96, 88],
  [112, 96],
  [126, 90],
  [142, 100],
  [158, 92],
  [104, 104],
  [134, 108],
  [150, 110],
  [118, 110],
  [88, 98],
] as const;

/** A nail along the joint, and the sand that comes off. */
export function ScratchPicture({ reading }: Shown) {
  const words = reading?.words ?? '';
  const grains = words.startsWith('it crumbles') ? 10 : words.startsWith('soft') ? 4 : 0;
  return (
    <PictureFrame>
      <rect className={styles.brick} x={-4} y={4} width={328} height={40} />
      <rect className={styles.mortar} x={-4} y={44} width={328} height={28} />
      <rect className={styles.brick} x={-4} y={72} width={328} height={50} />
      <path
        className={styles.dimension}
        d="M60 60 H170"
        strokeWidth={grains > 0 ? 5 : 1.5}
        strokeLinecap="round"
      />
      {GRAINS.slice(0, grains).map(([x, y]) => (
        <circle
          key={`${x} ${y}`}
          cx={x}
          cy={y}
          r={2.6}
          fill="var(--blade)"
          stroke="var(--blade-ink)"
          strokeWidth={0.6}
        />
      ))}
      <path className={styles.steel} d="M170 60 L262 20 l4 8 L176 64 z" />
      <rect className={styles.steel} x={258} y={14} width={7} height={22} transform="rotate(-24 262 25)" />
    </PictureFrame>
  );
}

/** The thermometer in the shade, and the ticket of the mixing. */
export function ThermometerPicture(shown: Shown) {
  const { reading } = shown;
  const isAir = reading?.unit === '°C';
  const air = isAir ? within(shownValue(shown), -10, 40) : 15;
  const top = 92 - ((air + 10) / 50) * 76;
  return (
    <PictureFrame>
      <rect className={styles.paper} x={58} y={6} width={22} height={98} rx={11} />
      <circle cx={69} cy={100} r={14} fill="var(--clay)" stroke="var(--edge)" />
      <rect x={65} y={top} width={8} height={100 - top} fill="var(--clay)" opacity={isAir ? 1 : 0.35} />
      {[-10, 0, 10, 20, 30, 40].map((degrees) => (
        <g key={degrees}>
          <line
            className={styles.dimension}
            x1={82}
            x2={90}
            y1={92 - ((degrees + 10) / 50) * 76}
            y2={92 - ((degrees + 10) / 50) * 76}
          />
          <text x={94} y={96 - ((degrees + 10) / 50) * 76}>
            {degrees}
          </text>
        </g>
      ))}
      <path
        className={styles.paper}
        d="M150 10 h140 v100 l-10 -5 l-10 5 l-10 -5 l-10 5 l-10 -5 l-10 5 l-10 -5 l-10 5 l-10 -5 l-10 5 l-10 -5 l-10 5 l-10 -5 l-10 5 z"
      />
      <text x={220} y={30} textAnchor="middle" fontWeight={700}>
        Mixing ticket
      </text>
      <path className={styles.dimension} d="M162 40 h116 M162 62 h116 M162 84 h116" />
      {reading !== null && !isAir && (
        <text x={220} y={78} textAnchor="middle" fontSize={15} fontWeight={700}>
          {reading.unit === 'minutes' ? `${reading.value} min` : (reading.words ?? '')}
        </text>
      )}
    </PictureFrame>
  );
}
