import type { WallAnswer } from './wall-answer';

/** One question of a set work and what each learner scored on it. */
export interface TestItem {
  readonly place: number;
  /** Which fault of the wall, from 0; null when the item is the whole wall. */
  readonly index: number | null;
  /** The check; null for a whole wall. */
  readonly fault: string | null;
  /** Whether the wall is sound, and the item is to leave it alone. */
  readonly sound: boolean;
}

export interface TestTable {
  readonly items: readonly TestItem[];
  readonly learners: readonly string[];
  /** Rows learners, columns items, 0 to 1. */
  readonly scores: readonly (readonly number[])[];
  /** Learners left out because a wall of theirs is missing or another. */
  readonly leftOut: number;
}

/**
 * The answers of one set work as a test. When all got the same walls an item is one fault (1: found and named), or a
 * sound wall (1: answered, and left alone). When each got walls of their own, an item is a place in the set and scores as the wall
 * did: single generated walls are seen by too few to be analysed.
 */
export function testTable(answers: readonly WallAnswer[], sameForAll: boolean): TestTable {
  const byLearner = new Map<string, Map<number, WallAnswer>>();
  for (const answer of answers) {
    const own = byLearner.get(answer.learner) ?? new Map<number, WallAnswer>();
    byLearner.set(answer.learner, own.set(answer.place, answer));
  }
  const places = [...new Set(answers.map(({ place }) => place))].sort((a, b) => a - b);
  const firstAt = new Map(places.map((place) => [place, answers.find((answer) => answer.place === place)]));
  const isWhole = (own: ReadonlyMap<number, WallAnswer>) =>
    places.every((place) => {
      const answer = own.get(place);
      return answer !== undefined && (!sameForAll || answer.code === firstAt.get(place)?.code);
    });
  const whole = [...byLearner].filter(([, own]) => isWhole(own));
  const items = places.flatMap((place): readonly TestItem[] => {
    const faults = firstAt.get(place)?.faults ?? [];
    if (!sameForAll) return [{ place, index: null, fault: null, sound: false }];
    if (faults.length === 0) return [{ place, index: null, fault: null, sound: true }];
    return faults.map(({ fault }, index) => ({ place, index, fault, sound: false }));
  });
  return {
    items,
    learners: whole.map(([learner]) => learner),
    scores: whole.map(([, own]) => items.map((item) => scoreOf(item, own.get(item.place)))),
    leftOut: byLearner.size - whole.length,
  };
}

function scoreOf({ index, sound }: TestItem, answer: WallAnswer | undefined): number {
  if (answer === undefined) return 0;
  if (index !== null) return answer.faults[index]?.named === answer.faults[index]?.fault ? 1 : 0;
  return sound ? (answer.answered && answer.falseMarks.length === 0 ? 1 : 0) : answer.score;
}
