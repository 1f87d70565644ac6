import type { Chance } from './family';

/** The same things in an order of chance; every order is as likely. */
export function shuffled<T>(things: readonly T[], chance: Chance): readonly T[] {
  const rest = [...things];
  const order: T[] = [];
  while (rest.length > 0) order.push(...rest.splice(chance.whole(0, rest.length - 1), 1));
  return order;
}

/** Some of them, in an order of chance. Fewer when there are not so many. */
export function someOf<T>(things: readonly T[], count: number, chance: Chance): readonly T[] {
  return shuffled(things, chance).slice(0, count);
}

/** Some of them, in the order they came in. */
export function someInOrder<T>(things: readonly T[], count: number, chance: Chance): readonly T[] {
  const kept = new Set(
    someOf(
      things.map((_, index) => index),
      count,
      chance,
    ),
  );
  return things.filter((_, index) => kept.has(index));
}
