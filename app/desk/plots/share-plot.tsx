import { scaleLinear } from 'd3-scale';
import type { ShareLimits } from '../../../lib/marking/wilson';
import styles from './plots.module.css';

const WIDTH = 200;
const MIDDLE = 12;
const along = scaleLinear([0, 1], [0, WIDTH]);

/** A share on a line from 0 to 100 with its 95 % limits as a bar. The number stands beside it as text, so this is only a picture. */
export function SharePlot({ limits: { share, low, high } }: { readonly limits: ShareLimits }) {
  return (
    <svg className={styles.share} viewBox={`-6 0 ${WIDTH + 12} 24`} aria-hidden="true">
      <line className={styles.base} x1={0} x2={WIDTH} y1={MIDDLE} y2={MIDDLE} />
      {along.ticks(4).map((tick) => (
        <line key={tick} className={styles.tick} x1={along(tick)} x2={along(tick)} y1={8} y2={16} />
      ))}
      <line className={styles.limits} x1={along(low)} x2={along(high)} y1={MIDDLE} y2={MIDDLE} />
      <line className={styles.limits} x1={along(low)} x2={along(low)} y1={6} y2={18} />
      <line className={styles.limits} x1={along(high)} x2={along(high)} y1={6} y2={18} />
      <ellipse className={styles.dot} cx={along(share)} cy={MIDDLE} rx={6} ry={6} />
    </svg>
  );
}
