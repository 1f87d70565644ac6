import { DIFFICULTIES } from '../../../lib/generate/brief';
import { TOPIC_FAULTS, type Topic } from '../../../lib/generate/topics';
import { type Measurement, passes } from '../../../lib/inspect/check';
import type { CheckId } from '../../../lib/inspect/finding';
import type { Wall } from '../../../lib/wall/model';
import { shareOf } from './share';

interface Taken {
  readonly check: CheckId;
  readonly measurement: Measurement;
}

interface Tally {
  walls: number;
  learner: number;
  empty: number;
  cheater: number;
}

/** Standard deviations off the others of its kind from which a thing is the odd one out. */
const ODD = 4;
/** Things of a kind that it takes for one of them to be odd. */
const LEAST = 5;

/**
 * Somebody who measures everything of the topic and knows no limit: of each kind of thing the one that is farthest from the others is marked, if it
 * stands out. Half a mark is lost for each false one, as on a wall. What this gains over handing in nothing, against what a learner gains who knows.
 */
export class OddOneOut {
  readonly #tallies = new Map<number, Tally>();

  tries(wall: Wall, topic: Topic, difficulty: number, measured: readonly Taken[]): void {
    const marked = new Set<string>();
    for (const check of TOPIC_FAULTS[topic]) {
      const kinds = new Map<string, { at: string; share: number }[]>();
      for (const each of measured) {
        if (each.check !== check) continue;
        const share = shareOf(check, each.measurement, wall);
        if (share === null) continue;
        const kind = kinds.get(each.measurement.limit.id) ?? [];
        kind.push({ at: `${check} ${each.measurement.at}`, share });
        kinds.set(each.measurement.limit.id, kind);
      }
      for (const things of kinds.values()) {
        const odd = oddOf(things);
        if (odd !== null) marked.add(odd);
      }
    }
    const wrong = new Set(
      measured
        .filter(({ measurement }) => !passes(measurement))
        .map(({ check, measurement }) => `${check} ${measurement.at}`),
    );
    const hits = [...marked].filter((each) => wrong.has(each)).length;
    const tally = this.#tallies.get(difficulty) ?? { walls: 0, learner: 0, empty: 0, cheater: 0 };
    tally.walls += 1;
    tally.learner += 1;
    tally.empty += wrong.size === 0 ? 1 : 0;
    const found = wrong.size === 0 ? 1 : hits / wrong.size;
    tally.cheater += Math.max(0, found - (marked.size - hits) / 2 / Math.max(1, wrong.size));
    this.#tallies.set(difficulty, tally);
  }

  report(): string {
    return DIFFICULTIES.map((difficulty) => {
      const { walls, learner, empty, cheater } = this.#tallies.get(difficulty) ?? {
        walls: 1,
        learner: 1,
        empty: 0,
        cheater: 0,
      };
      const gain = (cheater - empty) / (learner - empty);
      return `difficulty ${difficulty}: nothing handed in ${(empty / walls).toFixed(2)}, the odd one out ${(cheater / walls).toFixed(2)}: ${Math.round(gain * 100)} % of what a learner can gain`;
    }).join('\n');
  }
}

/** The thing farthest from the median of its kind, if it stands out by far. */
function oddOf(things: readonly { readonly at: string; readonly share: number }[]): string | null {
  if (things.length < LEAST) return null;
  const shares = things.map(({ share }) => share).sort((a, b) => a - b);
  const median = shares[Math.floor(shares.length / 2)] ?? 0;
  const spread = Math.sqrt(shares.reduce((sum, each) => sum + (each - median) ** 2, 0) / shares.length);
  const last = things.reduce((most, each) => (each.share > most.share ? each : most));
  return last.share - median > ODD * spread && spread > 0 ? last.at : null;
}
