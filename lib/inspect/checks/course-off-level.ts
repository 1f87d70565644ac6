import { slopeVerdict } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import type { Placed } from '../../wall/survey';
import { boxOf } from '../places';
import { type Check, passes, type Sight, severityOf } from '../sight';

/** Shorter runs are not judged: a level cannot tell, mm. */
const SHORTEST_RUN = 1000;

interface CourseLevel {
  readonly course: readonly Placed[];
  readonly sight: Sight;
}

/** Drop of a course from its left end to its right. Neighbouring courses beyond the limit are one thing seen, at the worst of them. */
export const courseOffLevel: Check = {
  id: 'course-off-level',
  measure: ({ panels }, rules, see) => {
    const limit = limitOf(rules, 'course-level');
    if (limit === undefined) return;
    for (const { panel, courses } of panels) {
      let block: CourseLevel[] = [];
      let sound: CourseLevel | null = null;
      let failed = false;
      const close = () => {
        const [first] = block;
        if (first === undefined) return;
        const worst = block.reduce(
          (most, each) => (severityOf(each.sight) > severityOf(most.sight) ? each : most),
          first,
        );
        const parts = [
          worst.sight.at,
          ...block.filter((each) => each !== worst).map(({ sight }) => sight.at),
        ];
        const placed = block.flatMap(({ course }) => course);
        see({ ...worst.sight, place: () => ({ parts, region: boxOf(placed) }) });
        block = [];
        failed = true;
      };
      for (const course of courses) {
        const first = course[0]?.unit;
        const last = course[course.length - 1]?.unit;
        if (first === undefined || last === undefined) continue;
        const run = last.x + last.length - first.x;
        if (run < SHORTEST_RUN) {
          close();
          continue;
        }
        const drop = Math.abs(first.y - (last.y - last.fall));
        const verdict = slopeVerdict(limit.bound, drop / run, run);
        const at = `${panel.id}${first.course}`;
        const sight: Sight = {
          limit,
          end: 'at most',
          measured: verdict.measured,
          bound: verdict.limit,
          at,
          place: () => ({ parts: [at], region: boxOf(course) }),
        };
        if (passes(sight)) {
          close();
          if (sound === null || severityOf(sight) > severityOf(sound.sight)) sound = { course, sight };
        } else {
          block.push({ course, sight });
        }
      }
      close();
      // Courses leading up to a bad one cross the limit on the way: only a panel without a bad one is judged by its worst course.
      if (!failed && sound !== null) see(sound.sight);
    }
  },
};
