/** One line of a roster as it came in, after the file format is off. */
export interface RosterLine {
  /** Line in the text, from 1. */
  readonly line: number;
  readonly name: string;
  /** Time in percent as typed; empty for the usual 100. */
  readonly time: string;
}

export interface RosterRow {
  readonly line: number;
  readonly name: string;
  /** Percent of the usual time. */
  readonly timeFactor: number;
}

export interface RosterProblem {
  readonly line: number;
  readonly message: string;
}

export interface CheckedRoster {
  readonly rows: readonly RosterRow[];
  /** While there is one, nothing is written. */
  readonly problems: readonly RosterProblem[];
}

export const LONGEST_NAME = 60;
/** What stands beyond in a cell is not looked at: a name of sixty letters with two accents each is shorter. */
const LONGEST_CELL = 200;
export const MOST_LEARNERS = 400;
/** Percent. Ends belong. Our own bounds: a typing slip is likelier beyond them than a need. */
export const TIME_FACTORS = { least: 100, most: 400 } as const;

const TOO_MANY: RosterProblem = {
  line: 1,
  message: `A group holds at most ${MOST_LEARNERS} learners.`,
};

/** Checks every line against the lines before it and the names the group has. Names differ when more than case and spaces differ. */
export function checkRoster(lines: readonly RosterLine[], present: readonly string[]): CheckedRoster {
  const seen = new Map<string, string>(present.map((name) => [sameName(name), 'is in the group already']));
  const rows: RosterRow[] = [];
  const problems: RosterProblem[] = [];
  if (lines.length > MOST_LEARNERS) return { rows, problems: [TOO_MANY] };
  for (const { line, name: typed, time } of lines) {
    const name = tidyName(cell(typed));
    const timeFactor = percentOf(cell(time));
    const message = nameProblem(name) ?? timeProblem(timeFactor, time) ?? repeated(name, seen);
    if (message !== null) problems.push({ line, message });
    else rows.push({ line, name, timeFactor });
    if (name !== '' && !seen.has(sameName(name))) seen.set(sameName(name), `stands on line ${line} too`);
  }
  if (lines.length === 0)
    problems.push({ line: 1, message: 'There is no name here. Type one name on each line.' });
  if (present.length + rows.length > MOST_LEARNERS) problems.push(TOO_MANY);
  return { rows, problems };
}

/** Spaces at the ends go, and several become one. */
export function tidyName(typed: string): string {
  return typed.normalize('NFC').trim().replace(/\s+/g, ' ');
}

/** What two names have in common when people would take them for the same. */
export function sameName(name: string): string {
  return tidyName(name).toLowerCase();
}

function cell(typed: string): string {
  return typed.trim().slice(0, LONGEST_CELL);
}

function nameProblem(name: string): string | null {
  if (name === '') return 'The name is missing.';
  if ([...name].length > LONGEST_NAME) return `The name is longer than ${LONGEST_NAME} letters.`;
  if (/[\p{Cc}\p{Cf}]/u.test(name))
    return `"${name.replace(/[\p{Cc}\p{Cf}]/gu, '?')}" has a character in it that we cannot read. Save the file as CSV, UTF-8.`;
  if (!/\p{L}/u.test(name)) return `"${name}" has no letter in it. Is this a name?`;
  return null;
}

/** Percent as typed; not a number where it is something else. Nothing typed is the usual time. */
function percentOf(time: string): number {
  if (time === '') return TIME_FACTORS.least;
  return Number(/^(\d{1,3})\s*%?$/.exec(time)?.[1]);
}

function timeProblem(percent: number, typed: string): string | null {
  const { least, most } = TIME_FACTORS;
  return percent >= least && percent <= most
    ? null
    : `Time "${cell(typed)}" is not a whole number of percent from ${least} to ${most}.`;
}

function repeated(name: string, seen: ReadonlyMap<string, string>): string | null {
  const where = seen.get(sameName(name));
  return where === undefined ? null : `"${name}" ${where}. Give each learner a name of their own.`;
}
