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

/** What the most telling of all traits tells of something, beside what the most telling tells by chance alone. */
export function mostTold(traits: readonly Readonly<Record<string, string>>[], of: readonly boolean[]): Told {
  const columns = columnsOf(traits);
  const most = (outcomes: readonly boolean[]) => {
    let best = { trait: '', bits: 0 };
    for (const { name, classes, sizes } of columns) {
      const bits = bitsOf(classes, sizes, outcomes);
      if (bits > best.bits) best = { trait: name, bits };
    }
    return best;
  };
  const chance = chanceOf(1, 0);
  let byChance = 0;
  for (let shuffling = 0; shuffling < SHUFFLINGS; shuffling++) {
    const order = [...of];
    for (let at = order.length - 1; at > 0; at--) {
      const other = chance.whole(0, at);
      [order[at], order[other]] = [order[other] === true, order[at] === true];
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
  readonly sizes: readonly number[];
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
    const sizes = kinds.map((_, kind) => classes.filter((each) => each === kind).length);
    const key = classes.join();
    if (!columns.has(key)) columns.set(key, { name, classes, sizes });
  }
  return [...columns.values()];
}

function bitsOf(classes: readonly number[], sizes: readonly number[], of: readonly boolean[]): number {
  const yes = sizes.map(() => 0);
  let all = 0;
  for (const [index, each] of of.entries()) {
    if (!each) continue;
    const kind = classes[index] ?? 0;
    yes[kind] = (yes[kind] ?? 0) + 1;
    all += 1;
  }
  const count = of.length;
  const part = (both: number, one: number, other: number) =>
    both === 0 ? 0 : (both / count) * Math.log2((both * count) / (one * other));
  return sizes.reduce((bits, size, kind) => {
    const ofThem = yes[kind] ?? 0;
    return bits + part(ofThem, size, all) + part(size - ofThem, size, count - all);
  }, 0);
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
