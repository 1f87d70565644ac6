import { scaleLinear } from 'd3-scale';
import type { Ability } from '../../../lib/classes/statistics/rasch';
import styles from './plots.module.css';

const WIDTH = 600;
/** Three standard deviations of the prior to either side. */
const along = scaleLinear([-3, 3], [10, WIDTH - 10]).clamp(true);

/** One learner on the group's scale, two standard errors to either side, with the others as small dots above. */
export function AbilityPlot({
  own: { ability, standardError },
  others,
  label,
}: {
  readonly own: Ability;
  readonly others: readonly number[];
  readonly label: string;
}) {
  return (
    <svg className={styles.scale} viewBox={`0 0 ${WIDTH} 106`} role="img" aria-label={label}>
      {others.map((other, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: dots have no name, and two may lie on one spot
        <circle key={index} className={styles.others} cx={along(other)} cy={18} r={4} />
      ))}
      <line className={styles.base} x1={10} x2={WIDTH - 10} y1={42} y2={42} />
      <line
        className={styles.band}
        x1={along(ability - 2 * standardError)}
        x2={along(ability + 2 * standardError)}
        y1={42}
        y2={42}
      />
      <circle className={styles.dot} cx={along(ability)} cy={42} r={8} />
      {along.ticks(7).map((tick) => (
        <g key={tick}>
          <line className={styles.tick} x1={along(tick)} x2={along(tick)} y1={54} y2={60} />
          <text x={along(tick)} y={76} textAnchor="middle">
            {tick > 0 ? `+${tick}` : String(tick).replace('-', '−')}
          </text>
        </g>
      ))}
      <text x={10} y={100}>
        weaker
      </text>
      <text x={WIDTH - 10} y={100} textAnchor="end">
        stronger
      </text>
    </svg>
  );
}
