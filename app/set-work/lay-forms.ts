import { setImmediate } from 'node:timers/promises';
import { type Match, matchOf, type SeenForm } from '../../lib/classes/form-match';
import { briefAt, FormError, formFor, slotsOf } from '../../lib/classes/forms';
import type { SetWorkSpec } from '../../lib/classes/set-work';
import { WALL_PROBE } from '../../lib/exercise/wall-probe';
import type { Brief } from '../../lib/generate/brief';
import { layWall } from '../../lib/generate/generate';
import { codeOf } from '../../lib/generate/wall-code';
import type { GivenWall } from '../../lib/store/attempts';
import type { KeptSpec, WorkRow } from '../../lib/store/set-work';
import { wrongField } from '../request/refusal';
import { fingerprintHere } from '../server/laid-walls';

/** The spec with its slots drawn. @throws Refusal when no such walls can be laid. */
export function withSlots(spec: SetWorkSpec, secret: string): KeptSpec {
  try {
    return { ...spec, slots: slotsOf(spec, secret, WALL_PROBE) };
  } catch (error) {
    if (!(error instanceof FormError)) throw error;
    throw wrongField('topics', `${error.message[0]?.toUpperCase()}${error.message.slice(1)}.`);
  }
}

/** The walls of one learner (null: of everyone) in their order. */
export function briefsFor(
  { spec, secret }: Pick<WorkRow, 'spec' | 'secret'>,
  learner: string | null,
  attempt: number,
): readonly Brief[] {
  return formFor(spec, spec.slots, secret, { learner, attempt }, WALL_PROBE);
}

/** One wall of the form of a learner's first attempt (null: of everyone); undefined where there is no such place. */
export function briefOfPlace(
  { spec, secret }: Pick<WorkRow, 'spec' | 'secret'>,
  learner: string | null,
  place: number,
): Brief | undefined {
  if (place < 1 || place > spec.walls) return undefined;
  return briefAt(spec, spec.slots, secret, { learner, attempt: 1 }, place, WALL_PROBE);
}

/** The walls a new attempt is given, with their fingerprints: they are what a hand-in is held against. */
export function givenWalls(briefs: readonly Brief[]): readonly GivenWall[] {
  return briefs.map((brief, index) => ({
    place: index + 1,
    code: codeOf(brief),
    fingerprint: fingerprintHere(layWall(brief)),
  }));
}

/** The first attempts of some learners side by side. Every wall is laid and inspected anew: the match is seen, not claimed. */
export async function matchFor(
  work: Pick<WorkRow, 'spec' | 'secret'>,
  learners: readonly { readonly id: string; readonly name: string }[],
): Promise<Match> {
  const forms: SeenForm[] = [];
  for (const { id, name } of learners) {
    const walls = briefsFor(work, id, 1).map((brief) => ({
      difficulty: brief.difficulty,
      families: WALL_PROBE.measured(brief),
    }));
    forms.push({ name, walls });
    // A group's forms take seconds: a hand-in must not wait for all of them.
    await setImmediate();
  }
  return matchOf(forms);
}
