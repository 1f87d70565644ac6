import { PhotoError } from '../../lib/photo/photo-error';
import { QUANTITIES } from '../../lib/photo/quantities';
import { type Tally, tallied, tallyOf } from '../lib/photo/coverage';
import { laidCase } from '../lib/photo/laid-picture';

const PICTURES = 2000;
/** Issue: 95 of 100 intervals hold the truth, give or take two; at most one verdict in a hundred is wrong. */
const HOLDS = [0.93, 0.97] as const;
const WRONG = 0.01;

/** How often the intervals of a photograph's quantities hold the truth, over random walls, cameras and errors; args: how many, and the first seed. */
export function run([count = `${PICTURES}`, first = '0']: readonly string[] = []): void {
  let tally: Tally = tallyOf();
  let refused = 0;
  for (let seed = Number(first); seed < Number(first) + Number(count); seed++) {
    try {
      tally = tallied(tally, seed, laidCase(seed, 1000, 750));
    } catch (error) {
      if (!(error instanceof PhotoError)) throw error;
      refused += 1;
    }
  }
  console.log(`${count} pictures, ${refused} refused`);
  for (const name of QUANTITIES) {
    const { n, holds, sum, square, decided, wrong } = tally[name];
    const share = holds / n;
    const isHeld = share >= HOLDS[0] && share <= HOLDS[1] && wrong <= WRONG * n;
    console.log(
      `${name.padEnd(18)} ${(100 * share).toFixed(1)} % of ${n} hold; z ${(sum / n).toFixed(2)} ± ${Math.sqrt(square / n).toFixed(2)}; ` +
        `${decided} decided, ${wrong} wrong: ${isHeld ? 'held' : 'NOT HELD'}`,
    );
  }
}
