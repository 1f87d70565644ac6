import { setImmediate } from 'node:timers/promises';
import { type MatchRow, matchOf, type SeenForm } from '../../lib/classes/form-match';
import { briefAt, FormError, formFor, usualSeverity } from '../../lib/classes/forms';
import type { SetWorkSpec } from '../../lib/classes/set-work';
import { layByCode } from '../../lib/engines/engines';
import { briefOfCode } from '../../lib/exercise/brief-of-code';
import { severityOf, WALL_PROBE } from '../../lib/exercise/wall-probe';
import type { Brief } from '../../lib/generate/brief';
import { codeOf } from '../../lib/generate/wall-code';
import { inspect } from '../../lib/inspect/inspect';
import { capital } from '../../lib/limits/format-amount';
import type { GivenWall } from '../../lib/store/attempts';
import type { Store } from '../../lib/store/database';
import { keptForm } from '../../lib/store/drawn-forms';
import type { WorkRow } from '../../lib/store/set-work';
import type { KeptSpec } from '../../lib/store/stored-json';
import { wrongField } from '../request/refusal';
import { measuredWall } from '../server/laid-walls';

/** The spec with the severity its faulty walls are matched to. @throws Refusal when no such walls can be laid. */
export function withSeverity(spec: SetWorkSpec): KeptSpec {
  try {
    return { ...spec, severity: usualSeverity(spec, WALL_PROBE) };
  } catch (error) {
    if (!(error instanceof FormError)) throw error;
    throw wrongField('topics', `${capital(error.message)}.`);
  }
}

/** The walls of one learner (null: of everyone) in their order, drawn now. */
export function briefsFor(
  { spec, secret }: Pick<WorkRow, 'spec' | 'secret'>,
  learner: string | null,
  attempt: number,
): readonly Brief[] {
  return formFor(spec, secret, { learner, attempt }, WALL_PROBE);
}

/** One wall of the form of a learner's first attempt, drawn now; undefined where there is no such place. */
export function briefOfPlace(
  { spec, secret }: Pick<WorkRow, 'spec' | 'secret'>,
  learner: string | null,
  place: number,
): Brief | undefined {
  if (place < 1 || place > spec.walls) return undefined;
  return briefAt(spec, secret, { learner, attempt: 1 }, place, WALL_PROBE);
}

/**
 * The walls of a learner's first attempt (null: of everyone): those that were given or drawn ahead, whatever engine laid them then,
 * or else those drawn now.
 */
export async function firstForm(
  store: Store,
  work: WorkRow,
  learner: string | null,
): Promise<readonly Brief[]> {
  return (await knownForm(store, work, learner)) ?? briefsFor(work, learner, 1);
}

/** One wall of it, drawn by itself where it has to be drawn; undefined where there is no such place. */
export async function wallOfFirstForm(
  store: Store,
  work: WorkRow,
  learner: string | null,
  place: number,
): Promise<Brief | undefined> {
  return (await knownForm(store, work, learner))?.[place - 1] ?? briefOfPlace(work, learner, place);
}

async function knownForm(
  store: Store,
  work: WorkRow,
  learner: string | null,
): Promise<readonly Brief[] | null> {
  const briefs = (await keptForm(store, work, learner))?.map(({ code }) => briefOfCode(code)) ?? [];
  const known = briefs.filter((brief) => brief !== null);
  return known.length === work.spec.walls ? known : null;
}

/**
 * The walls a new attempt is given, with their fingerprints: they are what a hand-in is held against. Each is laid and measured, which
 * its hand-in need not do again.
 */
export function givenWalls(briefs: readonly Brief[]): readonly GivenWall[] {
  return briefs.map((brief, index) => ({
    place: index + 1,
    code: codeOf(brief),
    fingerprint: measuredWall(brief, brief.rules).fingerprint,
  }));
}

/** The first attempts of some learners side by side. Every wall is laid and inspected anew: the match is seen, not claimed. */
export async function matchFor(
  store: Store,
  work: WorkRow,
  learners: readonly { readonly id: string; readonly name: string }[],
): Promise<readonly MatchRow[]> {
  const forms: SeenForm[] = [];
  for (const { id, name } of learners) {
    const briefs = await firstForm(store, work, id);
    const walls = briefs.map((brief) => inspect(layByCode(brief).wall, brief.rules).map(severityOf));
    forms.push({ name, walls });
    // A group's forms take seconds: a hand-in must not wait for all of them.
    await setImmediate();
  }
  return matchOf(forms);
}
