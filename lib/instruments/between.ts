import type { Part } from '../wall/parts';
import type { Placed } from '../wall/survey';
import { levelOf, unitAt } from './held-to';
import { INSTRUMENT } from './instrument-list';
import type { Place } from './read';
import { type Hold, readOff } from './read-off';
import type { Reading } from './reading';

/** What an instrument reads from a first point to the part it is held to now. Both on one panel, and not the same. */
export function readBetween(place: Place, from: Part, hold: Hold): readonly Reading[] {
  const { part, panel, survey } = place;
  if (from.panel !== part.panel || from.id === part.id) return [];
  const { resolution, error } = INSTRUMENT[hold.instrument];
  const at: Hold = { ...hold, part: `${from.id} ${part.id}` };
  const mm = (what: string, value: number, words: string) => ({
    ...readOff(at, what, { value: Math.abs(value), unit: 'mm', resolution, error, words }),
    part: part.id,
  });
  if (hold.instrument === 'tape') {
    const across = part.x + part.width / 2 - from.x - from.width / 2;
    const up = part.y + part.height / 2 - from.y - from.height / 2;
    return [
      mm('Across, middle to middle', across, across < 0 ? 'to the left' : 'to the right'),
      mm('Up or down, middle to middle', up, up < 0 ? 'down' : 'up'),
    ];
  }
  const first = unitAt(from, panel);
  const second = unitAt(part, panel);
  if (first === null || second === null) return [];
  const step = second.unit.set - first.unit.set;
  const stands = step === 0 ? 'flush' : step > 0 ? 'this one proud' : 'this one back';
  if (hold.instrument === 'straightedge') return [mm('Step from the first face to this one', step, stands)];
  if (hold.instrument === 'plumb-line') return [mm('This face off the plumb of the first', step, stands)];
  const courses = Math.abs(second.unit.course - first.unit.course);
  const off = Math.abs(rise(first, second, panel.courses)) - courses * survey.wall.gauge;
  const words = off === 0 ? 'on the rod' : off > 0 ? 'more than the rod' : 'less than the rod';
  return courses === 0
    ? []
    : [mm(`Rise of ${courses} ${courses === 1 ? 'course' : 'courses'} against the rod`, off, words)];
}

function rise(first: Placed, second: Placed, courses: readonly (readonly Placed[])[]): number {
  return levelOf(courses[second.unit.course - 1] ?? []) - levelOf(courses[first.unit.course - 1] ?? []);
}
