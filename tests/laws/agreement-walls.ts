import { layPlan } from '../../lib/generate/generate';
import { planWith } from '../../lib/generate/planner';
import type { Finding, Region } from '../../lib/inspect/finding';
import { inspect } from '../../lib/inspect/inspect';
import type { Wall } from '../../lib/wall/model';
import { measureNaively } from '../naive/measure';
import { type LawWall, lawWall, layLawWall } from './law-walls';

/** One in ten is laid full size; the others small, so that thousands can be measured the slow way. */
const FULL_SIZE_EVERY = 10;

/** What the key and the naive measurer say apart of the n-th wall; null when they agree. */
export function disagreement(n: number): string | null {
  const law = lawWall(n * 7 + 3);
  const wall = n % FULL_SIZE_EVERY === 0 ? layLawWall(law) : laySmall(law);
  return apart(wall, law);
}

/** Numbers agree to one part in a million, places to a thousandth of a millimetre; checks and parts agree exactly. */
export function apart(
  wall: Wall,
  { rules, fault, kind, seed }: Pick<LawWall, 'rules' | 'fault' | 'kind' | 'seed'>,
): string | null {
  const key = inspect(wall, rules).map(lineOf).sort();
  const naive = measureNaively(wall, rules).map(lineOf).sort();
  if (key.join('\n') === naive.join('\n')) return null;
  return `${fault ?? 'sound'} ${kind} ${rules} seed ${seed}:\n  key   ${key.join('; ')}\n  naive ${naive.join('; ')}`;
}

function lineOf({
  check,
  parts,
  measured,
  limit,
  region,
}: Pick<Finding, 'check' | 'measured' | 'limit' | 'region'> & { readonly parts: readonly string[] }): string {
  return `${check} ${[...parts].sort().join(',')} ${measured.toPrecision(6)} ${limit.toPrecision(6)} ${placeOf(region)}`;
}

export function placeOf({ panel, x, y, width, height }: Region): string {
  // Adding 0 makes one zero of both.
  return `${panel} ${[x, y, width, height].map((mm) => (Math.round(mm * 1000) + 0) / 1000).join(' ')}`;
}

function laySmall({ kind, masonry, rules, fault, severity, seed }: LawWall): Wall {
  const plan = planWith(kind, masonry, rules, fault === null ? [] : [{ fault, severity }], seed);
  const modules = 8 + (seed % 2);
  // So near the ends of a short panel an opening leaves no room for quoins.
  const quoins = plan.quoins && (kind === 'plain-panel' || kind === 'gable-end');
  // Above and below quoins the bond is whole: three courses each, and a gable begins over five of them.
  const upright = quoins ? 15 : 15 + (seed % 4);
  const courses = kind === 'gable-end' ? (quoins ? 13 : 10) + modules : upright;
  return layPlan({ ...plan, modules, courses, quoins });
}
