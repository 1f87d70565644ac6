import { chanceOf } from '../../../lib/generate/chance';

/** Bits that one of a pair tells of the other, from their counts. */
export function mutualInformation(pairs: readonly (readonly [unknown, unknown])[]): number {
  const shares = (texts: readonly string[]) => {
    const counts = new Map<string, number>();
    for (const text of texts) counts.set(text, (counts.get(text) ?? 0) + 1 / texts.length);
    return counts;
  };
  const first = shares(pairs.map(([a]) => String(a)));
  const second = shares(pairs.map(([, b]) => String(b)));
  const both = shares(pairs.map(([a, b]) => `${a}\n${b}`));
  let bits = 0;
  for (const [key, share] of both) {
    const [a = '', b = ''] = key.split('\n');
    bits += share * Math.log2(share / ((first.get(a) ?? 1) * (second.get(b) ?? 1)));
  }
  return bits;
}

const SHUFFLINGS = 40;

export interface Told {
  /** The trait that tells most, and how much, bits. */
  readonly trait: string;
  readonly bits: number;
  /** The most that any trait tells of what was shuffled, of forty shufflings. */
  readonly chance: number;
}

/**
 * What the most telling of all traits tells of something that `known` does not tell already, beside what the most telling tells by chance
 * alone. Outcomes are shuffled among walls of which the same is known.
 */
export function mostTold(
  traits: readonly Readonly<Record<string, string>>[],
  of: readonly boolean[],
  known: readonly string[],
): Told {
  const columns = columnsOf(traits);
  const kinds = [...new Set(known)];
  const groups = known.map((each) => kinds.indexOf(each));
  const members = kinds.map((_, kind) => groups.flatMap((each, index) => (each === kind ? [index] : [])));
  const most = (outcomes: readonly boolean[]) => {
    let best = { trait: '', bits: 0 };
    for (const { name, classes } of columns) {
      const bits = bitsOf(classes, outcomes, groups);
      if (bits > best.bits) best = { trait: name, bits };
    }
    return best;
  };
  const chance = chanceOf(1, 0);
  let byChance = 0;
  for (let shuffling = 0; shuffling < SHUFFLINGS; shuffling++) {
    const order = [...of];
    for (const group of members) {
      for (let at = group.length - 1; at > 0; at--) {
        const [here = 0, other = 0] = [group[at], group[chance.whole(0, at)]];
        [order[here], order[other]] = [order[other] === true, order[here] === true];
      }
    }
    byChance = Math.max(byChance, most(order).bits);
  }
  return { ...most(of), chance: byChance };
}

const CLASSES = 6;

interface Column {
  readonly name: string;
  /** The class of each wall by this trait, from 0. */
  readonly classes: readonly number[];
}

/** Traits that differ at all, each way of dividing the walls once. */
function columnsOf(traits: readonly Readonly<Record<string, string>>[]): readonly Column[] {
  const names = [...new Set(traits.flatMap((each) => Object.keys(each)))];
  const columns = new Map<string, Column>();
  for (const name of names) {
    const values = coarse(traits.map((each) => each[name] ?? ''));
    const kinds = [...new Set(values)];
    if (kinds.length < 2) continue;
    const classes = values.map((value) => kinds.indexOf(value));
    const key = classes.join();
    if (!columns.has(key)) columns.set(key, { name, classes });
  }
  return [...columns.values()];
}

/** Conditional mutual information I(class; outcome | group), bits. */
function bitsOf(classes: readonly number[], of: readonly boolean[], groups: readonly number[]): number {
  const kinds = Math.max(...classes) + 1;
  const sizes = new Uint32Array(Math.max(...groups) + 1);
  const [yesIn, inClass, yesInClass] = [
    new Uint32Array(sizes.length),
    new Uint32Array(sizes.length * kinds),
    new Uint32Array(sizes.length * kinds),
  ];
  const count = (list: Uint32Array, at: number) => {
    list[at] = (list[at] ?? 0) + 1;
  };
  for (const [index, yes] of of.entries()) {
    const group = groups[index] ?? 0;
    const cell = group * kinds + (classes[index] ?? 0);
    count(sizes, group);
    count(inClass, cell);
    if (yes) count(yesIn, group);
    if (yes) count(yesInClass, cell);
  }
  const part = (both: number, one: number, other: number, all: number) =>
    both === 0 ? 0 : (both / of.length) * Math.log2((both * all) / (one * other));
  let bits = 0;
  for (const [cell, size] of inClass.entries()) {
    const group = Math.floor(cell / kinds);
    const [all = 0, yes = 0, both = 0] = [sizes[group], yesIn[group], yesInClass[cell]];
    bits += part(both, size, yes, all) + part(size - both, size, all - yes, all);
  }
  return bits;
}

/** Numbers of many sizes in six classes of about equal number: else each would tell of its own wall alone. */
function coarse(values: readonly string[]): readonly string[] {
  if (new Set(values).size <= CLASSES) return values;
  const numbers = values.map(Number);
  if (numbers.some(Number.isNaN)) return values.map((value) => String(value.length % CLASSES));
  const sorted = numbers.toSorted((a, b) => a - b);
  const ends = Array.from(
    { length: CLASSES - 1 },
    (_, index) => sorted[Math.floor(((index + 1) * sorted.length) / CLASSES)] ?? 0,
  );
  return numbers.map((value) => String(ends.filter((end) => value >= end).length));
}
