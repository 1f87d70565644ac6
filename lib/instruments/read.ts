import { levelOf } from '../wall/courses';
import type { Part } from '../wall/parts';
import type { Placed, Survey } from '../wall/survey';
import { readGaugeRod } from './gauge-rod';
import type { InstrumentId } from './instrument';
import { INSTRUMENT } from './instrument-list';
import { readJointGauge } from './joint-gauge';
import { readMasonLine } from './mason-line';
import { readMirror } from './mirror';
import { readPlumbLine } from './plumb-line';
import { type Place, type ReadingContext, readOff, type SignWords, seedOf, sized } from './read-off';
import type { Reading } from './reading';
import { readSpiritLevel } from './spirit-level';
import { readSquare } from './square';
import { readStraightedge } from './straightedge';
import { readTape } from './tape';
import { readThermometer } from './thermometer';
import { readTieFinder } from './tie-finder';
import { readProbe, readScratch, readTap } from './touch';
import { unitAt } from './unit-at';

/** How an instrument is held. All may be left out. */
export interface Turn {
  /** The level turned end for end. */
  readonly turned?: boolean;
  /** The unit has been lifted: its back can be read. */
  readonly lifted?: boolean;
  /** The first of two points; the part is then the second. */
  readonly from?: Part | null;
}

type Read = (place: Place, context: ReadingContext) => readonly Reading[];

const READ: Readonly<Record<InstrumentId, Read>> = {
  tape: readTape,
  'joint-gauge': readJointGauge,
  'spirit-level': readSpiritLevel,
  'plumb-line': readPlumbLine,
  'mason-line': readMasonLine,
  straightedge: readStraightedge,
  square: readSquare,
  'gauge-rod': readGaugeRod,
  mirror: readMirror,
  probe: readProbe,
  'tie-finder': readTieFinder,
  tap: readTap,
  scratch: readScratch,
  thermometer: readThermometer,
};

/** What an instrument reads at a part, the most telling first: the same every time. Empty where it cannot be held, or finds nothing to read. */
export function readAt(
  survey: Survey,
  instrument: InstrumentId,
  part: Part,
  turn: Turn = {},
): readonly Reading[] {
  const panel = survey.panels.find((each) => each.panel.id === part.panel);
  const { from = null, lifted = false, turned = false } = turn;
  const { on, between } = INSTRUMENT[instrument];
  if (panel === undefined || !(from === null ? on : between).includes(part.kind)) return [];
  const place: Place = { part, panel, survey, lifted };
  const context: ReadingContext = { instrument, part: part.id, seed: seedOf(survey.wall), turned };
  if (from === null) return READ[instrument](place, context);
  return between.includes(from.kind) ? readBetween(place, from, context) : [];
}

/** What an instrument reads from a first point to the part it is held to now. Both on one panel, and not the same. */
function readBetween(place: Place, from: Part, context: ReadingContext): readonly Reading[] {
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
