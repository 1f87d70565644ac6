import type { Store } from '../database';

/** One mark that an attempt was ever given, as its learner may read it: no name of who gave it. */
export interface GivenMark {
  readonly kind: 'handed in' | 'marked again' | 'set by hand';
  /** 0 to 1. */
  readonly score: number;
  /** Why, in an instructor's words; of a hand-in there is no more to say. */
  readonly reason: string;
}

/** Markings and own marks, in the order in which they came to count: an own mark stands over every marking. */
export async function givenMarks({ db }: Store, attempt: string): Promise<readonly GivenMark[]> {
  const [markings, own] = await Promise.all([
    db
      .selectFrom('result_version')
      .select(['version', 'score', 'reason'])
      .where('attempt_id', '=', attempt)
      .orderBy('version')
      .execute(),
    db
      .selectFrom('override_mark')
      .select(['score', 'reason'])
      .where('attempt_id', '=', attempt)
      .orderBy('made_at')
      .orderBy('id')
      .execute(),
  ]);
  return [
    ...markings.map(({ version, score, reason }) => ({
      kind: version === 1 ? ('handed in' as const) : ('marked again' as const),
      score,
      reason,
    })),
    ...own.map((mark) => ({ kind: 'set by hand' as const, ...mark })),
  ];
}
