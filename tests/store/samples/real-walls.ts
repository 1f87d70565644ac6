import { parseBrief } from '../../../lib/generate/brief';
import { layWall } from '../../../lib/generate/generate';
import { codeOf } from '../../../lib/generate/wall-code';
import { fingerprintOf } from '../../../lib/wall/print';
import type { SampleWall } from './sample-attempt';

/** Two walls as the site lays them. */
export function realWalls(): readonly SampleWall[] {
  return [1, 2].map((place) => {
    const brief = parseBrief({
      topic: 'mixed',
      kind: 'plain-panel',
      difficulty: 2,
      rules: 'canada',
      seed: place,
    });
    return { place, code: codeOf(brief), fingerprint: fingerprintOf(layWall(brief)) };
  });
}
