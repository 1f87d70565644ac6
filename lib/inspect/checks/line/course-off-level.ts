import { slopeVerdict } from '../../../limits/bound';
import { courseId } from '../../../wall/part-id';
import type { Placed } from '../../../wall/survey';
import { type Check, type Measurement, passes, severityOf } from '../../check';
import { boxOf } from '../../places';

/** Shorter runs are not judged: a level cannot tell, mm. */
const SHORTEST_RUN = 1000;

interface CourseLevel {
  readonly course: readonly Placed[];
  readonly sight: Measurement;
}

/**
 * Each course as a whole, over its openings. Drop: from the underside at the left end of its leftmost unit to that at the right end of its
 * rightmost; run: the distance between the two. Runs under a metre are not judged. A steady slope of that drop is tried against
 * `course-level`, run by run and overall.
 *
 * Courses that fail and follow each other are one finding, at the worst of them: the greatest measured ÷ limit, the lowest on a tie.
 * Parts: the courses, the worst first.
 */
export const courseOffLevel: Check = {
  id: 'course-off-level',
  name: 'Course off level',
  alsoCalled: 'out of level, sloping course, row runs downhill, row runs uphill, line not level',
  looksLike: 'A whole course slopes, though its joints stay even.',
  whereToLook: 'Front view. Pick the whole course and read how much one end is lower than the other.',
  measuredBy:
    'Level from one end of the course to the other, and compare the drop with the distance between them.',
  whyItMatters: 'The slope shows wherever it meets a sill or a roof line. It ends in cut units and wedges.',
  putsRight:
    'The mason brings the wall back to level a little at a time over the next courses. A slope that shows is taken down and laid anew.',
  caughtAt: 'At the first course, then at every corner lead',
  mistakenFor: ['tapering-bed', 'gauge-drift'],
  markedOn: ['course'],
  hazard: 'looks',
  reach: 'in sight',
  lesson: 'line-level-plumb',
  asks: { what: 'Drop from end to end of the course', unit: 'mm' },
  tooNear: 0.75,
  measure: ({ panels }, limits, report) => {
    const limit = limits('course-level');
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
        report({ ...worst.sight, place: () => ({ parts, region: boxOf(placed) }) });
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
        const at = courseId(panel.id, first.course);
        const sight: Measurement = {
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
      if (!failed && sound !== null) report(sound.sight);
    }
  },
};
