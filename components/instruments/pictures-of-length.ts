import { ring } from '../../lib/drawing/rings';
import { type Label, labelAt, lines, rect } from '../../lib/drawing/shape';
import { rectRing } from '../../lib/geometry/polygon';
import { formatInches, inches, type LengthSystem, type Mm } from '../../lib/units';
import {
  blade,
  bricks,
  CHALK,
  type Drawn,
  pointer,
  type Shown,
  shownValue,
  steel,
  TICK,
  within,
} from './picture-parts';

const PX_PER_MM = 4;
const MIDDLE = 190;

interface Marks {
  readonly step: Mm;
  /** So many steps to a number. */
  readonly each: number;
  readonly nameOf: (mark: number) => string;
}

const TAPE: Readonly<Record<LengthSystem, Marks>> = {
  mm: { step: 1, each: 10, nameOf: String },
  inches: { step: inches(1 / 16), each: 16, nameOf: (mark) => String(mark / 16) },
};

/** Millimetres with every fifth named, or sixteenths with every quarter inch. */
const GAUGE: Readonly<Record<LengthSystem, Marks>> = {
  mm: { step: 1, each: 5, nameOf: String },
  inches: {
    step: inches(1 / 16),
    each: 4,
    nameOf: (mark) => formatInches(inches(mark / 16)).replace(' in', ''),
  },
};

function onBlade(x: number, y: number, text: string): Label {
  return { ...labelAt(x, y, text), written: 11, strong: true };
}

/** The blade round the reading, with the thing measured above it; of a back, the squares counted. */
export function tapePicture(shown: Shown): Drawn {
  if (shown.reading?.unit === '%' || shown.reading?.unit === 'mm²') return countPicture(shown);
  const value = shown.reading?.unit === 'mm' ? shownValue(shown) : 0;
  const { step, each, nameOf } = TAPE[shown.system];
  const at = (mm: Mm) => MIDDLE + (mm - value) * PX_PER_MM;
  const from = Math.max(0, Math.ceil((value - MIDDLE / PX_PER_MM) / step));
  const to = Math.floor((value + (320 - MIDDLE) / PX_PER_MM) / step);
  const marks = Array.from({ length: Math.max(0, to - from + 1) }, (_, index) => from + index);
  const reach = (mark: number) => (mark % each === 0 ? 20 : mark % (each / 2) === 0 ? 14 : 8);
  const zero = at(0);
  const left = Math.max(-4, zero);
  return {
    shapes: [
      ...bricks([{ x: left, y: 62, width: MIDDLE - left, height: 44 }]),
      blade(rectRing(left, 24, 330, 36)),
      ...(zero > 0 ? [steel(rectRing(zero - 5, 18, 5, 48))] : []),
      lines(
        marks.map((mark) => ring(at(mark * step), 60, at(mark * step), 60 - reach(mark))),
        TICK,
      ),
      pointer(ring(MIDDLE, 60, MIDDLE - 6, 72, MIDDLE + 6, 72)),
      lines([ring(MIDDLE, 60, MIDDLE, 112)], CHALK),
    ],
    labels: marks
      .filter((mark) => mark % each === 0)
      .map((mark) => onBlade(at(mark * step), 32, nameOf(mark))),
  };
}

/** A counted square is 10 mm each way. */
const SQUARE_AREA = 100;

/** A hundred squares: so many of each hundred are covered, or so many squares make up the bare patch. */
function countPicture(shown: Shown): Drawn {
  const isShare = shown.reading?.unit === '%';
  const count = Math.round(isShare ? shownValue(shown) : shownValue(shown) / SQUARE_AREA);
  const squares = Array.from({ length: 100 }, (_, index) => ({
    x: 10 + (index % 20) * 15,
    y: 84 - Math.floor(index / 20) * 15,
    width: 14,
    height: 14,
  }));
  return {
    shapes: [
      ...squares
        .slice(0, count)
        .map((box) => (isShare ? rect(box, 'url:mortar') : blade(rectRing(box.x, box.y, 14, 14)))),
      ...bricks(squares.slice(count)),
    ],
  };
}

/** Half the gap of one mm of joint, px. */
const PX_EACH_WAY = 2;

/** A tapered gauge pushed into the joint until it stops: the mark at the face is the thickness. */
export function jointGaugePicture(shown: Shown): Drawn {
  const value = within(shown.reading?.unit === 'mm' ? shownValue(shown) : 0, 0, 26);
  const gap = Math.max(2, value * PX_EACH_WAY);
  const face = 140;
  const slope = 0.12;
  const tip = face - gap / slope / 2;
  const perMm = PX_EACH_WAY / slope / 2;
  const end = 312;
  const thick = (x: number) => (x - tip) * slope;
  const { step, each, nameOf } = GAUGE[shown.system];
  const marks = Array.from({ length: 40 }, (_, mark) => ({
    mark,
    x: face + (mark * step - value) * perMm,
  })).filter(({ mark, x }) => mark > 0 && x > Math.max(tip + 4, 6) && x < end - 4);
  return {
    shapes: [
      ...bricks([
        { x: -4, y: 60 + gap, width: face + 4, height: 60 },
        { x: -4, y: -2 - gap, width: face + 4, height: 62 },
      ]),
      rect({ x: -4, y: 60 - gap, width: Math.max(4, Math.min(face, tip)), height: 2 * gap }, 'url:mortar'),
      steel(ring(tip, 60, end, 60 + thick(end), end, 60 - thick(end))),
      lines(
        marks.map(({ mark, x }) => ring(x, 60, x, 60 + thick(x) * (mark % each === 0 ? 0.9 : 0.5))),
        TICK,
      ),
      pointer(ring(face, 60 + gap, face - 5, 70 + gap, face + 5, 70 + gap)),
    ],
    labels: marks
      .filter(({ mark, x }) => mark % each === 0 && thick(x) > 8)
      .map(({ mark, x }) => onBlade(x, 64 - Math.min(14, thick(x) - 1), nameOf(mark))),
  };
}
