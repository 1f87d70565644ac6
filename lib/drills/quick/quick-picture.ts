import { type Key, keyOf } from '../../exercise/key';
import { type Brief, MAX_SEED } from '../../generate/brief';
import { FAULTS } from '../../generate/faults';
import { layWall } from '../../generate/generate';
import { planOf } from '../../generate/planner';
import { TOPIC_FAULTS } from '../../generate/topics';
import type { FaceBox } from '../../geometry/box';
import type { Finding } from '../../inspect/finding';
import type { RuleSetId } from '../../limits/limit';
import { cutsOf, type View } from '../../views/view';
import type { Unit, Wall } from '../../wall/model';
import { unitId } from '../../wall/part-id';
import { surveyedWall } from '../../wall/surveyed';
import { hash32 } from '../hash';
import type { QuickLook, QuickSort } from './quick-look';
import { QUICK_LOOK_TABLE, seenIn } from './quick-look-table';
import { askOf } from './quick-round';

/** Which round: its number, whose rules, what it looks at. */
export interface QuickRoundName extends QuickSort {
  readonly rules: RuleSetId;
  readonly round: number;
}

/** One picture of a round: a wall, and what is seen of it. Its findings as measured: none on a sound wall; else one at least shows in the picture, and all are of those that can. */
export interface QuickPicture extends Key {
  readonly brief: Brief;
  readonly view: View;
  /** Nothing beside it is shown; null: the whole view. */
  readonly window: FaceBox | null;
}

type Seen = Pick<QuickPicture, 'view' | 'window'>;

/** Seeds looked at before it is given up: far more than any sort has needed. */
const MOST_TRIES = 20_000;

/** The picture at a place of a round: of the first wall from the seed asked for that measures as sound or as faulty as asked. */
export function quickPicture(name: QuickRoundName, place: number): QuickPicture {
  const ask = askOf(name, place, MAX_SEED);
  const wanted = seenIn(name);
  // A topic of which nothing shows at this level would never have a faulty wall.
  const sorts = QUICK_LOOK_TABLE[name.look].sorts.filter(([topic, kind]) =>
    wanted.some(
      (fault) => TOPIC_FAULTS[topic].includes(fault) && (FAULTS[fault].kinds?.includes(kind) ?? true),
    ),
  );
  const [topic, kind] = sorts[ask.draw % sorts.length] ?? ['line', 'plain-panel'];
  for (let tries = 0; tries < MOST_TRIES; tries += 1) {
    const seed = (ask.seed + tries) % (MAX_SEED + 1);
    const brief: Brief = { topic, kind, difficulty: name.level, rules: name.rules, seed };
    const planned = planOf(brief).spoils;
    const fits = ask.faulty ? planned.length > 0 : planned.length === 0;
    if (!fits || !planned.every(({ fault }) => wanted.includes(fault))) continue;
    const key = keyOf(surveyedWall(layWall(brief)), name.rules);
    const { findings } = key;
    const measured = ask.faulty ? findings.length > 0 : findings.length === 0;
    if (!measured || !findings.every(({ check }) => wanted.includes(check))) continue;
    const seen = seenOf(name.look, key, seed);
    if (seen !== null) return { ...key, brief, ...seen };
  }
  throw new RangeError(
    `quick look: no ${ask.faulty ? 'faulty' : 'sound'} ${kind} about ${topic} in ${MOST_TRIES} seeds`,
  );
}

/** What is seen: of a faulty wall a place where a finding shows; of a sound one a place drawn alike. Null where there is none such. */
function seenOf(look: QuickLook, key: Key, seed: number): Seen | null {
  const { wall, findings } = key;
  const [first] = findings;
  switch (look) {
    case 'face':
      return first === undefined || findings.some((finding) => showsFromAfar(key, finding))
        ? { view: { kind: 'front' }, window: null }
        : null;
    case 'ties':
      return { view: { kind: 'before-cover' }, window: null };
    case 'tickets':
      return { view: { kind: 'tickets' }, window: null };
    case 'cut':
      return cutSeen(key, seed);
    case 'back': {
      const unit = first ? first.parts[0] : drawnFrom(inTheField(wall), seed)?.id;
      return unit === undefined ? null : { view: { kind: 'behind', unit }, window: null };
    }
    case 'close':
      return closeSeen(key, seed);
    default: {
      const unknown: never = look;
      throw new RangeError(`quick look ${String(unknown)} shows nothing`);
    }
  }
}

