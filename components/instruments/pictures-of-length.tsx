import { inches, type LengthSystem, type Mm } from '../../lib/units';
import styles from './picture.module.css';
import { Bricks, PictureFrame, type Shown, shownValue, within } from './picture-frame';

const PX_PER_MM = 4;
const MIDDLE = 190;

/** How a blade is marked: the step, how many steps to a number, and what the number counts. */
const MARKS: Readonly<
  Record<
    LengthSystem,
    { readonly step: Mm; readonly each: number; readonly half: number; readonly number: number }
  >
> = {
  mm: { step: 1, each: 10, half: 5, number: 10 },
  inches: { step: inches(1 / 16), each: 16, half: 8, number: 1 },
};

/** The blade round the reading, with the thing measured above it. */
export function TapePicture(shown: Shown) {
  const value = shown.reading?.unit === 'mm' ? shownValue(shown) : 0;
  const { step, each, half, number } = MARKS[shown.system];
  const at = (mm: Mm) => MIDDLE + (mm - value) * PX_PER_MM;
  const from = Math.max(0, Math.ceil((value - MIDDLE / PX_PER_MM) / step));
  const to = Math.floor((value + (320 - MIDDLE) / PX_PER_MM) / step);
  const marks = Array.from({ length: Math.max(0, to - from + 1) }, (_, index) => from + index);
  const zero = at(0);
  return (
    <PictureFrame>
      <rect
        className={styles.brick}
        x={Math.max(-4, zero)}
        y={14}
        width={MIDDLE - Math.max(-4, zero)}
        height={44}
      />
      <rect className={styles.blade} x={Math.max(-4, zero)} y={60} width={330} height={36} />
      {zero > 0 && <path className={styles.steel} d={`M${zero} 54 h-5 v48 h5 z`} />}
      {marks.map((mark) => (
        <line
          key={mark}
          className={styles.tick}
          x1={at(mark * step)}
          x2={at(mark * step)}
          y1={60}
          y2={mark % each === 0 ? 80 : mark % half === 0 ? 74 : 68}
        />
      ))}
      {marks
        .filter((mark) => mark % each === 0)
        .map((mark) => (
          <text key={mark} className={styles.onBlade} x={at(mark * step)} y={92} textAnchor="middle">
            {(mark / each) * number}
          </text>
        ))}
      <path className={styles.pointer} d={`M${MIDDLE} 60 l-6 -12 h12 z`} />
      <line className={styles.line} x1={MIDDLE} x2={MIDDLE} y1={8} y2={98} />
    </PictureFrame>
  );
}

/** A tapered gauge pushed into the joint until it stops: the mark at the face is the thickness. */
export function JointGaugePicture(shown: Shown) {
  const value = within(shown.reading?.unit === 'mm' ? shownValue(shown) : 0, 0, 26);
  const gap = Math.max(3, value * 3);
  const face = 140;
  const slope = 0.12;
  const tip = face - gap / slope / 2;
  const perMm = 3 / slope / 2;
  const end = 312;
  const thick = (x: number) => (x - tip) * slope;
  const marks = Array.from({ length: 40 }, (_, mm) => ({ mm, x: face + (mm - value) * perMm })).filter(
    ({ mm, x }) => mm > 0 && x > Math.max(tip + 4, 6) && x < end - 4,
  );
  return (
    <PictureFrame>
      <rect
        className={styles.brick}
        x={-4}
        y={60 - gap - 60}
        width={face + 4}
        height={60 - gap + 60 - (60 - gap)}
      />
      <rect
        className={styles.mortar}
        x={-4}
        y={60 - gap}
        width={Math.max(0, tip - 8)}
        height={2 * gap}
        opacity={0}
      />
      <rect className={styles.brick} x={-4} y={60 + gap} width={face + 4} height={62} />
      <rect
        className={styles.mortar}
        x={-4}
        y={60 - gap}
        width={Math.max(4, Math.min(face, tip))}
        height={2 * gap}
      />
      <path className={styles.steel} d={`M${tip} 60 L${end} ${60 - thick(end)} V${60 + thick(end)} Z`} />
      {marks.map(({ mm, x }) => (
        <line
          key={mm}
          className={styles.tick}
          x1={x}
          x2={x}
          y1={60}
          y2={60 - thick(x) * (mm % 5 === 0 ? 0.9 : 0.5)}
        />
      ))}
      {marks
        .filter(({ mm, x }) => mm % 5 === 0 && thick(x) > 8)
        .map(({ mm, x }) => (
          <text
            key={mm}
            x={x}
            y={60 + Math.min(14, thick(x) - 1)}
            textAnchor="middle"
            className={styles.onBlade}
          >
            {mm}
          </text>
        ))}
      <path className={styles.pointer} d={`M${face} ${60 - gap} l-5 -10 h10 z`} />
    </PictureFrame>
  );
}

const LEAVES = [0, 1, 2, 3, 4] as const;

/** The edge on two sound units, with a feeler leaf in the gap that is left. */
export function FeelerPicture(shown: Shown) {
  const value = within(shownValue(shown), 0, 9);
  const back = shown.reading?.words === 'set back';
  const gap = value * 2.2;
  return (
    <PictureFrame>
      <Bricks
        x={10}
        y={62}
        count={3}
        width={72}
        height={50}
        rise={(index) => (index === 1 ? (back ? gap : -gap) : 0)}
      />
      <rect className={styles.steel} x={4} y={50 - (back ? 0 : gap)} width={236} height={12} rx={1} />
      {!back && gap > 0 && <rect className={styles.blade} x={14} y={62 - gap} width={50} height={gap} />}
      {back && gap > 0 && <rect className={styles.blade} x={100} y={62} width={46} height={gap} />}
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
    </PictureFrame>
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
      <rect className={styles.mortar} x={110} y={0} width={206} height={116} />
      {rows.map((row) => (
        <g key={row} transform={`translate(0 ${98 - row * (22 + step)})`}>
          <Bricks x={110 - (row % 2) * 38} y={0} count={row % 2 ? 4 : 3} width={66} height={17} />
        </g>
      ))}
      <rect className={styles.blade} x={62} y={-2} width={26} height={122} />
      <rect x={-2} y={0} width={64} height={120} fill="var(--raised)" />
      <rect x={88} y={0} width={21} height={120} fill="var(--raised)" />
      {rows.map((row) => (
        <g key={row}>
          <line
            className={styles.tick}
            x1={62}
            x2={80}
            y1={115 - row * 22}
            y2={115 - row * 22}
            strokeWidth={1.4}
          />
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
