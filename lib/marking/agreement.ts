import { MarkingError, requireNotNegative } from './marking-error';
import type { VerdictCounts } from './verdict-counts';

/** Square table: cell [i][j] counts (or is the share of) cases that one judge put in class i, the other in j. */
export type AgreementTable = readonly (readonly number[])[];

/**
 * Cohen's kappa of two judges: 1 - disagreement seen / disagreement expected by chance. 1 is full agreement, 0
 * chance. Null when chance alone would give full agreement (all cases in one class), for then it says nothing.
 * Throws MarkingError for a table that is empty, not square, has a negative or not finite cell, or only zeros.
 */
export function cohenKappa(table: AgreementTable): number | null {
  return weightedKappa(
    table,
    table.map((_, i) => table.map((_, j) => (i === j ? 0 : 1))),
  );
}

/**
 * Kappa in which some disagreements cost more than others (J. Cohen 1968): costs[i][j] >= 0 is the cost of
 * cell [i][j], 0 on the diagonal. It need not be symmetric: a missed fault may cost more than a false alarm.
 * Null as for cohenKappa. Throws MarkingError also when the costs have another size, a negative or not finite
 * cell, or a cost on the diagonal.
 */
export function weightedKappa(table: AgreementTable, costs: AgreementTable): number | null {
  requireSquare('table', table);
  requireSquare('costs', costs);
  if (costs.length !== table.length) {
    throw new MarkingError(`costs: ${costs.length} classes for a table of ${table.length}`);
  }
  costs.forEach((row, i) => {
    if (row[i] !== 0) throw new MarkingError(`costs.${i}.${i}: agreement must cost 0, not ${row[i]}`);
  });
  const rowSums = table.map(sum);
  const columnSums = table.map((_, j) => sum(table.map((row) => row[j] ?? 0)));
  const total = sum(rowSums);
  if (total === 0) throw new MarkingError('table: no cases');
  let seen = 0;
  let expected = 0;
  table.forEach((row, i) => {
    row.forEach((cell, j) => {
      const cost = costs[i]?.[j] ?? 0;
      seen += cost * cell;
      expected += (cost * (rowSums[i] ?? 0) * (columnSums[j] ?? 0)) / total;
    });
  });
  return expected === 0 ? null : 1 - seen / expected;
}

/**
 * Fleiss' kappa of many judges on the same cases: rows[i][j] counts the judges who put case i in class j. Every
 * case needs the same number of judges, at least 2. Null when all answers fell in one class.
 * Throws MarkingError for no cases, rows of unequal length or sum, fewer than 2 judges, or a bad cell.
 */
export function fleissKappa(rows: AgreementTable): number | null {
  const classes = rows[0]?.length ?? 0;
  if (classes === 0) throw new MarkingError('rows: no cases');
  const judges = sum(rows[0] ?? []);
  rows.forEach((row, i) => {
    if (row.length !== classes) throw new MarkingError(`rows.${i}: ${row.length} classes, not ${classes}`);
    row.forEach((cell, j) => {
      requireNotNegative(`rows.${i}.${j}`, cell);
    });
    if (sum(row) !== judges) throw new MarkingError(`rows.${i}: ${sum(row)} judges, not ${judges}`);
  });
  if (judges < 2) throw new MarkingError('rows.0: agreement needs at least 2 judges');
  const agreement =
    sum(rows.map((row) => sum(row.map((cell) => cell * (cell - 1))))) / (rows.length * judges * (judges - 1));
  const answers = rows.length * judges;
  const byClass = Array.from({ length: classes }, (_, j) => sum(rows.map((row) => row[j] ?? 0)));
  if (byClass.includes(answers)) return null;
  const chance = sum(byClass.map((count) => (count / answers) * (count / answers)));
  return (agreement - chance) / (1 - chance);
}

/** The two-class table of verdicts for cohenKappa: rows answer (faulty, sound), columns truth (faulty, sound). */
export function verdictTable(counts: VerdictCounts): AgreementTable {
  return [
    [counts.hits, counts.falseAlarms],
    [counts.misses, counts.soundCalls],
  ];
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function requireSquare(where: string, table: AgreementTable): void {
  if (table.length === 0) throw new MarkingError(`${where}: no classes`);
  table.forEach((row, i) => {
    if (row.length !== table.length) {
      throw new MarkingError(`${where}.${i}: ${row.length} cells in a table of ${table.length} classes`);
    }
    row.forEach((cell, j) => {
      requireNotNegative(`${where}.${i}.${j}`, cell);
    });
  });
}
