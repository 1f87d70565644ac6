import { type Key, keyOf } from '../../lib/exercise/key';
import { layPlan } from '../../lib/generate/generate';
import { planWith } from '../../lib/generate/planner';
import type { FaceBox } from '../../lib/geometry/box';
import type { Finding } from '../../lib/inspect/finding';
import type { LengthSystem } from '../../lib/units';
import { cutsOf, type View, viewsOf } from '../../lib/views/view';
import type { Wall } from '../../lib/wall/model';
import type { Part } from '../../lib/wall/parts';
import { surveyedWall } from '../../lib/wall/surveyed';
import { type FamilyName, isFamily, LESSON_FAMILIES } from './lesson-families';
import type { LessonFamily } from './lesson-family';

/** The walls of the lessons are judged by this rule set; the key under a drawing says so. */
export const LESSON_RULES = 'canada';

const STATES = ['sound', 'spoiled'] as const;
const VIEWS = ['front', 'section', 'behind', 'before-cover'] as const;

/** One drawing of a lesson. `ringed`: the faults of a spoiled wall, or what is good about a sound one. */
export interface LessonPicture {
  readonly family: FamilyName;
  readonly state: (typeof STATES)[number];
  readonly view: (typeof VIEWS)[number];
  readonly ringed: boolean;
  /** Only the place of the first fault, large; of a sound wall the same place. */
  readonly close: boolean;
}

/** The drawing that a lesson asks for by name, or what is wrong with the asking. */
export function parsePicture(asked: Readonly<Record<string, string>>): LessonPicture | string {
  const { of: family = '', state = 'sound', view = 'front', ...more } = asked;
  const strange = Object.keys(more).find((name) => name !== 'ringed' && name !== 'close');
  const known = { state: STATES.find((each) => each === state), view: VIEWS.find((each) => each === view) };
  if (!isFamily(family)) return `"${family}" is not a family of walls`;
  if (known.state === undefined) return `state "${state}" is not one of ${STATES.join(', ')}`;
  if (known.view === undefined) return `view "${view}" is not one of ${VIEWS.join(', ')}`;
  if (strange !== undefined) return `"${strange}" is not said of a wall`;
  return {
    family,
    state: known.state,
    view: known.view,
    ringed: more.ringed !== undefined,
    close: more.close !== undefined,
  };
}

/** The last part of the drawing's address; `pictureOfFile` reads it back. */
export function fileOf(
  { family, state, view, ringed, close }: LessonPicture,
  system: LengthSystem = 'mm',
): string {
  const parts = [family, state, view, ringed ? 'ringed' : 'plain', close ? 'close' : 'whole'];
  return `${[...parts, ...(system === 'inches' ? ['in'] : [])].join('.')}.svg`;
}

export function pictureOfFile(
  file: string,
): { readonly picture: LessonPicture; readonly system: LengthSystem } | undefined {
  const [family = '', state = '', view = '', ringed, close, system] = file.split('.');
  const asked = { of: family, state, view, ...(ringed === 'ringed' && { ringed: '' }) };
  const picture = parsePicture({ ...asked, ...(close === 'close' && { close: '' }) });
  if (typeof picture === 'string') return undefined;
  return { picture, system: system === 'in' ? 'inches' : 'mm' };
}

/** The drawing in words lies beside it. */
export function wordsFileOf(picture: LessonPicture, system: LengthSystem = 'mm'): string {
  return fileOf(picture, system).replace(/svg$/, 'txt');
}

/** A lesson shows the same few walls many times, and laying one takes a while. */
const keys = new Map<string, Key>();

/** The wall of a picture, with its key. The same seed, sound or spoiled. */
export function lessonWall({ family, state }: Pick<LessonPicture, 'family' | 'state'>): Key {
  const name = `${family} ${state}`;
  const key =
    keys.get(name) ?? keyOf(surveyedWall(layLessonWall(LESSON_FAMILIES[family], state)), LESSON_RULES);
  keys.set(name, key);
  return key;
}

function layLessonWall(
  { kind, masonry, spoils, seed, lookAlikes, marks = {} }: LessonFamily,
  state: LessonPicture['state'],
): Wall {
  const plan = planWith(kind, masonry, LESSON_RULES, spoils, seed);
  const wall = layPlan({
    ...plan,
    lookAlikes,
    tolerated: [],
    mortarTone: 0,
    soldiers: false,
    quoins: false,
    finish: 'brick',
    spoils: state === 'spoiled' ? spoils : [],
  });
  const units = wall.units.map((unit) => ({ ...unit, condition: marks[unit.id] ?? unit.condition }));
  return { ...wall, units };
}

/** What is wrong with the spoiled wall of a family, measured. */
export function lessonFindings(family: FamilyName): readonly Finding[] {
  return lessonWall({ family, state: 'spoiled' }).findings;
}

/** A ring with a number, and what the key says of it. */
export interface Ring extends FaceBox {
  readonly number: number;
}

/** The places that are ringed, numbered as in the key. */
export function ringsOf({ family, state }: LessonPicture): readonly Ring[] {
  const { wall, parts } = lessonWall({ family, state });
  if (state === 'spoiled') {
    return lessonFindings(family).map(({ parts: [told = ''], region }, index) => {
      // Of many units that are alike the one is ringed that is looked at.
      const part = parts.get(told);
      const { panel, x, y, width, height } = part?.kind === 'unit' ? part : region;
      return { panel, x, y, width, height, number: index + 1 };
    });
  }
  const marked = (what: string) =>
    parts.get(wall.units.find(({ condition }) => condition === what)?.id ?? '');
  const { good }: LessonFamily = LESSON_FAMILIES[family];
  return good.flatMap(([what], index) => {
    const part = marked(what) ?? middleOf([...parts.values()], what);
    if (part === undefined) return [];
    const { panel, x, y, width, height } = part;
    return [{ panel, x, y, width, height, number: index + 1 }];
  });
}

/** One part of a kind near the middle of the wall, so that its ring does not lie at an edge. */
function middleOf(parts: readonly Part[], kind: string): Part | undefined {
  const fitting = parts.filter((part) => part.kind === kind);
  return fitting[Math.floor(fitting.length * 0.45)];
}

/** What is looked at: the unit, support or face of the first fault, on the sound wall as on the spoiled one. */
export function viewOf(picture: LessonPicture): View {
  const { wall } = lessonWall(picture);
  const { view } = picture;
  if (!viewsOf(wall).includes(view)) throw new RangeError(`${picture.family}: its wall has no view ${view}`);
  if (view === 'front' || view === 'before-cover') return { kind: view };
  const told = lessonFindings(picture.family).flatMap(({ parts }) => parts);
  if (view === 'behind') {
    const unit = wall.units.find(({ id }) => told.includes(id)) ?? wall.units[0];
    return { kind: 'behind', unit: unit?.id ?? '' };
  }
  const cuts = cutsOf(wall);
  const cut =
    cuts.find(({ support }) => told.some((part) => part === support)) ?? cutAt(cuts, told) ?? cuts[0];
  if (cut === undefined) throw new RangeError(`${picture.family}: its wall cannot be cut`);
  return { kind: 'section', at: cut.at, support: cut.support };
}

/** A lintel left out is named by its opening, and a sound one by itself: the cut over the same kind of thing. */
function cutAt(cuts: ReturnType<typeof cutsOf>, told: readonly string[]) {
  const overhead = told.some((part) => /window|door|lintel/.test(part));
  return cuts.find(({ at }) => at === (overhead ? 'lintel' : 'base'));
}
