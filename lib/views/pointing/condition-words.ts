import type { Condition } from '../../wall/model';

/** What is seen on the face of a unit, said after its name or measures; never whether it matters. */
const SEEN: Readonly<Record<Condition, string>> = {
  sound: '',
  hairline: ', with a thin crack',
  bloom: ', with white bloom',
  chip: ', with a small chip at its edge',
  flake: ', with a flake off its face',
  crumbling: ', with a crumbling edge',
  smear: ', with mortar smeared on its face',
  stain: ', with a stain running down its face',
};

export function seenOn(condition: Condition): string {
  return SEEN[condition];
}
