import { chanceOf } from '../../../lib/generate/chance';

export interface Seen {
  readonly sound: boolean;
  readonly traits: Readonly<Record<string, string>>;
}

const SHUFFLINGS = 20;

/** For each trait: its mutual information with soundness, and the most that shuffled soundness gives. */
export function informationOf(seen: readonly Seen[]): readonly string[] {
  const names = Object.keys(seen[0]?.traits ?? {});
  const chance = chanceOf(1, 0);
  const sound = seen.map((each) => each.sound);
  const shuffled = Array.from({ length: SHUFFLINGS }, () => {
    const order = [...sound];
    for (let at = order.length - 1; at > 0; at--) {
      const other = chance.whole(0, at);
      [order[at], order[other]] = [order[other] === true, order[at] === true];
    }
    return order;
  });
  return names.map((name) => {
    const values = seen.map(({ traits }) => traits[name] ?? '');
    const found = mutual(values, sound);
    const most = Math.max(...shuffled.map((order) => mutual(values, order)));
    const told = found > most ? '  TELLS' : '';
    return `${name.padEnd(24)}${found.toFixed(5)}  chance ${most.toFixed(5)}${told}`;
  });
}

function mutual(values: readonly string[], sound: readonly boolean[]): number {
  const all = new Map<string, { count: number; sound: number }>();
  let soundWalls = 0;
  for (const [index, value] of values.entries()) {
    const cell = all.get(value) ?? { count: 0, sound: 0 };
    cell.count += 1;
    if (sound[index]) {
      cell.sound += 1;
      soundWalls += 1;
    }
    all.set(value, cell);
  }
  const n = values.length;
  let bits = 0;
  for (const { count, sound: ofThem } of all.values()) {
    bits += part(ofThem, count, soundWalls, n) + part(count - ofThem, count, n - soundWalls, n);
  }
  return bits;
}

function part(both: number, one: number, other: number, n: number): number {
  return both === 0 ? 0 : (both / n) * Math.log2((both * n) / (one * other));
}
