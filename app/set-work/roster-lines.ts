import { CsvError, parse } from 'csv-parse/sync';
import type { RosterLine, RosterProblem } from '../../lib/classes/roster';

export interface ReadRoster {
  readonly lines: readonly RosterLine[];
  /** What cannot be read at all. */
  readonly problems: readonly RosterProblem[];
}

const NAME = /^(name|learner|full name)$/i;
const TIME = /^time( ?%| percent| factor)?$/i;

/**
 * Reads a roster as it was typed or pasted: one name a line; or a table (RFC 4180; comma, semicolon or tab between the columns) whose
 * first line names a column "name" and, if wanted, one "time" in percent. Empty lines do not count.
 */
export function readRoster(text: string): ReadRoster {
  const clean = text.replace(/^\uFEFF/, '');
  const first = clean.split(/\r?\n/).find((line) => line.trim() !== '') ?? '';
  const delimiter = [',', ';', '\t'].find((each) => first.includes(each)) ?? ',';
  const head = first.split(delimiter).map((cell) => cell.trim().replace(/^"|"$/g, ''));
  const nameAt = head.findIndex((cell) => NAME.test(cell));
  if (nameAt === -1) return { lines: plainLines(clean), problems: [] };
  return readTable(
    clean,
    delimiter,
    nameAt,
    head.findIndex((cell) => TIME.test(cell)),
  );
}

function plainLines(text: string): readonly RosterLine[] {
  return text
    .split(/\r?\n/)
    .map((name, index) => ({ line: index + 1, name, time: '' }))
    .filter(({ name }) => name.trim() !== '');
}

function readTable(text: string, delimiter: string, nameAt: number, timeAt: number): ReadRoster {
  try {
    const rows = parse(text, {
      delimiter,
      info: true,
      skip_empty_lines: true,
      relax_column_count: true,
      trim: true,
    }) as unknown as readonly {
      readonly record: readonly string[];
      readonly info: { readonly lines: number };
    }[];
    const lines = rows.slice(1).map(({ record, info }) => ({
      line: info.lines,
      name: record[nameAt] ?? '',
      time: timeAt === -1 ? '' : (record[timeAt] ?? ''),
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
