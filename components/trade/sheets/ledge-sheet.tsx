import { overhangMarksOf } from '../../../lib/trade/overhang';
import { formatLength, type LengthSystem, type Mm } from '../../../lib/units';
import { DimensionLine, Sheet, useHatch } from './sheet';

const EDGE_X = 205;
const TOP = 60;
const UNIT_HIGH = 114;
/** Degrees, once it tips; for looks. */
const TIPPED = 14;

/** A cut through a ledge and the unit on it. */
export function LedgeSheet(props: {
  readonly depth: Mm;
  readonly overhang: Mm;
  readonly system: LengthSystem;
}) {
  const { depth, overhang, system } = props;
  const { defs, brick, concrete } = useHatch();
  const marks = overhangMarksOf(depth);
  const perMm = Math.min(2, 185 / depth);
  const wide = depth * perMm;
  const face = EDGE_X + overhang * perMm;
  const left = face - wide;
  const bed = TOP + UNIT_HIGH;
  const middle = face - wide / 2;
  const tips = overhang >= marks.tipping;
  const weight = tips ? turned(middle, TOP + UNIT_HIGH / 2, bed) : { x: middle, y: TOP + UNIT_HIGH / 2 };
  return (
    <Sheet
      label={`Unit ${formatLength(depth, system)} deep, ${formatLength(overhang, system)} past the edge of its ledge${tips ? ', tipping' : ''}`}
      width={420}
      height={300}
    >
      {defs}
      <rect
        x="-100"
        y={bed}
        width={EDGE_X + 100}
        height="130"
        fill={concrete}
        stroke="var(--ink)"
        strokeWidth="1.5"
      />
      <g transform={tips ? `rotate(${TIPPED} ${EDGE_X} ${bed})` : undefined}>
        <rect
          x={left}
          y={TOP}
          width={wide}
          height={UNIT_HIGH}
          fill={brick}
          stroke="var(--ink)"
          strokeWidth="1.5"
        />
      </g>
      <WeightArrow {...weight} />
      <path d={`M${EDGE_X} ${TOP - 44}V${bed}`} stroke="var(--slate)" strokeDasharray="2 3" />
      {overhang > 0 && (
        <DimensionLine
          x1={EDGE_X}
          y1={TOP - 22}
          x2={face}
          y2={TOP - 22}
          text={formatLength(overhang, system)}
        />
      )}
      {[
        [marks.kern, 'quarter'],
        [marks.third, 'third'],
        [marks.tipping, 'half: tips'],
      ].map(([at, name], index) => {
        const x = EDGE_X + Number(at) * perMm;
        const y = bed + 92 - index * 26;
        return (
          <g key={name}>
            <path d={`M${x} ${bed + 4}V${y}h6`} stroke="var(--slate)" fill="none" />
            <text x={x + 10} y={y + 4}>
              {name}, {formatLength(Number(at), system)}
            </text>
          </g>
        );
      })}
      <text x="10" y={bed + 60}>
        ledge
      </text>
    </Sheet>
  );
}

/** Where a point of the tipped unit comes to lie. */
function turned(x: number, y: number, bed: number): { readonly x: number; readonly y: number } {
  const angle = (TIPPED * Math.PI) / 180;
  const [dx, dy] = [x - EDGE_X, y - bed];
  return {
    x: EDGE_X + dx * Math.cos(angle) - dy * Math.sin(angle),
    y: bed + dx * Math.sin(angle) + dy * Math.cos(angle),
  };
}

/** The weight, straight down from the middle of the unit. */
function WeightArrow({ x, y }: { readonly x: number; readonly y: number }) {
  return (
    <>
      <path d={`M${x} ${y}v72`} stroke="var(--chalk)" strokeWidth="2.5" strokeDasharray="6 4" />
      <path d={`M${x - 6} ${y + 70}h12l-6 12z`} fill="var(--chalk)" />
      <circle cx={x} cy={y} r="5" fill="var(--chalk)" stroke="var(--raised)" />
    </>
  );
}
