import { formatBound } from '../../lib/limits/format-bound';
import { type Limit, RULE_SETS } from '../../lib/limits/limit';
import { ALL_LIMITS, limitsOf, ruleSetTitle, sourceOf } from '../../lib/limits/limits';
import { printCommand, readOptions, ruleSetOf } from './command';

const USAGE = `Usage: npm run -s limits -- [--rules R] [--json]
  --rules R   only one rule set: ${RULE_SETS.join(', ')}
  --json      print the limits as a JSON array (a step without end, and no limit, are null)`;

const OPTIONS = {
  rules: { type: 'string' },
  json: { type: 'boolean' },
  help: { type: 'boolean' },
} as const;

/** Significant digits printed: more than any source has, fewer than the last bits of a double. */
const DIGITS = 12;

function run(): string {
  const { rules, json, help } = readOptions({ options: OPTIONS }).values;
  if (help) return USAGE;
  const limits = rules === undefined ? ALL_LIMITS : limitsOf(ruleSetOf(rules));
  return json ? JSON.stringify(limits, withoutLastBits, 2) : limits.map(lineOf).join('\n');
}

/** A share stays as it is: a third has no end. */
function withoutLastBits(key: string, value: unknown): unknown {
  return typeof value === 'number' && key !== 'share' ? Number(value.toPrecision(DIGITS)) : value;
}

/** Lines of a limit: what, how much, from where, whether a newer edition is out, and the note. */
function lineOf(limit: Limit): string {
  const { id, rules, quantity, kind, edition, clause, howSure, note } = limit;
  const { publisher, newer } = sourceOf(limit);
  const first = rules === 'united-states' ? 'inches' : 'mm';
  const asked = formatBound(limit, first);
  return [
    `${ruleSetTitle(rules)}  ${id}`,
    `  ${quantity}: ${asked.length > 0 ? asked.join('; ') : tableOf(limit)}`,
    `  ${kind}; ${edition}, ${clause}; ${howSure}; ${publisher}`,
    ...(newer === undefined ? [] : [`  newer edition, not read: ${newer}`]),
    ...(note === undefined ? [] : [`  ${note}`]),
  ].join('\n');
}

function tableOf({ bound }: Limit): string {
  return 'rows' in bound ? `a table (--json prints it), rows: ${bound.rows.length}` : '';
}

printCommand(run);
