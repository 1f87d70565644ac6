import { parseBrief } from '../../../lib/generate/brief';
import { layWall } from '../../../lib/generate/generate';
import { codeOf } from '../../../lib/generate/wall-code';
import { fingerprintOf } from '../../../lib/wall/print';
import type { SampleWall } from './sample-attempt';

/** Two walls as the site lays them, or one from each number. */
export function realWalls(seeds: readonly number[] = [1, 2]): readonly SampleWall[] {
  return seeds.map((seed, index) => {
    const brief = parseBrief({
      topic: 'mixed',
      kind: 'plain-panel',
      difficulty: 2,
      rules: 'canada',
      seed,
    });
    return { place: index + 1, code: codeOf(brief), fingerprint: fingerprintOf(layWall(brief)) };
  });
}
