import { lineWeight, parabolaSag, USUAL_LINE_MASS } from '../trade/string-line';
import { inches, type Mm } from '../units';
import { facePlaneOf, padsOf } from '../wall/face-plane';
import type { Placed } from '../wall/survey';
import { undersideAt } from '../wall/survey';
import { INSTRUMENT } from './instrument-list';
import { type Place, type ReadingContext, readOff, sized, toStep, worked } from './read-off';
import type { Reading } from './reading';

const { resolution, error } = INSTRUMENT['mason-line'];
const MM = { unit: 'mm', resolution, error } as const;

/** A firm hand pull, N: 50 to 100 is usual (an assumption of the arithmetic, see lib/trade/string-line). */
const PULL = 100;
/** Lengths over which published limits ask for the level of a course: 10 ft and 20 ft. */
const RUNS: readonly { readonly run: Mm; readonly name: string }[] = [
  { run: inches(0, 10), name: '10 ft' },
  { run: inches(0, 20), name: '20 ft' },
];

/** The middle may fall into a head joint: the unit beside it is read, mm. */
const JOINT: Mm = 25;

/** How far a line between two blocks so far apart hangs down in the middle, mm. */
export function lineSag(length: Mm): Mm {
  return parabolaSag(lineWeight(USUAL_LINE_MASS), length, PULL);
}

/**
 * Of a course: its drop from end to end against blocks set to one datum, and how far its middle lies under the line (which itself sags: the dip
 * looks less by so much). Of a panel: how far the worst pad of units stands off the plane of the face; sideways a line does not sag.
 */
export function readMasonLine({ part, panel }: Place, context: ReadingContext): readonly Reading[] {
  if (part.kind === 'panel') return bowReadings(panel, context);
  const course = panel.courses[(part.course ?? 0) - 1] ?? [];
  const first = course[0]?.unit;
  const last = course[course.length - 1]?.unit;
  if (first === undefined || last === undefined) return [];
  const end = last.x + last.length;
  const run = end - first.x;
  const right = last.y - last.fall;
  const drop = first.y - right;
  const read = readOff(context, 'Drop, end to end', { ...MM, value: drop });
  const whole = sized(read, ['level', 'right end low', 'right end high']);
  const shorter = RUNS.filter((each) => each.run < run).map((each) =>
    worked(context, `That is, in ${each.name}`, { ...MM, value: ((whole.value ?? 0) * each.run) / run }),
  );
  return [whole, ...shorter, ...dipReadings(course, first.x + run / 2, (first.y + right) / 2, run, context)];
}

function dipReadings(
  course: readonly Placed[],
  x: Mm,
  chord: Mm,
  run: Mm,
  context: ReadingContext,
): readonly Reading[] {
  const middle = course.find(({ unit }) => unit.x - JOINT <= x && unit.x + unit.length + JOINT >= x)?.unit;
  if (middle === undefined) return [];
  const sag = lineSag(run);
  const dip = chord - sag - undersideAt(middle, x);
  const reading = readOff(context, 'Middle, against the line', { ...MM, value: dip });
  const shown = toStep(sag, 0.1);
  const itself = `the line itself sags ${shown} mm (${(shown / inches(1)).toFixed(3)} in)`;
  return [sized(reading, [itself, `under it; ${itself}`, `above it; ${itself}`])];
}

function bowReadings(panel: Place['panel'], context: ReadingContext): readonly Reading[] {
  const plane = facePlaneOf(panel.placed);
  if (plane === null) return [];
  let worst = 0;
  for (const { off } of padsOf(panel, plane))
    if (off !== null && Math.abs(off) > Math.abs(worst)) worst = off;
  const reading = readOff(context, 'Farthest off the plane of the face', { ...MM, value: worst });
  return [sized(reading, ['flat', 'it bows out', 'it lies hollow'])];
}
