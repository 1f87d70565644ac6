import { formatLength, type LengthSystem, type Mm } from '../../../lib/units';
import type { LoadWay } from '../lintel-load';
import { DimensionLine, Sheet } from './sheet';

const WIDE = 420;
const LINTEL_Y = 230;
const BEND_DRAWN = 100;

/** The wall over an opening, the part that is taken to weigh on the lintel, and the bent lintel. */
export function LintelSheet(props: {
  readonly clear: Mm;
  readonly end: Mm;
  readonly high: Mm;
  readonly way: LoadWay;
  readonly deflection: Mm;
  readonly system: LengthSystem;
}) {
  const { clear, end, high, way, deflection, system } = props;
  const scale = Math.min(260 / (clear + 2 * end), 190 / Math.min(high, clear));
  const left = WIDE / 2 - (clear * scale) / 2;
  const right = WIDE - left;
  const outer = end * scale;
  const top = Math.max(20, LINTEL_Y - high * scale);
  const half = (clear + end) / 2;
  const from = WIDE / 2 - half * scale;
  const to = WIDE / 2 + half * scale;
  const apex = LINTEL_Y - half * scale;
  const sag = Math.min(70, deflection * scale * BEND_DRAWN);
  const load =
    way === 'triangle'
      ? `M${from} ${LINTEL_Y}L${WIDE / 2} ${apex}L${to} ${LINTEL_Y}z`
      : `M${from} ${LINTEL_Y}V${top}H${to}V${LINTEL_Y}z`;
  return (
    <Sheet
      label={`Opening of ${formatLength(clear, system)} under ${way === 'triangle' ? 'a triangle of wall' : 'the full height of wall'}`}
      width={WIDE}
      height={350}
    >
      <path
        d={`M10 ${top}H${WIDE - 10}V340H${right}V${LINTEL_Y}H${left}V340H10z`}
        fill="var(--clay)"
        fillOpacity="0.16"
        stroke="var(--ink)"
      />
      <path d={bedsOf(top)} stroke="var(--clay)" strokeOpacity="0.35" />
      <path d={load} fill="var(--clay)" fillOpacity="0.45" stroke="var(--clay)" strokeWidth="1.5" />
      <path
        d={`M${left - outer} ${LINTEL_Y}H${left}Q${WIDE / 2} ${LINTEL_Y + 2 * sag} ${right} ${LINTEL_Y}H${right + outer}`}
        fill="none"
        stroke="var(--chalk)"
        strokeWidth="6"
      />
      <DimensionLine x1={left} y1={325} x2={right} y2={325} text={formatLength(clear, system)} />
    </Sheet>
  );
}

/** A bed joint every 16 px, for looks only. */
function bedsOf(top: number): string {
  let path = '';
  for (let y = LINTEL_Y - 16; y > top; y -= 16) path += `M10 ${y}H${WIDE - 10}`;
  return path;
}
