import type { MortarMix } from '../../../lib/trade/mortar-mix';
import { formatNumber } from '../format-number';
import { Sheet } from './sheet';

const FOOT = 250;
const MOST_HIGH = 190;
const WIDE = 48;
const DIAL = { x: 345, y: 130, radius: 58 } as const;
const MINUTES_ROUND = 300;

/** Boxes as high as their volumes, and a dial of the minutes. */
export function MortarSheet(props: {
  readonly mix: MortarMix;
  readonly yielded: number;
  readonly minutes: number;
  readonly life: number | null;
  readonly label: string;
}) {
  const { mix, yielded, minutes, life, label } = props;
  const boxes = [
    ['cement', mix.cement, 'var(--slate)'],
    ['lime', mix.lime, 'var(--paper)'],
    ['sand', mix.sand, 'var(--ochre)'],
    ['mortar', yielded, 'var(--line)'],
  ] as const;
  const perPart = MOST_HIGH / Math.max(...boxes.map(([, volume]) => volume));
  return (
    <Sheet label={label} width={420} height={290}>
      {boxes.map(([name, volume, fill], index) => {
        const x = 12 + index * (WIDE + 16) + (index === 3 ? 10 : 0);
        const high = volume * perPart;
        return (
          <g key={name}>
            <rect
              x={x}
              y={FOOT - high}
              width={WIDE}
              height={high}
              fill={fill}
              stroke="var(--ink)"
              strokeWidth="1.4"
            />
            <text x={x + WIDE / 2} y={FOOT - high - 7} textAnchor="middle">
              {formatNumber(volume, 2)}
            </text>
            <text x={x + WIDE / 2} y={FOOT + 20} textAnchor="middle">
              {name}
            </text>
          </g>
        );
      })}
      <circle
        cx={DIAL.x}
        cy={DIAL.y}
        r={DIAL.radius}
        fill="var(--paper)"
        stroke="var(--ink)"
        strokeWidth="2"
      />
      {life !== null && <path d={sectorOf(life)} fill="var(--moss)" fillOpacity="0.3" stroke="var(--moss)" />}
      <path d={handOf(minutes)} stroke="var(--chalk)" strokeWidth="4" strokeLinecap="round" />
      <circle cx={DIAL.x} cy={DIAL.y} r="5" fill="var(--chalk)" />
      <text x={DIAL.x} y={DIAL.y + DIAL.radius + 24} textAnchor="middle">
        {formatNumber(minutes, 0)} min
      </text>
      <text x={DIAL.x} y={DIAL.y + DIAL.radius + 44} textAnchor="middle" className="quiet">
        once round: 5 h
      </text>
    </Sheet>
  );
}

function pointAt(minutes: number, radius: number): string {
  const turn = (2 * Math.PI * minutes) / MINUTES_ROUND;
  return `${(DIAL.x + radius * Math.sin(turn)).toFixed(2)} ${(DIAL.y - radius * Math.cos(turn)).toFixed(2)}`;
}

function handOf(minutes: number): string {
  return `M${DIAL.x} ${DIAL.y}L${pointAt(minutes, DIAL.radius - 8)}`;
}

function sectorOf(minutes: number): string {
  const isLarge = minutes > MINUTES_ROUND / 2 ? 1 : 0;
  return `M${DIAL.x} ${DIAL.y}V${DIAL.y - DIAL.radius}A${DIAL.radius} ${DIAL.radius} 0 ${isLarge} 1 ${pointAt(minutes, DIAL.radius)}z`;
}
