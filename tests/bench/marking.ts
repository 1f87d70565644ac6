import type { Finding } from '../../lib/inspect/finding';
import type { PlacedMark } from '../../lib/marking/mark';
import { matchMarks } from '../../lib/marking/match';
import { scoreWall } from '../../lib/marking/wall-score';
import { sampleFinding, sampleMark } from '../lib/marking/samples';

const HAND_INS = 10_000;
const FINDINGS = 5;
const MARKS = 7;
const ROUNDS = 3;

/** Marks 10,000 hand-ins of 7 marks on walls of 5 findings, and prints the time beside that of parsing their JSON. */
export function run(): void {
  const handIns = Array.from({ length: HAND_INS }, (_, seed) => handIn(seed));
  const texts = handIns.map((one) => JSON.stringify(one));
  let total = 0;
  const mark = fastest(() => {
    total = 0;
    for (const { findings, marks } of handIns)
      total += scoreWall(findings, matchMarks(findings, marks, 12)).score;
  });
  const parse = fastest(() => {
    for (const text of texts) JSON.parse(text);
  });
  console.log(
    `marking ${HAND_INS} hand-ins: ${Math.round(mark)} ms, ${(mark / parse).toFixed(1)} times JSON.parse of the same ` +
      `(${Math.round(parse)} ms); mean score ${(total / HAND_INS).toFixed(3)}`,
  );
}

/** Five findings along a wall, some overlapping; five marks near them, two elsewhere. Always the same for a seed. */
function handIn(seed: number): {
  readonly findings: readonly Finding[];
  readonly marks: readonly PlacedMark[];
} {
  const dice = (n: number, sides: number) => ((seed + 1) * 7919 + n * 104_729) % sides;
  const checks = ['thick-joint', 'open-head', 'shallow-tie', 'proud-unit', 'sliver-piece'] as const;
  const hazards = ['could fall', 'lets water in', 'looks'] as const;
  const findings = checks.map((check, i) =>
    sampleFinding(check, [`A${i}.${dice(i, 9)}`], [i * 90 + dice(i, 40), dice(i + 5, 60), 100, 65], {
      hazard: hazards[dice(i, 3)] ?? 'looks',
    }),
  );
  const marks = Array.from({ length: MARKS }, (_, i) => {
    const x = i < FINDINGS ? i * 90 + dice(i, 130) : 2000 + dice(i, 500);
    return sampleMark(
      `A9.${i}`,
      [x, dice(i + 9, 90)],
      checks[dice(i, 4) === 0 ? 0 : i % FINDINGS] ?? 'open-head',
    );
  });
  return { findings, marks };
}

function fastest(work: () => void): number {
  let best = Infinity;
  for (let round = 0; round < ROUNDS; round += 1) {
    const start = performance.now();
    work();
    best = Math.min(best, performance.now() - start);
  }
  return best;
}
