import { CsvError, parse } from 'csv-parse/sync';
import * as z from 'zod';
import { MOST_LEARNERS, type RosterLine, type RosterProblem } from '../../lib/classes/roster';

export interface ReadRoster {
  readonly lines: readonly RosterLine[];
  /** What cannot be read at all. */
  readonly problems: readonly RosterProblem[];
}

const NAME = /^(name|learner|full name)$/i;
const FIRST = /^(first|given) ?names?$/i;
const LAST = /^((last|family) ?names?|surname)$/i;
const TIME = /^time( ?%| percent| factor)?$/i;
/** What stands between columns and not in a name. A comma and a space may: "Birch, Ada". */
const BETWEEN_COLUMNS = /[;\t]|^"|,(?! )|, {1,9}\d/;

/** Where in a row of a table the parts of a name are, and the time (-1: nowhere). */
interface Columns {
  readonly name: readonly number[];
  readonly time: number;
}

/**
 * Reads a roster as it was typed or pasted: one name a line; or a table (RFC 4180; comma, semicolon or tab between the columns) whose
 * first line names a column "name", or "first name" and "last name"; and, if wanted, one "time" in percent. Empty lines do not count.
 */
export function readRoster(text: string): ReadRoster {
  const clean = text.replace(/^\uFEFF/, '');
  const first = clean.split(/\r?\n/).find((line) => line.trim() !== '') ?? '';
  const delimiter = [',', ';', '\t'].find((each) => first.includes(each)) ?? ',';
  const head = first.split(delimiter).map((cell) => cell.trim().replace(/^"|"$/g, ''));
  const at = (column: RegExp) => head.findIndex((cell) => column.test(cell));
  const whole = at(NAME);
  const name = whole === -1 ? [at(FIRST), at(LAST)] : [whole];
  return name.includes(-1) ? plainLines(clean) : readTable(clean, delimiter, { name, time: at(TIME) });
}

function plainLines(text: string): ReadRoster {
  const lines = text
    .split(/\r?\n/)
    .map((name, index) => ({ line: index + 1, name, time: '' }))
    .filter(({ name }) => name.trim() !== '');
  const cells = lines.find(({ name }) => BETWEEN_COLUMNS.test(name.trim()));
  if (!cells) return { lines, problems: [] };
  const row = [...cells.name.trim().replaceAll('\t', ' ')].slice(0, 40).join('');
  const message = `"${row}" looks like a row of a table. Then the first line has to name the columns, one of them "name". Or leave one name on each line.`;
  return { lines: [], problems: [{ line: cells.line, message }] };
}

const tableRows = z.array(z.object({ record: z.array(z.string()), info: z.object({ lines: z.number() }) }));

function readTable(text: string, delimiter: string, columns: Columns): ReadRoster {
  try {
    const parsed: unknown = parse(text, {
      delimiter,
      info: true,
      skip_empty_lines: true,
      relax_column_count: true,
      trim: true,
      // The first line and one more than a group holds: what is beyond is refused unread.
      to: MOST_LEARNERS + 2,
    });
    const lines = tableRows
      .parse(parsed)
      .slice(1)
      .map(({ record, info }) => ({
        line: info.lines,
        name: columns.name.map((at) => record[at] ?? '').join(' '),
        time: record[columns.time] ?? '',
      }));
    return { lines, problems: [] };
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const line = typeof error.lines === 'number' ? error.lines : 1;
    return {
      lines: [],
      problems: [
        { line, message: 'This line cannot be read: a quotation mark is open or stands in the wrong place.' },
      ],
    };
  }
}
