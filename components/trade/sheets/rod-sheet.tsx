import type { Gauge } from '../../../lib/trade/coursing';
import { formatLength, type LengthSystem, type Mm } from '../../../lib/units';
import { DimensionLine, Sheet } from './sheet';

const HIGH = 460;
const FOOT = 490;

/** A gauge rod beside the courses it marks. */
export function RodSheet(props: {
  readonly gauge: Gauge;
  readonly unit: Mm;
  readonly height: Mm;
  readonly system: LengthSystem;
}) {
  const { gauge, unit, height, system } = props;
  const perMm = HIGH / height;
  const tops = Array.from({ length: gauge.courses }, (_, index) => (index + 1) * gauge.gauge);
  return (
    <Sheet
      label={`Gauge rod of ${formatLength(height, system)} with ${gauge.courses} courses`}
      width={420}
      height={520}
    >
      {tops.map((top) => (
        <rect
          key={top}
          x="150"
          y={FOOT - top * perMm}
          width="180"
          height={unit * perMm}
          fill="var(--clay)"
          fillOpacity="0.35"
          stroke="var(--clay)"
          strokeWidth="0.7"
        />
      ))}
      <rect x="100" y={FOOT - HIGH} width="26" height={HIGH} fill="var(--ochre-wash)" stroke="var(--ink)" />
      {tops.map((top, index) => (
        <path
          key={top}
          d={`M100 ${FOOT - top * perMm}h${index % 4 === 3 ? 26 : 14}`}
          stroke="var(--ink)"
          strokeWidth={index % 4 === 3 ? 2.2 : 1}
        />
      ))}
      {tops.map((top, index) =>
        index % 4 === 3 ? (
          <text key={top} x="94" y={FOOT - top * perMm + 4} textAnchor="end">
            {index + 1}
          </text>
        ) : null,
      )}
      <DimensionLine
        x1={350}
        y1={FOOT}
        x2={350}
        y2={FOOT - HIGH}
        text={formatLength(height, system)}
        gap={8}
      />
    </Sheet>
  );
}
