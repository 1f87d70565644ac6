import type { SpoilWall } from '../bench';
import { bareShare, onGrid, spoilBacks, whole } from '../spoil-backs';

/** Backs with a bare end or a bare foot, or (worse) spot dabs, over one patch. */
export const spoilMissingBackMortar: SpoilWall = (bench) => {
  const bare = bareShare(bench.severity);
  const dabs = bench.severity >= 2.5;
  const atFoot = bench.chance.happens(50);
  return spoilBacks(bench, (unit) => {
    const back = whole(unit);
    if (dabs) {
      const width = ((1 - bare) * unit.length) / 3;
      const gap = (bare * unit.length) / 2;
      return [0, 1, 2].map((dab) => onGrid({ ...back, x: dab * (width + gap), width }));
    }
    return atFoot
      ? [onGrid({ ...back, y: bare * unit.height, height: unit.height })]
      : [onGrid({ ...back, width: (1 - bare) * unit.length })];
  });
};
