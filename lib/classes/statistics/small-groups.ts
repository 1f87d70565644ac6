import type { TestFigures } from './item-analysis';

// How many it takes before a figure says something. Thresholds after the reading in the project's reference on scoring
// (standard errors worked out there); the words are ours.

/** Before so many walls no word is said about a learner. */
const ENOUGH_WALLS_OF_ONE = 20;
/** A set that is only for practice, and one that counts. */
const PRACTICE_SET = { walls: 12, faults: 20, sound: 8 } as const;
const GRADED_SET = { faults: 40, sound: 20 } as const;
const EASIEST = 0.95;
const HARDEST = 0.2;
/** With fewer learners item figures jump about: standard error of a correlation over 1/6. */
const ENOUGH_LEARNERS = 40;

/** What to say beside a learner's figures; null when there are enough walls. */
export function fewWallsWords(walls: number): string | null {
  if (walls >= ENOUGH_WALLS_OF_ONE) return null;
  return `Only ${walls} ${walls === 1 ? 'wall' : 'walls'} so far. Wait for ${ENOUGH_WALLS_OF_ONE} before you judge: until then luck counts as much as skill.`;
}

/** How large a chance error a discrimination has with so many learners, 1 / sqrt(n - 1); null under 3. */
export function discriminationError(learners: number): number | null {
  return learners < 3 ? null : 1 / Math.sqrt(learners - 1);
}

/** What to say beside the item figures of a small group; null from 40 learners. */
export function fewLearnersWords(learners: number): string | null {
  const error = discriminationError(learners);
  if (error === null)
    return 'Fewer than 3 learners handed in all walls. These figures say nothing about the questions yet.';
  if (learners >= ENOUGH_LEARNERS) return null;
  return `With ${learners} learners a discrimination can be out by ${error.toFixed(2)} by chance alone. Only a value well below zero means something. Look at the wall again before you change anything.`;
}

/** What to say about the make-up of a set; null when it is long enough for marks that count. */
export function setLengthWords(walls: number, faults: number, sound: number): string | null {
  if (faults >= GRADED_SET.faults && sound >= GRADED_SET.sound) return null;
  const what = `This set has ${counted(walls, 'wall')}, ${counted(faults, 'fault')} and ${counted(sound, 'sound wall')}.`;
  const forMarks = `For marks that count, ask for ${GRADED_SET.faults} faults and ${GRADED_SET.sound} sound walls, over several sets if need be.`;
  const isPractice =
    walls >= PRACTICE_SET.walls && faults >= PRACTICE_SET.faults && sound >= PRACTICE_SET.sound;
  return isPractice
    ? `${what} That is enough to practise on. ${forMarks}`
    : `${what} That is short even for practice (${PRACTICE_SET.walls} walls, ${PRACTICE_SET.faults} faults, ${PRACTICE_SET.sound} sound). ${forMarks}`;
}

export type ItemFlag = 'check the key' | 'nearly all miss it' | 'nearly all see it';

/** The only things worth flagging in a class: a discrimination below zero, and an item nearly all or nearly none got. */
export function itemFlag({ p, discrimination }: TestFigures['items'][number]): ItemFlag | null {
  if (discrimination !== null && discrimination < 0) return 'check the key';
  if (p < HARDEST) return 'nearly all miss it';
  return p > EASIEST ? 'nearly all see it' : null;
}

function counted(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? '' : 's'}`;
}