/** A bed that is off the others by this much along a whole course shows from afar, mm: natural scatter is under 1. */
const ODD = 3;

/** A joint shows from afar only where it is a whole bed. */
function showsFromAfar({ wall, panels }: Key, { check, region }: Finding): boolean {
  if (check !== 'thick-joint' && check !== 'thin-joint') return true;
  const design = wall.gauge - wall.family.height;
  const survey = panels.find(({ panel }) => panel.id === region.panel);
  return (survey?.courses.slice(1) ?? []).some(
    (course) =>
      course.length > 0 &&
      course.every(({ bed }) => bed !== null && Math.abs((bed.left + bed.right) / 2 - design) > ODD),
  );
}

/** Of every four sound walls with an opening, three are cut over it: so it is with the faulty ones, about. */
const HEADS_OF_FOUR = 3;

function cutSeen({ wall, findings }: Key, seed: number): Seen | null {
  const cuts = cutsOf(wall);
  const heads = cuts.filter(({ at }) => at === 'lintel');
  const bases = cuts.filter(({ at }) => at === 'base');
  const shown =
    findings.length > 0
      ? cuts.find(({ support }) => findings.some(({ parts }) => parts.some((part) => part === support)))
      : drawnFrom(heads.length > 0 && hash32(seed, 0) % 4 < HEADS_OF_FOUR ? heads : bases, seed);
  return shown ? { view: { kind: 'section', at: shown.at, support: shown.support }, window: null } : null;
}

/** How much of a face is seen up close, mm. */
const CLOSE = { width: 600, height: 400 } as const;
/** Sky and ground beside a panel that may be seen, mm. */
const BESIDE = 60;

function closeSeen({ wall, parts, findings }: Key, seed: number): Seen | null {
  const part = findings[0]?.parts[0] ?? drawnFrom(inTheField(wall), seed)?.id;
  const box = part === undefined ? undefined : parts.get(part);
  const panel = wall.panels.find(({ id }) => id === box?.panel);
  if (box === undefined || panel === undefined) return null;
  // Anywhere in the middle half of the window.
  const [along, up] = [0.25 + share(seed, 1) / 2, 0.25 + share(seed, 2) / 2];
  const x = box.x + box.width / 2 - CLOSE.width * along;
  const y = box.y + box.height / 2 - CLOSE.height * up;
  return {
    view: { kind: 'front' },
    window: {
      ...CLOSE,
      panel: panel.id,
      x: Math.min(panel.length + BESIDE - CLOSE.width, Math.max(-BESIDE, x)),
      y: Math.max(-BESIDE, y),
    },
  };
}

/** Where faults of one unit are laid: whole units between whole ones, off the lowest two courses and the top. */
function inTheField({ units, panels }: Wall): readonly Unit[] {
  const whole = new Set(units.filter(({ kind }) => kind === 'stretcher').map(({ id }) => id));
  const top = new Map(panels.map(({ id, courses }) => [id, courses]));
  return units.filter(
    ({ id, panel, course, position }) =>
      whole.has(id) &&
      course > 2 &&
      course < (top.get(panel) ?? 0) - 1 &&
      [-1, 1].every((step) => whole.has(unitId(panel, course, position + step))),
  );
}

function drawnFrom<T>(from: readonly T[], seed: number): T | undefined {
  return from[hash32(seed, 3) % Math.max(1, from.length)];
}

/** 0 up to 1. */
function share(seed: number, draw: number): number {
  return hash32(seed, draw) / 2 ** 32;
}
