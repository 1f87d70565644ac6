import type { Fitted } from '../../generate/adjustable/departure';
import { type Slider, slidersOf } from '../../generate/adjustable/sliders';
import { layTrue } from '../../generate/adjustable/true-wall';
import type { RuleSetId } from '../../limits/limit';
import type { LengthSystem } from '../../units';
import { WALL_KINDS, type Wall, type WallKind } from '../../wall/model';
import { KIND_TITLES } from '../../wall-page/brief-words';
import type { BlemishChoice } from './blemish-choices';
import { blemishChoices } from './blemish-choices';
import { type BuildMeasures, measuresOf } from './build-measures';

/** A wall to begin with. */
export interface BaseChoice {
  readonly id: string;
  readonly title: string;
  readonly kind: WallKind;
  readonly masonry: 'anchored' | 'adhered';
}

/** Every kind of wall that is tied back, and one that is stuck on. */
export const BASES: readonly [BaseChoice, ...BaseChoice[]] = [
  baseOf('plain-panel'),
  ...WALL_KINDS.filter((kind) => kind !== 'plain-panel').map(baseOf),
  {
    id: 'stuck-on',
    title: `${KIND_TITLES['plain-panel']}, stuck to its backing`,
    kind: 'plain-panel',
    masonry: 'adhered',
  },
];

function baseOf(kind: WallKind): BaseChoice {
  return { id: kind, title: KIND_TITLES[kind], kind, masonry: 'anchored' };
}

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
  readonly blemishes: Readonly<Record<LengthSystem, readonly BlemishChoice[]>>;
}

export function layBuild({ kind, masonry }: BaseChoice, rules: RuleSetId): LaidBuild {
  const base = layTrue(kind, masonry, rules);
  const sliders = slidersOf(base, rules);
  return {
    base,
    sliders: sliders.map(shownSlider),
    measures: measuresOf(base, sliders, rules),
    blemishes: { mm: blemishChoices('mm'), inches: blemishChoices('inches') },
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
