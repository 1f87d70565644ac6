import type { Mm } from '../units';
import { COMMON_PRACTICE } from './cite';
import { type Ask, type Draft, type Family, familyOf } from './family';
import { inUnit } from './measure';
import type { Mistake, NumberUnit, Option, QuestionDrawing } from './question';
import { shuffled, someInOrder, someOf } from './shuffle';
import type { QuestionTopic } from './topics';

export interface Choice {
  readonly text: string;
  readonly why: string;
  readonly drawing?: QuestionDrawing;
}

interface Told {
  readonly prompt: string;
  readonly explanation: string;
  readonly source: string;
}

/** What is said of each mistake, and the value or values that it leads to. */
type Mistakes = Readonly<Record<string, number | readonly number[]>>;

const LETTERS = 'abcdefghij';
/** A little over 1/32 in: an answer rounded to the nearest sixteenth, as a tape is read, is off by no more. */
const HALF_SIXTEENTH: Mm = 0.8;

/** A number to work out. Mistakes that come so near to the answer that they would be right are left out, and repeats. */
export function numberDraft(
  told: Told & { unit: NumberUnit; answer: number; tolerance: number; mistakes: Mistakes },
): Draft {
  const kept: Mistake[] = [];
  for (const mistake of listed(told.mistakes)) {
    if (!Number.isFinite(mistake.value) || mistake.value < 0) continue;
    const apart = (value: number) => Math.abs(value - mistake.value) / told.tolerance;
    if (apart(told.answer) > 1.1 && kept.every(({ value }) => apart(value) > 2)) kept.push(mistake);
  }
  return { ...told, kind: 'number', mistakes: kept };
}

/** A length to work out: given in mm, asked in the reader's unit. */
export function lengthDraft(ask: Ask, told: Told & { answer: Mm; tolerance: Mm; mistakes: Mistakes }): Draft {
  const { system } = ask;
  return numberDraft({
    ...told,
    unit: system === 'mm' ? 'mm' : 'in',
    answer: inUnit(told.answer, system),
    tolerance: inUnit(system === 'mm' ? told.tolerance : Math.max(told.tolerance, HALF_SIXTEENTH), system),
    mistakes: Object.fromEntries(
      Object.entries(told.mistakes).map(([why, values]) => [
        why,
        [values].flat().map((value) => inUnit(value, system)),
      ]),
    ),
  });
}

/** One right and up to three wrong, in an order of chance. A wrong one that reads like another is left out. */
export function chooseDraft(ask: Ask, told: Told & { right: Choice; wrong: readonly Choice[] }): Draft {
  const { right, wrong, ...rest } = told;
  const others = distinct(someOf(wrong, wrong.length, ask.chance), [right.text]).slice(0, 3);
  const order = shuffled([right, ...others], ask.chance);
  return { ...rest, kind: 'choose', options: lettered(order), answer: letter(order.indexOf(right)) };
}

/** All that apply: `count` options, at least one right and one wrong among them. */
export function pickDraft(
  ask: Ask,
  told: Told & { right: readonly Choice[]; wrong: readonly Choice[]; count?: number },
): Draft {
  const { right, wrong, count = 5, ...rest } = told;
  const rights = distinct(right, []);
  const wrongs = distinct(
    wrong,
    rights.map(({ text }) => text),
  );
  const total = Math.min(count, rights.length + wrongs.length);
  const least = Math.max(1, total - wrongs.length);
  const most = Math.max(least, Math.min(rights.length, total - 1));
  const rightCount = ask.chance.whole(least, most);
  const good = someOf(rights, rightCount, ask.chance);
  const order = shuffled([...good, ...someOf(wrongs, total - rightCount, ask.chance)], ask.chance);
  const answer = order.flatMap((choice, index) => (good.includes(choice) ? [letter(index)] : []));
  return { ...rest, kind: 'pick', options: lettered(order), answer };
}

/** `count` of the steps, mixed up; never shown in the right order. */
export function orderDraft(ask: Ask, told: Told & { steps: readonly Choice[]; count?: number }): Draft {
  const { steps, count = 5, ...rest } = told;
  const right = someInOrder(steps, count, ask.chance);
  const mixed = shuffled(right, ask.chance);
  const shown = mixed.every((step, index) => step === right[index]) ? [...mixed].reverse() : mixed;
  return {
    ...rest,
    kind: 'order',
    options: lettered(shown),
    answer: right.map((step) => letter(shown.indexOf(step))),
  };
}

/** Texts, each with why it is right or wrong, or why it comes where it does. */
type Whys = Readonly<Record<string, string>>;

export function choices(whys: Whys): readonly Choice[] {
  return Object.entries(whys).map(([text, why]) => ({ text, why }));
}

/** A family that draws from the same texts each time and goes by common practice. */
export function commonPick(
  topic: QuestionTopic,
  name: string,
  { right, wrong, ...told }: { prompt: string; right: Whys; wrong: Whys; explanation: string },
): Family {
  return familyOf(topic, name, (ask) =>
    pickDraft(ask, { ...told, right: choices(right), wrong: choices(wrong), source: COMMON_PRACTICE }),
  );
}

/** A family that draws from the same steps each time and goes by common practice. */
export function commonOrder(
  topic: QuestionTopic,
  name: string,
  { steps, ...told }: { prompt: string; steps: Whys; explanation: string },
): Family {
  return familyOf(topic, name, (ask) =>
    orderDraft(ask, { ...told, steps: choices(steps), source: COMMON_PRACTICE }),
  );
}

/** Each text once, and none that is taken. */
export function distinct(choices: readonly Choice[], taken: readonly string[]): readonly Choice[] {
  const seen = new Set(taken);
  return choices.filter(({ text }) => !seen.has(text) && seen.add(text));
}

function listed(mistakes: Mistakes): readonly Mistake[] {
  return Object.entries(mistakes).flatMap(([why, values]) =>
    [values].flat().map((value) => ({ value, why })),
  );
}

function lettered(choices: readonly Choice[]): readonly Option[] {
  return choices.map((choice, index) => ({ id: letter(index), ...choice }));
}

function letter(index: number): string {
  return LETTERS.charAt(index);
}
