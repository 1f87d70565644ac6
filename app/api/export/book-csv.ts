import { stringify } from 'csv-stringify/sync';
import { passOutcome } from '../../../lib/classes/pass-outcome';
import { figuresOf } from '../../../lib/classes/statistics/learner-figures';
import { scoreError } from '../../../lib/classes/statistics/score-error';
import { STEPS } from '../../../lib/classes/statistics/wall-answer';
import { exportedLearners } from '../../../lib/store/book/book-export';
import { allBookRows, type BookCell, type BookWork } from '../../../lib/store/book/mark-book';
import type { Store } from '../../../lib/store/database';
import { isoOf } from './iso-of';

/** Marks a file as UTF-8 for spreadsheet programs. */
const BYTE_ORDER_MARK = '\uFEFF';
/** Nothing handed in: not the same as 0. */
const NONE = 'NA';

type Cell = string | number;

/** RFC 4180, with nothing in it that a spreadsheet program would run as a formula. */
export function csvOf(rows: readonly (readonly Cell[])[]): string {
  return stringify(
    rows.map((row) => row.map(safe)),
    {
      record_delimiter: '\r\n',
      escape_formulas: true,
    },
  );
}

/** The writer lets NUL through; no spreadsheet needs it. */
function safe(cell: Cell): Cell {
  return typeof cell === 'string' ? cell.replaceAll('\0', '') : cell;
}

/** One row a learner, one column a set work: the score in percent, NA where nothing was handed in. A title that comes twice goes with its work's id. */
export async function* wideCsv(
  db: Store['db'],
  group: string,
  works: readonly BookWork[],
): AsyncGenerator<string> {
  yield `${BYTE_ORDER_MARK}${csvOf([['learner_ref', 'learner', ...headsOf(works)]])}`;
  for await (const rows of allBookRows(db, group)) {
    yield csvOf(
      rows.map(({ learner, name, cells }) => [
        learner,
        name,
        ...works.map(({ id }) => percentOf(cells.get(id)?.score)),
      ]),
    );
  }
}

function headsOf(works: readonly BookWork[]): readonly string[] {
  const titles = works.map(({ title }) => title);
  return works.map(({ id, title }) =>
    titles.indexOf(title) === titles.lastIndexOf(title) ? title : `${title} (${id})`,
  );
}

/** With one decimal. */
function percentOf(score: number | null | undefined): Cell {
  return score === null || score === undefined ? NONE : Math.round(score * 1000) / 10;
}

const LONG_COLUMNS = [
  'learner_ref',
  'learner',
  'work_ref',
  'work',
  'attempt',
  'handed_in_at',
  'late',
  'state',
  'score',
  'standard_error',
  'overridden',
  'pass',
  'markings',
  'walls',
  ...STEPS.flatMap((step) => [`${step}_got`, `${step}_of`]),
  'false_marks',
  'certain_but_wrong',
] as const;

function passOf(
  { score, overridden }: Pick<BookCell, 'score' | 'overridden'>,
  work: BookWork | undefined,
): Cell {
  if (score === null || !work || work.passShare === null) return NONE;
  return passOutcome(score, work.walls, work.passShare, overridden);
}

/** One row a hand-in, every try. */
export async function* longCsv(
  db: Store['db'],
  group: string,
  works: readonly BookWork[],
): AsyncGenerator<string> {
  const byId = new Map(works.map((work) => [work.id, work]));
  yield `${BYTE_ORDER_MARK}${csvOf([LONG_COLUMNS])}`;
  for await (const { id, name, handIns } of exportedLearners(db, group)) {
    if (handIns.length === 0) continue;
    yield csvOf(
      handIns.map((handIn): readonly Cell[] => {
        const work = byId.get(handIn.work);
        const figures = figuresOf(handIn.walls);
        const marked = handIn.walls.length > 0;
        return [
          id,
          name,
          handIn.work,
          work?.title ?? '',
          handIn.number,
          isoOf(handIn.handedInAt ?? 0),
          handIn.late ? 1 : 0,
          handIn.state,
          handIn.score ?? NONE,
          handIn.score === null ? NONE : scoreError(handIn.score, work?.walls ?? handIn.walls.length),
          handIn.overridden ? 1 : 0,
          passOf(handIn, work),
          handIn.version,
          work?.walls ?? handIn.walls.length,
          ...STEPS.flatMap((step) => [figures.steps[step]?.got ?? NONE, figures.steps[step]?.of ?? NONE]),
          marked ? figures.falseMarks : NONE,
          marked ? figures.certainButWrong.length : NONE,
        ];
      }),
    );
  }
}
