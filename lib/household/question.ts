import type { Mm } from '../units';

/** Always allowed, and never a pass: what was not seen is told as not seen. */
export const SEEN = ['yes', 'no', 'cannot see', 'do not know'] as const;
export type Seen = (typeof SEEN)[number];

/** What a person says to a question: one of four words, or a length in mm. */
export type Answer = Seen | Mm;

export interface Question {
  readonly id: string;
  readonly ask: string;
  /** How to find out, from where. */
  readonly how?: string;
  /** Asked for a length: no answer above this many mm is taken, and it may not be measured where the wall could fall. */
  readonly most?: Mm;
  /** Beside a measured value: "Widest crack: 3 mm". */
  readonly measured?: string;
}

/** One place to stand and look from. */
export interface Stop {
  readonly id: string;
  readonly title: string;
  readonly stand: string;
  readonly questions: readonly Question[];
}
