import { formatInches, inches, type LengthSystem, type Mm } from '../../lib/units';
import styles from './picture.module.css';
import { PictureFrame, type Shown, shownValue, within } from './picture-frame';

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

/** The blade round the reading, with the thing measured above it; of a back, the squares counted. */
export function TapePicture(shown: Shown) {
  if (shown.reading?.unit === '%' || shown.reading?.unit === 'mm²') return <CountPicture {...shown} />;
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
      <line className={styles.line} x1={MIDDLE} x2={MIDDLE} y1={8} y2={60} />
    </PictureFrame>
  );
}

const SQUARES = Array.from({ length: 100 }, (_, index) => index);
/** A counted square is 10 mm each way. */
const SQUARE_AREA = 100;

/** A hundred squares: so many of each hundred are covered, or so many squares make up the bare patch. */
function CountPicture(shown: Shown) {
  const isShare = shown.reading?.unit === '%';
  const count = Math.round(isShare ? shownValue(shown) : shownValue(shown) / SQUARE_AREA);
  return (
    <PictureFrame>
      {SQUARES.map((square) => (
        <rect
          key={square}
          className={square < count ? (isShare ? styles.mortar : styles.blade) : styles.brick}
          x={10 + (square % 20) * 15}
          y={22 + Math.floor(square / 20) * 15}
          width={14}
          height={14}
        />
      ))}
    </PictureFrame>
  );
}

/** Half the gap of one mm of joint, px. */
const PX_EACH_WAY = 2;

/** How the gauge is marked: millimetres with every fifth named, or sixteenths with every quarter inch. */
const GAUGE_MARKS: Readonly<
  Record<
    LengthSystem,
    { readonly step: Mm; readonly each: number; readonly nameOf: (mark: number) => string }
  >
> = {
  mm: { step: 1, each: 5, nameOf: String },
  inches: {
    step: inches(1 / 16),
    each: 4,
    nameOf: (mark) => formatInches(inches(mark / 16)).replace(' in', ''),
  },
};

/** A tapered gauge pushed into the joint until it stops: the mark at the face is the thickness. */
export function JointGaugePicture(shown: Shown) {
  const value = within(shown.reading?.unit === 'mm' ? shownValue(shown) : 0, 0, 26);
  const gap = Math.max(2, value * PX_EACH_WAY);
  const face = 140;
  const slope = 0.12;
  const tip = face - gap / slope / 2;
  const perMm = PX_EACH_WAY / slope / 2;
  const end = 312;
  const thick = (x: number) => (x - tip) * slope;
  const { step, each, nameOf } = GAUGE_MARKS[shown.system];
  const marks = Array.from({ length: 40 }, (_, mark) => ({
    mark,
    x: face + (mark * step - value) * perMm,
  })).filter(({ mark, x }) => mark > 0 && x > Math.max(tip + 4, 6) && x < end - 4);
  return (
    <PictureFrame>
      <rect className={styles.brick} x={-4} y={-gap} width={face + 4} height={60} />
      <rect className={styles.brick} x={-4} y={60 + gap} width={face + 4} height={62} />
      <rect
        className={styles.mortar}
        x={-4}
        y={60 - gap}
        width={Math.max(4, Math.min(face, tip))}
        height={2 * gap}
      />
      <path className={styles.steel} d={`M${tip} 60 L${end} ${60 - thick(end)} V${60 + thick(end)} Z`} />
      {marks.map(({ mark, x }) => (
        <line
          key={mark}
          className={styles.tick}
          x1={x}
          x2={x}
          y1={60}
          y2={60 - thick(x) * (mark % each === 0 ? 0.9 : 0.5)}
        />
      ))}
      {marks
        .filter(({ mark, x }) => mark % each === 0 && thick(x) > 8)
        .map(({ mark, x }) => (
          <text
            key={mark}
            x={x}
            y={60 + Math.min(14, thick(x) - 1)}
            textAnchor="middle"
            className={styles.onBlade}
          >
            {nameOf(mark)}
          </text>
        ))}
      <path className={styles.pointer} d={`M${face} ${60 - gap} l-5 -10 h10 z`} />
    </PictureFrame>
  );
}
