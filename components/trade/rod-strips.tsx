import type { Gauge } from '../../lib/trade/coursing';
import { formatInches } from '../../lib/units';
import styles from './trade.module.css';

/** What fits on A4 and on US letter paper, mm. */
const STRIP = 240;
const WIDE = 30;

/** The rod in pieces at full size, to be glued end to end. Only on paper; print at 100 %. */
export function RodStrips({ gauge }: { readonly gauge: Gauge }) {
  const height = gauge.courses * gauge.gauge;
  const strips = Array.from({ length: Math.ceil(height / STRIP) }, (_, index) => index * STRIP);
  return (
    <section className={styles.strips} aria-label="The rod at full size">
      <p>
        Print at 100 %, not fitted to the page. Measure one strip: it is {STRIP} mm ({formatInches(STRIP)})
        long. Glue the strips end to end, 1 at the foot.
      </p>
      {strips.map((from, index) => (
        <svg
          key={from}
          width={`${WIDE}mm`}
          height={`${STRIP}mm`}
          viewBox={`0 0 ${WIDE} ${STRIP}`}
          aria-hidden="true"
        >
          <rect width={WIDE} height={STRIP} fill="none" stroke="black" strokeWidth="0.3" />
          {marksOn(gauge, from).map(({ course, y }) => (
            <g key={course}>
              <path
                d={`M0 ${y}h${course % 4 === 0 ? 22 : 14}`}
                stroke="black"
                strokeWidth={course % 4 === 0 ? 0.7 : 0.35}
              />
              <text x="23" y={y + 1.5} style={{ fontSize: '4px' }}>
                {course}
              </text>
            </g>
          ))}
          <text x="1" y={STRIP - 1} style={{ fontSize: '4px' }}>
            strip {index + 1}
          </text>
        </svg>
      ))}
    </section>
  );
}

function marksOn(gauge: Gauge, from: number): readonly { readonly course: number; readonly y: number }[] {
  return Array.from({ length: gauge.courses }, (_, index) => ({
    course: index + 1,
    y: STRIP - ((index + 1) * gauge.gauge - from),
  })).filter(({ y }) => y >= 0 && y <= STRIP);
}
