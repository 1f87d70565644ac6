import { grade } from '../../lib/exercise/grade';
import { keyOf } from '../../lib/exercise/key';
import { layWall } from '../../lib/generate/generate';
import { CHECKS } from '../../lib/inspect/finding';
import { MOST_MARKS, type RawMark } from '../../lib/marking/mark';
import type { Wall } from '../../lib/wall/model';
import { surveyedWall } from '../../lib/wall/surveyed';

const ROUNDS = 40;
/** So many times the cost of a wall without marks a wall with as many false ones as can be may take. */
const MOST_TIMES = 5;

const RULES = 'canada';

/** From a laid wall to its result: surveyed, inspected and graded, without marks and with as many false ones as a hand-in may have. */
export function run(): void {
  const wall = layWall({ topic: 'mixed', kind: 'door-corner', difficulty: 3, rules: RULES, seed: 7 });
  const marks = falseMarks(wall);
  let without = Number.POSITIVE_INFINITY;
  let withAll = Number.POSITIVE_INFINITY;
  let wrong = 0;
  for (let round = 0; round < ROUNDS; round += 1) {
    without = Math.min(
      without,
      timeOf(() => grade(keyOf(surveyedWall(wall), RULES), [])),
    );
    withAll = Math.min(
      withAll,
      timeOf(() => {
        const result = grade(keyOf(surveyedWall(wall), RULES), marks);
        wrong = result.marks.filter(({ outcome }) => outcome === 'false').length;
      }),
    );
  }
  const times = withAll / without;
  console.log(
    `grading a wall of ${wall.units.length} units: ${without.toFixed(2)} ms without marks, ${withAll.toFixed(2)} ms with ${wrong} ` +
      `false ones, ${times.toFixed(1)} times (at most ${MOST_TIMES}): ${times <= MOST_TIMES ? 'held' : 'NOT HELD'}`,
  );
}

/** Every fault that the wall does not have, in turn, on one unit after the other, where no finding lies. */
function falseMarks(wall: Wall): readonly RawMark[] {
  const key = keyOf(surveyedWall(wall), RULES);
  const absent = CHECKS.filter((check) => !key.findings.some((finding) => finding.check === check));
  return wall.units
    .map(({ id }, index): RawMark => ({ part: id, fault: absent[index % absent.length] ?? 'open-head' }))
    .filter((mark) => grade(key, [mark]).marks[0]?.outcome === 'false')
    .slice(0, MOST_MARKS);
}

function timeOf(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}
