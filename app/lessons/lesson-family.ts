import type { LookAlike } from '../../lib/generate/look-alikes/look-alike';
import type { Spoil } from '../../lib/generate/plan';
import type { Topic } from '../../lib/generate/topics';
import type { Condition, WallKind } from '../../lib/wall/model';
import type { PartKind } from '../../lib/wall/part-id';

export type Blemish = Exclude<Condition, 'sound'>;

/** Walls of one lesson: laid from one seed, once sound and once spoiled, and the topic to practise on after it. */
export interface LessonFamily {
  readonly topic: Topic;
  readonly kind: WallKind;
  readonly masonry: 'anchored' | 'adhered';
  readonly seed: number;
  readonly spoils: readonly Spoil[];
  readonly lookAlikes: readonly LookAlike[];
  /** What is ringed on the sound wall, a part or a unit with a mark, and what is said of it. No figures. */
  readonly good: readonly (readonly [part: PartKind | Blemish, says: string])[];
  /** Marks put by hand on the faces of units. */
  readonly marks?: Readonly<Record<string, Blemish>>;
}
