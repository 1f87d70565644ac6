import type { Mm } from '../units';
import type { AngleRow, Bound, Limit, Limits } from './limit';

/** What a bound may depend on: bed depth of the unit and clear span in mm, air in °C, whole storeys above. */
export interface At {
  readonly depth?: Mm;
  readonly span?: Mm;
  readonly air?: number;
  readonly storeys?: number;
}

/** A measurement held against a bound. `measured` equal to `limit` passes. */
export interface Verdict {
  readonly measured: number;
  readonly limit: number;
  readonly passes: boolean;
}

/**
 * The bound as one number, in the unit of the limit; 1 for a thing that must be there. `at` gives the size a stepped or
 * shared bound goes by. Throws a RangeError when that size is missing, or when the form is no single number.
 */
export function boundAt(limit: Limit, at: At): number {
  const { bound } = limit;
  switch (bound.form) {
    case 'number':
      return bound.value;
    case 'present':
      return 1;
    case 'share-of-depth':
      return bound.share * sizeOf(limit, 'unit depth', at);
    case 'stepped': {
      const size = sizeOf(limit, bound.by, at);
      for (const step of bound.steps) if (size <= step.upTo) return step.value;
      throw new RangeError(`${limit.id}: no step for ${size}`);
    }
    default:
      throw new RangeError(`${limit.id}: a bound of the form ${bound.form} is no single number`);
  }
}

type SizeName = Extract<Bound, { form: 'stepped' }>['by'];

function sizeOf(limit: Limit, by: SizeName, at: At): number {
  const size = sizeIn(at, by);
  if (size === undefined) throw new RangeError(`${limit.id}: ${by} is missing`);
  return size;
}

function sizeIn(at: At, by: SizeName): number | undefined {
  switch (by) {
    case 'unit depth':
      return at.depth;
    case 'clear span':
      return at.span;
    case 'air temperature':
      return at.air;
    case 'storeys above':
      return at.storeys;
  }
}

/**
 * A steady slope (mm per mm, not negative) over a run (mm) against a bound for level, plumb or line. Any-run bounds are tried
 * run by run and overall; the greatest measured ÷ limit governs, the shorter run on a tie. Throws a RangeError for other forms.
 */
export function slopeVerdict(bound: Bound, slope: number, run: Mm): Verdict {
  const overall = slope * run;
  if (bound.form === 'pro-rata') {
    return verdict(overall, run <= bound.run ? (bound.value * run) / bound.run : bound.beyond);
  }
  if (bound.form !== 'any-run')
    throw new RangeError(`a bound of the form ${bound.form} does not judge a slope`);
  let measured = overall;
  let limit = bound.overall;
  let worst = Number.NEGATIVE_INFINITY;
  for (const each of bound.runs) {
    const here = slope * Math.min(each.run, run);
    if (here / each.value <= worst) continue;
    worst = here / each.value;
    measured = here;
    limit = each.value;
  }
  return overall / bound.overall > worst ? verdict(overall, bound.overall) : verdict(measured, limit);
}

function verdict(measured: number, limit: number): Verdict {
  return { measured, limit, passes: measured <= limit };
}

/**
 * Vertical and horizontal spacing of ties (mm) against rows of allowed pairs, or against two spacings and an area. Too wide
 * across for any row is a horizontal failure; else the vertical spacing is held against the most allowed at that width.
 */
export function spacingVerdict(
  bound: Bound,
  vertical: Mm,
  horizontal: Mm,
): Verdict & { readonly which: 'vertical' | 'horizontal' } {
  const widest = widestOf(bound);
  if (horizontal > widest) return { measured: horizontal, limit: widest, passes: false, which: 'horizontal' };
  const limit = highestAt(bound, horizontal);
  return { measured: vertical, limit, passes: vertical <= limit, which: 'vertical' };
}

function widestOf(bound: Bound): Mm {
  if (bound.form === 'tie-area') return bound.horizontal;
  if (bound.form !== 'tie-rows')
    throw new RangeError(`a bound of the form ${bound.form} does not space ties`);
  let widest = 0;
  for (const row of bound.rows) if (row.horizontal > widest) widest = row.horizontal;
  return widest;
}

function highestAt(bound: Bound, horizontal: Mm): Mm {
  if (bound.form === 'tie-area') {
    return horizontal > 0 ? Math.min(bound.vertical, bound.area / horizontal) : bound.vertical;
  }
  let highest = 0;
  if (bound.form === 'tie-rows') {
    for (const row of bound.rows) {
      if (row.horizontal >= horizontal && row.vertical > highest) highest = row.vertical;
    }
  }
  return highest;
}

