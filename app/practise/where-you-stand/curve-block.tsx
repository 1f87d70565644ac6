import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import type { Piece } from '../../../lib/learning/where-you-stand';
import styles from './stand.module.css';

const WIDTH = 600;
const HEIGHT = 190;
const LEFT = 78;
const MINUTE = 60_000;
const up = scaleLinear([0, 1], [HEIGHT - 30, 12]);

/** Walls read rightly, piece by piece of the record, and the time that a wall took. */
export function CurveBlock({ curve }: { readonly curve: readonly Piece[] }) {
  const [first] = curve;
  const last = curve.at(-1);
  if (first === undefined || last === undefined) {
    return (
      <section>
        <h2>Wall after wall</h2>
        <p>The curve begins after ten walls.</p>
      </section>
    );
  }
  const along = scaleLinear([1, last.to], [LEFT, WIDTH - 10]);
  const middle = ({ from, to }: Piece) => along((from + to) / 2);
  const band = area<Piece>()
    .x(middle)
    .y0(({ right }) => up(right.low))
    .y1(({ right }) => up(right.high));
  const path = line<Piece>()
    .x(middle)
    .y(({ right }) => up(right.share));
  return (
    <section>
      <h2>Wall after wall</h2>
      <p>{curveWords(first, last, curve.length)}</p>
      <svg className={styles.plot} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
        {[0, 0.5, 1].map((tick) => (
          <g key={tick}>
            <line className={styles.base} x1={LEFT} x2={WIDTH - 10} y1={up(tick)} y2={up(tick)} />
            <text x={LEFT - 8} y={up(tick) + 5} textAnchor="end">
              {tick * 100} %
            </text>
          </g>
        ))}
        <path className={styles.band} d={band(curve) ?? ''} />
        <path className={styles.curve} d={path(curve) ?? ''} />
        {curve.map((piece) => (
          <g key={piece.from}>
            <line
              className={styles.limits}
              x1={middle(piece)}
              x2={middle(piece)}
              y1={up(piece.right.low)}
              y2={up(piece.right.high)}
            />
            <circle className={styles.dot} cx={middle(piece)} cy={up(piece.right.share)} r={5} />
          </g>
        ))}
        <text x={LEFT} y={HEIGHT - 6}>
          first wall
        </text>
        <text x={WIDTH - 10} y={HEIGHT - 6} textAnchor="end">
          wall {last.to}
        </text>
      </svg>
      <p className="fine">
        A wall counts as read rightly when every fault was found and named and nothing sound was called. The
        upright lines are 95 % limits.
      </p>
      <p>{timeWords(first, last)}</p>
    </section>
  );
}

function curveWords(first: Piece, last: Piece, pieces: number): string {
  const of = ({ from, to, right }: Piece) =>
    `${percent(right.share)} (between ${percent(right.low)} and ${percent(right.high)}) of walls ${from} to ${to}`;
  if (pieces === 1) return `You read ${of(last)} rightly.`;
  const told = `You read ${of(first)} rightly, and ${of(last)}.`;
  if (last.right.low > first.right.high) return `${told} That is better, and not by chance.`;
  if (last.right.high < first.right.low)
    return `${told} That is worse, and not by chance. Walls get harder as you get better.`;
  return `${told} The two ranges overlap, so the difference may be chance.`;
}

function timeWords(first: Piece, last: Piece): string {
  if (first.medianMs === null || last.medianMs === null) return 'No time was taken for these walls.';
  const of = (ms: number) => `${(ms / MINUTE).toFixed(1)} minutes`;
  return first === last
    ? `Half of these walls took you less than ${of(last.medianMs)}.`
    : `Half of walls ${first.from} to ${first.to} took you less than ${of(first.medianMs)}, half of walls ${last.from} to ${last.to} less than ${of(last.medianMs)}. Nobody is marked on time.`;
}

function percent(share: number): string {
  return `${Math.round(100 * share)} %`;
}
