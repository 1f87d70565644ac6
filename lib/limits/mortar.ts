import { boundAt } from './bound';
import type { MortarRow, RuleSetId } from './limit';
import { limitOf, namedLimitOf } from './limits';

/** A mix by volume: sand damp and loose. */
export interface Mix {
  readonly portland: number;
  readonly lime: number;
  readonly sand: number;
  /** Cement sold ready for mortar, as a table names it: 'masonry cement N', 'mortar cement S'. */
  readonly masonryCement?: { readonly name: string; readonly volume: number };
}

/**
 * The mortar types a mix is by the proportion table of a rule set and its sand ratios; empty where it is none, or where the
 * rule set has no table. The least lime of a row is left out unless it is also the most: 1 : 1/2 is the upper end of type S.
 * Source of the types: ASTM C270 as the IRC prints it; NBC Table 9.20.3.2.-B.
 */
export function mortarTypesOf(rules: RuleSetId, mix: Mix): readonly string[] {
  const table = namedLimitOf(rules, 'mortar-proportions')?.bound;
  if (table?.form !== 'mortar-table' || !isSandWithin(rules, mix)) return [];
  return [...new Set(table.rows.filter((row) => isRow(row, mix)).map(({ type }) => type))];
}

function isSandWithin(rules: RuleSetId, { portland, lime, sand, masonryCement }: Mix): boolean {
  const binds = portland + lime + (masonryCement?.volume ?? 0);
  const most = limitOf(rules, 'sand-ratio');
  const least = namedLimitOf(rules, 'sand-ratio-least');
  return (
    (most === undefined || sand <= boundAt(most, {}) * binds) &&
    (least === undefined || sand >= boundAt(least, {}) * binds)
  );
}

/** Volumes are held against the row in proportion: crosswise, so that a mix of thirds is not lost in a division. */
function isRow(row: MortarRow, { portland, lime, sand, masonryCement }: Mix): boolean {
  if ((masonryCement?.name ?? null) !== row.masonryCement) return false;
  const volume = masonryCement?.volume ?? 0;
  const whole = row.masonryCement === null ? portland : volume;
  const rowWhole = row.masonryCement === null ? row.portland : row.masonryCementVolume;
  if (whole <= 0 || portland * rowWhole !== row.portland * whole) return false;
  const [leastLime, mostLime] = row.lime;
  const limeHere = lime * rowWhole;
  if (limeHere > mostLime * whole) return false;
  if (leastLime === mostLime ? limeHere < leastLime * whole : limeHere <= leastLime * whole) return false;
  const [leastSand, mostSand] = row.sand;
  return sand * rowWhole >= leastSand * whole && sand * rowWhole <= mostSand * whole;
}
