import { levelOf, ROD_COURSES } from '../wall/courses';
import type { PanelSurvey, Placed } from '../wall/survey';
import { INSTRUMENT } from './instrument-list';
import { notNegative, type Place, type ReadingContext, readOff, sized, worked } from './read-off';
import type { Reading } from './reading';
import { unitAt } from './unit-at';

const { resolution, error } = INSTRUMENT['gauge-rod'];
const MEAN_OF = 8;

/**
 * Undersides of courses against the marks of a rod set on the first course: of a course, of the whole panel, and what the panel gains or loses in
 * four courses. Of a bed: how far it is from the mean of any eight course beds in a row that it is one of.
 */
export function readGaugeRod({ part, panel, survey }: Place, context: ReadingContext): readonly Reading[] {
  if (part.kind === 'bed') return bedReadings(unitAt(part, panel), panel, context);
  const { courses } = panel;
  const count = part.kind === 'panel' ? courses.length : (part.course ?? 0);
  const first = courses[0] ?? [];
  const course = courses[count - 1] ?? [];
  if (count < 2 || first.length === 0 || course.length === 0) return [];
  const rises = count - 1;
  const drift = levelOf(course) - levelOf(first) - rises * survey.wall.gauge;
  const what = part.kind === 'panel' ? 'Top course against the rod' : 'Against the rod';
  const read = readOff(context, what, { value: drift, unit: 'mm', resolution, error });
  const whole = sized(read, ['on its mark', 'over its mark', 'under its mark']);
  if (part.kind !== 'panel') return [whole];
  return [
    whole,
    worked(context, 'That is, in four courses', {
      value: ((whole.value ?? 0) / rises) * ROD_COURSES,
      unit: 'mm per 4 courses',
      resolution: 0.05,
      error: (error / rises) * ROD_COURSES + 0.025,
    }),
  ];
}

function bedReadings(placed: Placed | null, panel: PanelSurvey, context: ReadingContext): readonly Reading[] {
  if (!placed?.bed) return [];
  const range = meansAround(panel, placed.unit.course - 1);
  if (range === null) return [];
  const bed = (placed.bed.left + placed.bed.right) / 2;
  const mm = (what: string, value: number) =>
    notNegative(readOff(context, what, { value, unit: 'mm', resolution: 0.1, error: 0.25 }));
  return [
    ...(bed > range.least ? [mm('Thicker than the mean of eight beds by', bed - range.least)] : []),
    ...(bed < range.most ? [mm('Thinner than the mean of eight beds by', range.most - bed)] : []),
  ];
}

/** Least and greatest mean of any eight course beds in a row that include this course (from 0); the bed on the ledge is left out. */
function meansAround(
  { courses }: PanelSurvey,
  at: number,
): { readonly least: number; readonly most: number } | null {
  const beds = courses.map((course) => {
    const means = course.flatMap(({ bed }) => (bed === null ? [] : [(bed.left + bed.right) / 2]));
    return means.length === 0 ? 0 : means.reduce((sum, mean) => sum + mean, 0) / means.length;
  });
  const window = Math.min(MEAN_OF, beds.length - 1);
  if (at < 1 || window < 1) return null;
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (let from = Math.max(1, at - window + 1); from <= Math.min(at, beds.length - window); from++) {
    let sum = 0;
    for (const bed of beds.slice(from, from + window)) sum += bed;
    least = Math.min(least, sum / window);
    most = Math.max(most, sum / window);
  }
  return { least, most };
}
