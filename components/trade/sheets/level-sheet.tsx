import type { Mm } from '../../../lib/units';
import { Sheet } from './sheet';

const DRAWN = 20;
const BED = 200;
/** Where the string of the bob hangs, and pixels a mm of its gap to the wall. */
const BOB = 318;
const GAP_DRAWN = 0.6;
const DEGREES = 180 / Math.PI;

/** A level on a sloping bed with its vial, and a bob beside a wall. */
export function LevelSheet(props: {
  readonly slope: number;
  /** What the level shows, in words. */
  readonly reads: string;
  readonly isTurned: boolean;
  /** Of the bubble, mm, + to the right. */
  readonly move: Mm;
  readonly above: Mm;
  readonly below: Mm;
}) {
  const { slope, reads, isTurned, move, above, below } = props;
  const turn = -Math.atan((slope / 1000) * DRAWN) * DEGREES;
  const bubble = Math.max(-44, Math.min(44, move * DRAWN));
  return (
    <Sheet label={`The level reads ${reads}`} width={420} height={260}>
      <g transform={`rotate(${turn.toFixed(2)} 145 ${BED})`}>
        <path
          d={`M10 ${BED}H280V${BED + 44}H10z`}
          fill="var(--clay)"
          fillOpacity="0.35"
          stroke="var(--ink)"
        />
        <rect
          x="25"
          y={BED - 40}
          width="240"
          height="40"
          fill="var(--ochre-wash)"
          stroke="var(--ink)"
          strokeWidth="1.5"
        />
        <circle cx={isTurned ? 250 : 40} cy={BED - 20} r="6" fill="var(--ink)" />
        <rect x="90" y={BED - 31} width="110" height="22" rx="11" fill="var(--raised)" stroke="var(--ink)" />
        <ellipse
          cx={145 + bubble}
          cy={BED - 20}
          rx="15"
          ry="8"
          fill="var(--moss)"
          fillOpacity="0.6"
          stroke="var(--ink)"
        />
        <path d={`M129 ${BED - 32}v24M161 ${BED - 32}v24`} stroke="var(--ink)" strokeWidth="2" />
      </g>
      <path
        d={`M412 30V240H${BOB + below * GAP_DRAWN}L${BOB + above * GAP_DRAWN} 30z`}
        fill="var(--clay)"
        fillOpacity="0.35"
        stroke="var(--ink)"
      />
      <path d={`M${BOB} 10V216`} stroke="var(--chalk)" strokeWidth="2" />
      <path d={`M${BOB - 7} 214h14l-7 24z`} fill="var(--chalk)" />
    </Sheet>
  );
}
