import { LEAST_SEVERITY, MOST_SEVERITY } from '../../lib/generate/fault';
import { FAULTS, faultFits } from '../../lib/generate/faults';
import { layPlan } from '../../lib/generate/generate';
import { planWith } from '../../lib/generate/planner';
import { CHECKS, type CheckId } from '../../lib/inspect/finding';
import { RULE_SETS, type RuleSetId } from '../../lib/limits/limit';
import { WALL_KINDS, type Wall, type WallKind } from '../../lib/wall/model';

/** A wall of a law: what it is, and how to lay it again. */
export interface LawWall {
  readonly fault: CheckId | null;
  readonly kind: WallKind;
  readonly masonry: 'anchored' | 'adhered';
  readonly rules: RuleSetId;
  readonly severity: number;
  readonly seed: number;
}

/** Every fault × rule set × kind of wall × masonry it fits, and the sound wall of each. */
export function combinations(): readonly Omit<LawWall, 'seed' | 'severity'>[] {
  const faults: readonly (CheckId | null)[] = [null, ...CHECKS];
  return faults.flatMap((fault) =>
    WALL_KINDS.flatMap((kind) =>
      RULE_SETS.flatMap((rules) =>
        (['anchored', 'adhered'] as const)
          .filter((masonry) => fault === null || faultFits(fault, kind, masonry, rules))
          .map((masonry) => ({ fault, kind, masonry, rules })),
      ),
    ),
  );
}

/** The n-th wall of the laws: the combinations in turn, severities from the least to 4 in turn. */
export function lawWall(n: number): LawWall {
  const all = combinations();
  const combination = all[n % all.length];
  if (combination === undefined) throw new RangeError('no combination');
  const round = Math.floor(n / all.length);
  const severity = 1.15 + ((round * 5) % 9) * 0.35;
  if (combination.fault === null) return { ...combination, severity, seed: n };
  const { least = LEAST_SEVERITY, most = MOST_SEVERITY } = FAULTS[combination.fault];
  return { ...combination, severity: Math.max(least, Math.min(severity, most)), seed: n };
}

export function layLawWall({ kind, masonry, rules, fault, severity, seed }: LawWall): Wall {
  return layPlan(planWith(kind, masonry, rules, fault === null ? [] : [{ fault, severity }], seed));
}
