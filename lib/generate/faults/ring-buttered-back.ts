import type { SpoilWall } from '../bench';
import { bareShare, onGrid, spoilBacks } from '../spoil-backs';

/** A rim of mortar round a bare middle, over one patch. */
export const spoilRingButteredBack: SpoilWall = (bench) => {
  const bare = bareShare(bench.severity);
  return spoilBacks(bench, ({ length, height }) => {
    const side = Math.sqrt(bare);
    const across = (length * (1 - side)) / 2;
    const up = (height * (1 - side)) / 2;
    return [
      onGrid({ x: 0, y: 0, width: length, height: up }),
      onGrid({ x: 0, y: height - up, width: length, height: up }),
      onGrid({ x: 0, y: 0, width: across, height }),
      onGrid({ x: length - across, y: 0, width: across, height }),
    ];
  });
};
