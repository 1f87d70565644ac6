import { levelOf } from '../wall/courses';
import type { Part } from '../wall/parts';
import type { Placed } from '../wall/survey';
import { INSTRUMENT } from './instrument-list';
import { type Place, type ReadingContext, readOff, type SignWords, sized } from './read-off';
import type { Reading } from './reading';
import { unitAt } from './unit-at';

/** What an instrument reads from a first point to the part it is held to now. Both on one panel, and not the same. */
export function readBetween(place: Place, from: Part, context: ReadingContext): readonly Reading[] {
  const { part, panel, survey } = place;
  if (from.panel !== part.panel || from.id === part.id) return [];
  const { resolution, error } = INSTRUMENT[context.instrument];
  const at: ReadingContext = { ...context, part: `${from.id} ${part.id}` };
  const mm = (what: string, value: number, ways: SignWords) => ({
    ...sized(readOff(at, what, { value, unit: 'mm', resolution, error }), ways),
    part: part.id,
  });
  if (context.instrument === 'tape') {
    const across = part.x + part.width / 2 - from.x - from.width / 2;
    const up = part.y + part.height / 2 - from.y - from.height / 2;
    return [
      mm('Across, middle to middle', across, ['one over the other', 'to the right', 'to the left']),
      mm('Up or down, middle to middle', up, ['level with it', 'up', 'down']),
    ];
  }
  const first = unitAt(from, panel);
  const second = unitAt(part, panel);
  if (first === null || second === null) return [];
  const step = second.unit.set - first.unit.set;
  const stands: SignWords = ['flush', 'this one proud', 'this one back'];
  if (context.instrument === 'straightedge') return [mm('Step of the face', step, stands)];
  const courses = Math.abs(second.unit.course - first.unit.course);
  if (courses === 0) return [];
  if (context.instrument === 'plumb-line') return [mm('Face off plumb', step, stands)];
  const off = Math.abs(rise(first, second, panel.courses)) - courses * survey.wall.gauge;
  const what = `Rise of ${courses} ${courses === 1 ? 'course' : 'courses'} against the rod`;
  return [mm(what, off, ['on the rod', 'more than the rod', 'less than the rod'])];
}

function rise(first: Placed, second: Placed, courses: readonly (readonly Placed[])[]): number {
  return levelOf(courses[second.unit.course - 1] ?? []) - levelOf(courses[first.unit.course - 1] ?? []);
}
