import { scaleLinear } from 'd3-scale';
import { curveMonotoneX, line } from 'd3-shape';
import styles from './plots.module.css';

const WIDTH = 600;
const HEIGHT = 150;
const up = scaleLinear([0, 1], [HEIGHT - 28, 12]);

/** Wall scores in the order in which they were handed in, as the mean of each and the four before it. */
export function ScoresPlot({
  scores,
  label,
}: {
  readonly scores: readonly number[];
  readonly label: string;
}) {
  const along = scaleLinear([1, Math.max(2, scores.length)], [46, WIDTH - 10]);
  const means = scores.map((_, i) => {
    const last = scores.slice(Math.max(0, i - 4), i + 1);
    return last.reduce((sum, score) => sum + score, 0) / last.length;
  });
  const path = line<number>()
    .x((_, i) => along(i + 1))
    .y((mean) => up(mean))
    .curve(curveMonotoneX);
  return (
    <svg className={styles.scale} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={label}>
      {[0, 0.5, 1].map((tick) => (
        <g key={tick}>
          <line className={styles.base} x1={46} x2={WIDTH - 10} y1={up(tick)} y2={up(tick)} />
          <text x={38} y={up(tick) + 4} textAnchor="end">
            {tick * 100}
          </text>
        </g>
      ))}
      <path className={styles.curve} d={path(means) ?? ''} />
      {scores.map((score, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the place in the row is what a dot is
        <circle key={i} className={styles.others} cx={along(i + 1)} cy={up(score)} r={3.5} />
      ))}
      <text x={46} y={HEIGHT - 4}>
        first wall
      </text>
      <text x={WIDTH - 10} y={HEIGHT - 4} textAnchor="end">
        wall {scores.length}
      </text>
    </svg>
  );
}
