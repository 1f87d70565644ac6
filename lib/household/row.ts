import type { Drawer } from './drawers';
import type { State } from './measures';
import type { QuestionId } from './stops';

/** One row of the table of decisions: where these answers hold, what was seen goes into this drawer. */
export interface Row {
  readonly about: QuestionId;
  /** All of them have to hold. */
  readonly when: Readonly<Partial<Record<QuestionId, readonly State[]>>>;
  readonly drawer: Drawer;
  /** What was seen. Never why. */
  readonly saw: string;
  /** What else it may be. */
  readonly maybe: readonly string[];
  /** What to ask, or what to do about this one thing. */
  readonly ask: string;
}

type Words = Pick<Row, 'saw' | 'ask'> & { readonly maybe?: readonly string[] };

/** What was not seen is never taken for good. */
export const NOT_SEEN: readonly State[] = ['cannot see', 'do not know', 'not answered'];

export function row(
  about: QuestionId,
  is: State | readonly State[],
  drawer: Drawer,
  { saw, ask, maybe = [] }: Words,
  also: Row['when'] = {},
): Row {
  return { about, when: { [about]: [is].flat(), ...also }, drawer, saw, maybe, ask };
}
