import { BLEMISHES } from '../../inspect/blemishes';
import { formatBound } from '../../limits/format-bound';
import { namedLimitOf, ruleSetTitle } from '../../limits/limits';
import type { LengthSystem } from '../../units';
import { CONDITIONS, type Condition } from '../../wall/model';

/** A blemish that can be put on the faces, and what is said of it. */
export interface BlemishChoice {
  readonly condition: Condition;
  readonly name: string;
  readonly tells: string;
  readonly means: string;
  readonly remedy: string;
  /** A published figure for it, with its source, or null. */
  readonly figure: string | null;
}

/** The blemishes there are, the gravest last. Only chips have a published figure. */
export function blemishChoices(system: LengthSystem): readonly BlemishChoice[] {
  return (['looks only', 'a symptom', 'could be loose, so have it looked at'] as const).flatMap((tells) =>
    CONDITIONS.flatMap((condition) => {
      if (condition === 'sound' || BLEMISHES[condition].tells !== tells) return [];
      const figure = condition === 'chip' ? chipFigure(system) : null;
      return [{ condition, ...BLEMISHES[condition], figure }];
    }),
  );
}

/** "Chips and marks on a facing brick, across: at most 15 mm. United Kingdom …, 9.1.2. Looks." */
function chipFigure(system: LengthSystem): string | null {
  const limit = namedLimitOf('united-kingdom', 'chip-size');
  if (limit === undefined) return null;
  const { quantity, edition, clause, kind, rules } = limit;
  return `${quantity}: ${formatBound(limit, system).join(' ')}. ${ruleSetTitle(rules)} · ${edition}, ${clause} · ${kind}. The chips drawn here are smaller.`;
}
