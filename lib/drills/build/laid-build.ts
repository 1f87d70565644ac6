import type { FaceMarkChoice } from '../../../components/drills/build/face-marks-choice';
import type { Fitted } from '../../generate/adjustable/departure';
import { type Slider, slidersOf } from '../../generate/adjustable/sliders';
import { layTrue } from '../../generate/adjustable/true-wall';
import type { RuleSetId } from '../../limits/limit';
import type { LengthSystem } from '../../units';
import type { Wall } from '../../wall/model';
import type { BaseChoice } from './bases';
import { type BuildMeasures, measuresOf } from './build-measures';
import { faceMarkChoices } from './blemish-choices';

/** A slider as it is shown, without what it does to the wall. */
export interface ShownSlider extends Pick<Slider, 'id' | 'family' | 'name' | 'unit'> {
  readonly fitted: Pick<Fitted, 'at' | 'sound' | 'least' | 'most' | 'step'>;
}

/**
 * A wall laid true, with its sliders and what is measured on it. Plain data: the server lays and measures, and the browser fetches
 * what does so at the reader's first interaction.
 */
export interface LaidBuild {
  readonly base: Wall;
  readonly sliders: readonly ShownSlider[];
  readonly measures: BuildMeasures;
  readonly faceMarks: Readonly<Record<LengthSystem, readonly FaceMarkChoice[]>>;
}

export function layBuild({ kind, masonry }: BaseChoice, rules: RuleSetId): LaidBuild {
  const base = layTrue(kind, masonry, rules);
  const sliders = slidersOf(base, rules);
  return {
    base,
    sliders: sliders.map(shownSlider),
    measures: measuresOf(base, sliders, rules),
    faceMarks: { mm: faceMarkChoices('mm'), inches: faceMarkChoices('inches') },
  };
}

function shownSlider({ id, family, name, unit, fitted }: Slider): ShownSlider {
  const { at, sound, least, most, step } = fitted;
  return {
    id,
    family,
    name,
    unit,
    fitted: { at, sound, most, step, ...(least === undefined ? {} : { least }) },
  };
}
