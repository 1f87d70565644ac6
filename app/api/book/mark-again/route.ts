import { GradingError } from '../../../../lib/exercise/place-marks';
import type { RuleSetId } from '../../../../lib/limits/limit';
import { addMarking } from '../../../../lib/store/book/book-changes';
import type { WallToGrade } from '../../../../lib/store/hand-in';
import { handedInTo, handedWalls } from '../../../../lib/store/hand-in-record';
import { guarded } from '../../../access/guard';
import { gradeWalls } from '../../../server/grade-walls';
import { markAgainFields } from '../book-fields';

/**
 * Marks every hand-in of a set work again, after a key or a rule set has changed. Old results stay; a new one is put beside them only
 * where something came out otherwise. Hand-ins whose walls this engine can no longer lay are counted and left as they are.
 */
export const POST = guarded('POST /api/book/mark-again', async ({ read, store, by }) => {
  const { work, reason, rules } = read(markAgainFields);
  const counts = { changed: 0, same: 0, notLaid: 0 };
  for (const attempt of await handedInTo(store.db, work)) {
    const walls = await handedWalls(store.db, attempt);
    const graded = markedAgain(walls, rules === 'own' ? null : rules);
    if (graded === null) {
      counts.notLaid += 1;
      continue;
    }
    counts[(await addMarking(store, { attempt, graded, reason }, by)) ? 'changed' : 'same'] += 1;
  }
  return counts;
});

/** Null also where a mark means nothing on the wall any more. */
function markedAgain(walls: readonly WallToGrade[], rules: RuleSetId | null) {
  try {
    return gradeWalls(walls, rules);
  } catch (error) {
    if (error instanceof GradingError) return null;
    throw error;
  }
}
