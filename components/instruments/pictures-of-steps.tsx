import styles from './picture.module.css';
import { Bricks, PictureFrame, type Shown, shownValue, within } from './picture-frame';

const LEAVES = [0, 1, 2, 3, 4] as const;

/** The edge on two sound units, with a feeler leaf in the gap that is left; or a strap, with leaves beside it as thick as it is. */
export function FeelerPicture(shown: Shown) {
  const { reading } = shown;
  const gap = within(shownValue(shown), 0, 9) * 2.2;
  const back = reading?.words === 'set back';
  const twists = reading?.what.startsWith('One end') ?? false;
  const side = reading?.words?.startsWith('left') ? -1 : 1;
  if (reading?.fine) return <StrapPicture />;
  return (
    <PictureFrame>
      <Bricks x={10} y={62} count={1} width={72} height={50} />
      <Bricks x={162} y={62} count={1} width={72} height={50} />
      <rect
        className={styles.brick}
        x={86}
        y={62 + (twists ? 0 : back ? gap : -gap)}
        width={72}
        height={50}
        rx={1.5}
        transform={twists ? `rotate(${-side * gap * 0.3} 122 62)` : undefined}
      />
      <rect
        className={styles.steel}
        x={4}
        y={50 - (back ? 0 : twists ? gap / 2 : gap)}
        width={236}
        height={12}
        rx={1}
      />
      {gap > 0 && (
        <rect
          className={styles.blade}
          x={back ? 100 : side === 1 ? 14 : 182}
          y={back ? 62 : 62 - (twists ? gap / 2 : gap)}
          width={46}
          height={twists ? gap / 2 : gap}
        />
      )}
      <Leaves />
    </PictureFrame>
  );
}

function StrapPicture() {
  return (
    <PictureFrame>
      <rect className={styles.mortar} x={4} y={84} width={240} height={30} />
      <path className={styles.strap} d="M14 74 q8 -7 16 0 t16 0 t16 0 t16 0 t16 0 t16 0 t16 0" />
      {[0, 1, 2].map((leaf) => (
        <rect key={leaf} className={styles.blade} x={150} y={79 - leaf * 4} width={80} height={4} />
      ))}
      <rect className={styles.steel} x={20} y={56} width={204} height={12} rx={1} />
      <Leaves />
    </PictureFrame>
  );
}

function Leaves() {
  return (
    <g transform="translate(292 92)">
      {LEAVES.map((leaf) => (
        <rect
          key={leaf}
          className={styles.steel}
          x={-5}
          y={-66}
          width={10}
          height={66}
          rx={4}
          transform={`rotate(${-44 + leaf * 14})`}
        />
      ))}
      <circle className={styles.body} r={8} />
    </g>
  );
}

/** The rod's marks beside the courses: where they part, the wall has gained or lost. */
export function RodPicture(shown: Shown) {
  const { reading } = shown;
  const over = reading?.words?.startsWith('under') || reading?.words?.startsWith('less') ? -1 : 1;
  const step = within(shownValue(shown) * 0.25, 0, 5) * over;
  const rows = [0, 1, 2, 3, 4] as const;
  return (
    <PictureFrame>
      <svg x={110} y={0} width={206} height={116} aria-hidden="true">
        <rect className={styles.mortar} width={206} height={116} />
        {rows.map((row) => (
          <g key={row} transform={`translate(0 ${98 - row * (22 + step)})`}>
            <Bricks x={-(row % 2) * 38} y={0} count={row % 2 ? 4 : 3} width={66} height={17} />
          </g>
        ))}
      </svg>
      <rect className={styles.blade} x={62} y={-2} width={26} height={124} />
      {rows.map((row) => (
        <g key={row}>
          <line className={styles.tick} x1={62} x2={80} y1={115 - row * 22} y2={115 - row * 22} />
          <line
            className={styles.dimension}
            x1={88}
            x2={108}
            y1={115 - row * 22}
            y2={115 - row * (22 + step)}
          />
          <text x={56} y={118 - row * 22} textAnchor="end">
            {row + 1}
          </text>
        </g>
      ))}
    </PictureFrame>
  );
}
