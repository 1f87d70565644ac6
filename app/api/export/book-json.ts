import { scoreError } from '../../../lib/classes/statistics/score-error';
import { type ExportedLearner, exportedLearners } from '../../../lib/store/book/book-export';
import type { BookWork } from '../../../lib/store/book/mark-book';
import type { Store } from '../../../lib/store/database';
import { BOOK_SCHEMA_PATH, BOOK_SCHEMA_VERSION, type Book, type LearnerRecord } from './book-schema';
import { isoOf } from './iso-of';

/** The whole mark book as JSON in the form of its published schema, one learner at a time. */
export async function* bookJson(
  db: Store['db'],
  group: Book['group'],
  works: readonly BookWork[],
  at: number,
): AsyncGenerator<string> {
  const head: Omit<Book, 'learners'> = {
    $schema: BOOK_SCHEMA_PATH,
    schemaVersion: BOOK_SCHEMA_VERSION,
    exportedAt: isoOf(at),
    group,
    works: works.map(({ id, title, walls, sameForAll, dueAt }) => ({
      id,
      title,
      walls,
      sameForAll,
      dueAt: dueAt === null ? null : isoOf(dueAt),
    })),
  };
  const walls = new Map(works.map((work) => [work.id, work.walls]));
  yield `${JSON.stringify(head).slice(0, -1)},"learners":[`;
  let between = '\n';
  for await (const learner of exportedLearners(db, group.id)) {
    yield between + JSON.stringify(recordOf(learner, walls));
    between = ',\n';
  }
  yield '\n]}\n';
}

/** `walls` has the number of walls of each work. An open try is no hand-in. */
export function recordOf(
  { id, name, handIns }: ExportedLearner,
  walls: ReadonlyMap<string, number>,
): LearnerRecord {
  return {
    id,
    name,
    handIns: handIns.flatMap((handIn) =>
      handIn.state === 'open' || handIn.handedInAt === null
        ? []
        : {
            work: handIn.work,
            number: handIn.number,
            handedInAt: isoOf(handIn.handedInAt),
            late: handIn.late,
            state: handIn.state,
            score: handIn.score,
            standardError:
              handIn.score === null
                ? null
                : scoreError(handIn.score, walls.get(handIn.work) ?? handIn.walls.length),
            overridden: handIn.overridden,
            markings: handIn.version,
            walls: handIn.walls.map(({ place, code, score, saysSound, faults, falseMarks, steps }) => ({
              place,
              code,
              score,
              saysSound,
              faults: faults.map(({ fault, found, named, sure }) => ({ fault, found, named, sure })),
              falseMarks: falseMarks.map(({ fault, part, sure }) => ({ fault, part, sure })),
              steps: { ...steps },
            })),
          },
    ),
  };
}
