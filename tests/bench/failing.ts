import { failingWall, judged } from '../laws/failing-walls';

const WALLS = 50_000;

/** The laws of failing walls, second measurer and all, over 50,000 of them (or as many as asked): prints each break, and how many allow one cause alone. */
export function run(args: readonly string[] = []): void {
  const count = Number(args[0] ?? WALLS);
  if (!Number.isInteger(count) || count < 1)
    throw new RangeError(`failing: "${args[0]}" is no number of walls`);
  const start = performance.now();
  let broken = 0;
  let certain = 0;
  for (let n = 0; n < count; n++) {
    const verdict = judged(failingWall(n));
    for (const law of verdict.broken) process.stdout.write(`${law}\n`);
    broken += verdict.broken.length;
    if (verdict.allowed === 1) certain += 1;
    if (n % 5000 === 4999)
      process.stdout.write(
        `${n + 1} walls, ${broken} breaks, ${Math.round((performance.now() - start) / 1000)} s\n`,
      );
  }
  process.stdout.write(`${count} walls: ${broken} breaks of a law; ${certain} allow one cause alone\n`);
  if (broken > 0 || certain < count / 2) process.exitCode = 1;
}
