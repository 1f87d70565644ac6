import type { Condition } from '../wall/model';

/** How seriously to take a blemish on a face. */
export type BlemishTells = 'looks only' | 'a symptom' | 'could be loose, so have it looked at';

/** Plain words, no figures. Source: common practice of the trade, in our own words. */
export interface BlemishText {
  readonly name: string;
  readonly tells: BlemishTells;
  /** What it is, or can come from. */
  readonly means: string;
  /** What to do about it. */
  readonly remedy: string;
}

/** What is seen on the face of a unit and what it tells. No check reads any of it: no wall is sound or faulty by its blemishes. */
export const BLEMISHES: Readonly<Record<Exclude<Condition, 'sound'>, BlemishText>> = {
  chip: {
    name: 'Small chips',
    tells: 'looks only',
    means: 'A corner was knocked off on the way or in laying. The rest of the unit is whole.',
    remedy: 'Step back to where the wall is judged from. What you cannot see from there can stay.',
  },
  smear: {
    name: 'Mortar smeared on the face',
    tells: 'looks only',
    means: 'Wet mortar was wiped over the unit. It can also hide a chip or a joint that is not full.',
    remedy: 'Look at what lies under it. Let a mason clean it: strong acid spoils brick and steel.',
  },
  hairline: {
    name: 'Hair-thin cracks',
    tells: 'looks only',
    means: 'Short fine cracks, scattered, with neither side stepped out, come from drying or from the kiln.',
    remedy: 'Photograph them with a scale. One that grows, runs on or steps out goes to an engineer.',
  },
  bloom: {
    name: 'White bloom',
    tells: 'looks only',
    means: 'Water dried here and left its salt on the surface. It brushes off.',
    remedy: 'Brush it when dry. If it keeps coming back, look for where the water gets in.',
  },
  stain: {
    name: 'Stains running down',
    tells: 'a symptom',
    means: 'Water runs here. Brown can be rust from steel above, a lintel or a tie; dark can be dirt.',
    remedy: 'Follow it up to where it starts. Rust means steel that wants looking at by a competent person.',
  },
  crumbling: {
    name: 'Crumbling edges',
    tells: 'a symptom',
    means: 'Frost and water eat soft edges, or mortar harder than the unit puts the load on them.',
    remedy: 'Find the water first. If it goes on, or is over a path, have it looked at.',
  },
  flake: {
    name: 'Flakes off the face',
    tells: 'could be loose, so have it looked at',
    means: 'Water and frost, or a coating that keeps water in, push the face off. More can follow.',
    remedy: 'Do not pull at it. A competent person cuts it out and replaces it, after the water is stopped.',
  },
};