interface AngleSize {
  readonly vertical: Mm;
  readonly horizontal: Mm;
  readonly thickness: Mm;
}

/**
 * A steel angle (legs and thickness, mm) over a clear span against a table. It serves when it is no smaller, in each of the
 * three, than a listed size that carries the span. If not, its worst measure is held against the first listed size that does;
 * where none does, the span against the longest one listed. A case the table has no column for is not permitted: no span is allowed.
 */
export function angleVerdict(
  bound: Bound,
  angle: AngleSize,
  span: Mm,
  at: Pick<At, 'depth' | 'storeys'>,
): Verdict & { readonly end: 'at least' | 'at most' } {
  if (bound.form !== 'angle-table') throw new RangeError(`a bound of the form ${bound.form} lists no angles`);
  const column = columnOf(bound.rows, bound.caseBy === 'unit depth' ? at.depth : at.storeys, bound.caseBy);
  if (column === undefined) return { measured: span, limit: 0, passes: false, end: 'at most' };
  let first: AngleRow | undefined;
  let longest = 0;
  for (const row of bound.rows) {
    const carries = row.spans[column];
    if (carries === undefined) continue;
    if (carries > longest) longest = carries;
    if (carries < span) continue;
    if (covers(angle, row)) return { ...worstMeasure(angle, row), passes: true, end: 'at least' };
    first ??= row;
  }
  if (first === undefined) return { measured: span, limit: longest, passes: false, end: 'at most' };
  return { ...worstMeasure(angle, first), passes: false, end: 'at least' };
}

/** Depths: the least column that is at least as deep, for deeper masonry is heavier. Storeys: that column or none. */
function columnOf(rows: readonly AngleRow[], size: number | undefined, by: string): string | undefined {
  if (size === undefined) throw new RangeError(`angle table: ${by} is missing`);
  let best: string | undefined;
  for (const row of rows) {
    for (const name in row.spans) {
      const column = Number(name);
      if (by === 'storeys above' ? column !== size : column < size) continue;
      if (best === undefined || column < Number(best)) best = name;
    }
  }
  return best;
}

function covers(angle: AngleSize, row: AngleRow): boolean {
  return (
    angle.vertical >= row.vertical && angle.horizontal >= row.horizontal && angle.thickness >= row.thickness
  );
}

function worstMeasure(angle: AngleSize, row: AngleRow): { readonly measured: Mm; readonly limit: Mm } {
  let worst = { measured: angle.vertical, limit: row.vertical };
  if (angle.horizontal / row.horizontal < worst.measured / worst.limit) {
    worst = { measured: angle.horizontal, limit: row.horizontal };
  }
  if (angle.thickness / row.thickness < worst.measured / worst.limit) {
    worst = { measured: angle.thickness, limit: row.thickness };
  }
  return worst;
}

/** The overhang rule that governs at a bed depth, the stricter of a share of the depth and a fixed length; undefined where both are silent. */
export function governingOverhang(
  limits: Limits,
  depth: Mm,
): { readonly limit: Limit; readonly bound: Mm } | undefined {
  const share = limits('overhang-share');
  const fixed = limits('overhang-fixed');
  const byShare = share && { limit: share, bound: boundAt(share, { depth }) };
  const byLength = fixed && { limit: fixed, bound: boundAt(fixed, { depth }) };
  return byShare && byLength ? (byLength.bound < byShare.bound ? byLength : byShare) : (byShare ?? byLength);
}

/** How far the face may stand past its support, mm. Infinity where the rules are silent. */
export function overhangBound(limits: Limits, depth: Mm): Mm {
  return governingOverhang(limits, depth)?.bound ?? Number.POSITIVE_INFINITY;
}

/** Openings up to this size either way need no ties at their jambs, mm; none where no rule set says so. */
export function smallOpening(limits: Limits): Mm {
  const limit = limits('tie-opening');
  return limit === undefined ? 0 : boundAt(limit, {});
}

/**
 * How far a face may stand off a straight line over a run (mm), for line bounds: the value of the shortest run named that is at
 * least as long, else the overall value; in proportion for pro-rata bounds. Throws a RangeError for other forms.
 */
export function departureBound(bound: Bound, run: Mm): Mm {
  if (bound.form === 'pro-rata') return run <= bound.run ? (bound.value * run) / bound.run : bound.beyond;
  if (bound.form !== 'any-run')
    throw new RangeError(`a bound of the form ${bound.form} does not judge a line`);
  return bound.runs.find((each) => each.run >= run)?.value ?? bound.overall;
}
