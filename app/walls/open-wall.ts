import { type Brief, MAX_SEED } from '../../lib/generate/brief';
import { layWall } from '../../lib/generate/generate';
import { codeOf } from '../../lib/generate/wall-code';
import type { Wall } from '../../lib/wall/model';
import { type Part, partsOf } from '../../lib/wall/parts';
import { type Survey, surveyOf } from '../../lib/wall/survey';
import { partName } from './part-names';

/** A wall with what the pages ask of it worked out once. */
export interface OpenWall {
  readonly wall: Wall;
  readonly survey: Survey;
  readonly parts: ReadonlyMap<string, Part>;
  /** A unit near the middle: the one lifted until another is picked. */
  readonly firstUnit: string;
  readonly nameOf: (part: string) => string;
  /** The unit `by` places on, round from the last to the first. */
  readonly unitFrom: (unit: string, by: number) => string;
}

export function openWall(brief: Brief): OpenWall {
  const wall = layWall(brief);
  const parts = partsOf(wall);
  const { units } = wall;
  return {
    wall,
    survey: surveyOf(wall),
    parts,
    firstUnit: units[0]?.id ?? '',
    nameOf: (id) => {
      const part = parts.get(id);
      return part ? partName(part, wall) : id;
    },
    unitFrom: (unit, by) => {
      const at = units.findIndex(({ id }) => id === unit);
      return units[(at + by + units.length) % units.length]?.id ?? unit;
    },
  };
}

/** The code of the next wall of the same kind: the seed after this one. */
export function nextCode(brief: Brief): string {
  return codeOf({ ...brief, seed: brief.seed === MAX_SEED ? 0 : brief.seed + 1 });
}
