import type { WallAnswer } from '../../classes/statistics/wall-answer';
import type { Store } from '../database';
import { attemptAnswers } from './book-answers';
import { type BookCell, handInsOf } from './mark-book';

export interface ExportedHandIn extends BookCell {
  readonly work: string;
  /** Empty while it is not marked. */
  readonly walls: readonly WallAnswer[];
}

export interface ExportedLearner {
  readonly id: string;
  readonly name: string;
  readonly handIns: readonly ExportedHandIn[];
}

/** Learners in memory at once, with all they handed in. */
const PAGE = 25;

/** All learners of a group by name, with every hand-in wall by wall; a few learners in memory at a time. */
export async function* exportedLearners(db: Store['db'], group: string): AsyncGenerator<ExportedLearner> {
  let after = '';
  for (;;) {
    const learners = await db
      .selectFrom('learner')
      .select(['id', 'name'])
      .where('group_id', '=', group)
      .where('removed_at', 'is', null)
      .where('name', '>', after)
      .orderBy('name')
      .limit(PAGE)
      .execute();
    const last = learners[learners.length - 1];
    if (last === undefined) return;
    const ids = learners.map(({ id }) => id);
    const handIns = await handInsOf(db, ids);
    const answers = await attemptAnswers(db, { learners: ids });
    const walls = new Map(answers.map((each) => [each.attempt, each.walls]));
    for (const { id, name } of learners) {
      yield {
        id,
        name,
        handIns: handIns
          .filter(({ learner }) => learner === id)
          .map(({ learner: _, ...handIn }) => ({ ...handIn, walls: walls.get(handIn.attempt) ?? [] })),
      };
    }
    after = last.name;
  }
}
