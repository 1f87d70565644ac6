import { adjusted, slidersOf, type Values } from '../../generate/adjustable/sliders';
import type { RuleSetId } from '../../limits/limit';
import { type Wall, WallError } from '../../wall/model';
import { refuseUnstandable } from '../../wall/stands';
import type { Compared } from './build-measures';
import { type BuildMeasures, comparedFor, measuresOf } from './build-measures';

/** Spoils a wall laid true, and measures it: fetched at the reader's first interaction. */
export interface Adjuster {
  readonly spoil: (values: Values) => Wall;
  /** Why no wall stands with one slider so, or null. */
  readonly refusalOf: (slider: string, value: number | undefined) => string | null;
  /** Why no wall stands with these values, or null. */
  readonly problemOf: (values: Values) => string | null;
  readonly measure: (wall: Wall) => BuildMeasures;
  /** What every rule set says of one slider on a wall. */
  readonly compare: (wall: Wall, slider: string) => readonly Compared[];
}

export function adjusterOf(base: Wall, rules: RuleSetId): Adjuster {
  const sliders = slidersOf(base, rules);
  const refusalOf: Adjuster['refusalOf'] = (slider, value) =>
    value === undefined ? null : (sliders.find(({ id }) => id === slider)?.fitted.refuse?.(value) ?? null);
  return {
    refusalOf,
    spoil: (values) => adjusted(base, sliders, values),
    problemOf: (values) => {
      for (const { id } of sliders) {
        const refusal = refusalOf(id, values[id]);
        if (refusal) return refusal;
      }
      try {
        refuseUnstandable(adjusted(base, sliders, values));
        return null;
      } catch (error) {
        if (!(error instanceof WallError)) throw error;
        return 'No such wall can be laid: two units would be in one place, or one would hang outside the wall.';
      }
    },
    measure: (wall) => measuresOf(wall, sliders, rules),
    compare: (wall, slider) => {
      const one = sliders.find(({ id }) => id === slider);
      return one ? comparedFor(wall, base, one) : [];
    },
  };
}
