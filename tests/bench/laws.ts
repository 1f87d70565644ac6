import { disagreement } from '../laws/agreement-walls';
import { lawWall } from '../laws/law-walls';
import { brokenLaws } from '../laws/laws';

const WALLS = 100_000;

/** The laws of the walls, and their keys against the second measurer, over 100,000 of them (or as many as asked); prints each break and ends with a count. */
export function run(args: readonly string[] = []): void {
  const count = Number(args[0] ?? WALLS);
  if (!Number.isInteger(count) || count < 1) throw new RangeError(`laws: "${args[0]}" is no number of walls`);
  const start = performance.now();
  let broken = 0;
  for (let n = 0; n < count; n++) {
    const apart = disagreement(n);
    for (const law of [...brokenLaws(lawWall(n)), ...(apart === null ? [] : [apart])]) {
      broken += 1;
      process.stdout.write(`${law}\n`);
    }
    if (n % 5000 === 4999) {
      process.stdout.write(
        `${n + 1} walls, ${broken} breaks, ${Math.round((performance.now() - start) / 1000)} s\n`,
      );
    }
  }
  process.stdout.write(`${count} walls: ${broken} breaks of a law\n`);
  if (broken > 0) process.exitCode = 1;
}
