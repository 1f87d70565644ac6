import type { Compared } from '../../../components/drills/build/build-verdict';
import { adjusted, slidersOf, type Values } from '../../generate/adjustable/sliders';
import type { RuleSetId } from '../../limits/limit';
import { type Wall, WallError } from '../../wall/model';
import { refuseUnstandable } from '../../wall/stands';
import { type BuildMeasures, comparedFor, measuresOf } from './build-measures';

/** What spoils a wall laid true and measures it: fetched once the reader stirs. */
export interface Hand {
  readonly spoil: (values: Values) => Wall;
  /** Why no wall stands with one slider so, or null. */
  readonly refusalOf: (slider: string, value: number | undefined) => string | null;
  /** Why no wall stands with these values, or null. */
  readonly problemOf: (values: Values) => string | null;
  readonly measure: (wall: Wall) => BuildMeasures;
  /** What every rule set says of one slider on a wall. */
  readonly compare: (wall: Wall, slider: string) => readonly Compared[];
}

export function handFor(base: Wall, rules: RuleSetId): Hand {
  const sliders = slidersOf(base, rules);
  const refusalOf: Hand['refusalOf'] = (slider, value) =>
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
