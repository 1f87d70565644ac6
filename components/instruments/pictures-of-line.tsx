import styles from './picture.module.css';
import { Bricks, PictureFrame, type Shown, shownValue, within } from './picture-frame';

/** The level on its course, or upright on its face: the bubble goes to the high side. The dot is its first end. */
export function LevelPicture(shown: Shown) {
  const { reading } = shown;
  const slope = reading?.unit === 'mm per m' ? within(shownValue(shown), -9, 9) : 0;
  const upright = reading?.what.startsWith('Lean') ?? false;
  const tilt = -slope * 0.5;
  const level = (
    <g transform={`rotate(${upright ? -tilt : tilt})`}>
      <rect className={styles.body} x={-126} y={-17} width={252} height={34} rx={3} />
      <rect x={-126} y={9} width={252} height={3} fill="var(--on-chalk)" opacity={0.35} />
      <rect className={styles.vial} x={-36} y={-10} width={72} height={18} rx={9} />
      <ellipse className={styles.bubble} cx={slope * 2.4} cy={-1} rx={11} ry={6.5} />
      <path className={styles.tick} d="M-13 -10 v18 M13 -10 v18" strokeWidth={1.5} />
      <circle cx={reading?.turned ? 112 : -112} cy={0} r={5} fill="var(--ochre)" stroke="var(--on-chalk)" />
    </g>
  );
  if (upright) {
    return (
      <PictureFrame>
        <g transform={`rotate(${slope * 0.5} 120 118)`}>
          {[0, 1, 2, 3, 4].map((row) => (
            <rect
              key={row}
              className={styles.brick}
              x={72}
              y={2 + row * 24}
              width={66}
              height={20}
              rx={1.5}
            />
          ))}
        </g>
        <g transform="translate(156 60) rotate(-90) scale(0.44)">{level}</g>
      </PictureFrame>
    );
  }
  return (
    <PictureFrame>
      <g transform={`rotate(${tilt} 160 74)`}>
        <Bricks x={8} y={74} count={4} width={73} height={34} />
      </g>
      <g transform="translate(160 56)">{level}</g>
    </PictureFrame>
  );
}

/** The bob hangs true; the face leaves it. */
export function PlumbPicture(shown: Shown) {
  const { reading } = shown;
  const size = within(shownValue(shown), 0, 24) * 1.4;
  const lean = reading?.words?.includes('back') ? -size : size;
  const wanders = reading?.what.startsWith('This line') ?? false;
  const rows = [0, 1, 2, 3, 4] as const;
  const shift = (row: number) => (wanders ? (row % 2 === 0 ? 0 : size) : (lean * (4 - row)) / 4);
  return (
    <PictureFrame>
      {rows.map((row) =>
        wanders ? (
          <g key={row}>
            <rect
              className={styles.brick}
              x={60}
              y={2 + row * 24}
              width={98 + shift(row) - size / 2}
              height={20}
            />
            <rect
              className={styles.brick}
              x={164 + shift(row) - size / 2}
              y={2 + row * 24}
              width={96 - shift(row) + size / 2}
              height={20}
            />
          </g>
        ) : (
          <rect
            key={row}
            className={styles.brick}
            x={70 + shift(row)}
            y={2 + row * 24}
            width={70}
            height={20}
            rx={1.5}
          />
        ),
      )}
      <g transform={`translate(${wanders ? 161 : 190} 0)`}>
        <line className={styles.line} x1={0} x2={0} y1={0} y2={88} />
        <path className={styles.steel} d="M-7 88 h14 l-2 14 l-5 12 l-5 -12 z" />
      </g>
      {!wanders && (
        <>
          <line className={styles.dimension} x1={140 + shift(0)} x2={190} y1={12} y2={12} />
          <line className={styles.dimension} x1={140 + shift(4)} x2={190} y1={84} y2={84} />
        </>
      )}
    </PictureFrame>
  );
}

/** Blocks at both ends, the line between them with its own sag, and the course under it; or seen from above, the face that bows. */
export function LinePicture(shown: Shown) {
  const { reading } = shown;
  const size = within(shownValue(shown), 0, 24) * 1.2;
  const bows = reading?.what.startsWith('Farthest') ?? false;
  const side = reading?.words?.includes('hollow') ? -1 : 1;
  const drop = reading?.words?.includes('high') ? -size : size;
  const rise = (index: number) =>
    bows ? side * size * (1 - Math.abs(index - 2) / 2.5) : (drop * (index - 2)) / 4;
  return (
    <PictureFrame>
      <Bricks x={20} y={bows ? 30 : 58} count={5} width={52} height={36} rise={rise} />
      <path className={styles.line} d={bows ? 'M12 94 H308' : 'M12 50 Q160 55 308 50'} />
      {[8, 300].map((x) => (
        <rect key={x} className={styles.blade} x={x} y={bows ? 86 : 42} width={12} height={16} rx={2} />
      ))}
      {bows && <line className={styles.dimension} x1={160} x2={160} y1={66 + side * size} y2={94} />}
    </PictureFrame>
  );
}

/** The triangle laid into the corner, seen from above. */
export function SquarePicture(shown: Shown) {
  const { reading } = shown;
  const off =
    reading?.unit === 'mm per m'
      ? within(shownValue(shown), 0, 30) * (reading.words === 'it closes' ? -0.35 : 0.35)
      : 0;
  return (
    <PictureFrame>
      <rect className={styles.brick} x={20} y={92} width={190} height={18} />
      <g transform={`rotate(${off} 210 92)`}>
        <rect className={styles.brick} x={192} y={6} width={18} height={86} />
        <path className={styles.line} d="M192 92 V14" />
      </g>
      <path className={styles.line} d="M192 92 H88" />
      <path className={styles.line} d="M88 92 L192 14" strokeDasharray="5 3" />
      <text x={140} y={86} textAnchor="middle">
        4
      </text>
      <text x={184} y={58} textAnchor="end">
        3
      </text>
      <text x={130} y={48} textAnchor="end">
        5
      </text>
      <g transform="translate(252 30)">
        <path className={styles.steel} d="M0 0 h54 v10 h-44 v60 h-10 z" />
      </g>
    </PictureFrame>
  );
}
