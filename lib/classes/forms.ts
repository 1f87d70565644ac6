import type { Brief } from '../generate/brief';
import { type SecretDraws, secretDraws } from './secret-draws';
import type { SetWorkSpec } from './set-work';

/** The caller looks into the walls: this room may neither lay nor inspect one. */
export interface WallProbe {
  /** How many faults the brief plans: quick, right but for a fault that finds no room. */
  readonly planned: (brief: Brief) => number;
  /** The faults that the laid wall is found to hold: how far each is beyond its limit, as a share of the limit, at most 1. */
  readonly measured: (brief: Brief) => readonly number[];
}

/** Which form: null stands for everyone. A later attempt has other walls. */
export interface FormOwner {
  readonly learner: string | null;
  /** From 1. */
  readonly attempt: number;
}

/** The set work asks for walls that cannot be laid: the message says which, and what to change. */
export class FormError extends Error {
  override name = 'FormError';
}

/** Plans looked at before a wall counts as one that cannot be had. */
const MOST_TRIES = 1000;
/** Faulty walls of each topic and kind from which the usual severity is taken. */
const SAMPLE = 2;
/** Faulty walls drawn, of which the one nearest the usual severity is set. */
const CHOICE = 3;

/**
 * Severity of the faults in walls such as the spec asks for: the mean over a few walls of each topic and kind. The same for all
 * who set the same: it tells nothing of any form.
 * @throws FormError where no wall of a topic and kind can have a fault
 */
export function usualSeverity(spec: SetWorkSpec, probe: WallProbe): number {
  const sample = spec.topics.flatMap((topic) =>
    spec.kinds.flatMap((kind) => {
      let seed = 0;
      return walls(SAMPLE, () => briefOf(spec, { topic, kind }, seed++), true, probe, { topic, kind });
    }),
  );
  return meanOf(sample.map(({ severity }) => severity));
}

/**
 * The walls of one learner, in their order. Topics and kinds come up equally often in every form; which wall is sound, what is
 * wrong and where it stands is drawn for each learner alone, so that nobody's walls tell anything of another's.
 * @throws FormError where no such wall is found
 */
export function formFor(
  spec: SetWorkSpec & { readonly severity?: number },
  secret: string,
  owner: FormOwner,
  probe: WallProbe,
): readonly Brief[] {
  return Array.from({ length: spec.walls }, (_, index) => briefAt(spec, secret, owner, index + 1, probe));
}

/** One wall of a form, `place` from 1. @throws FormError where no such wall is found, or the form has no such place */
export function briefAt(
  spec: SetWorkSpec & { readonly severity?: number },
  secret: string,
  owner: FormOwner,
  place: number,
  probe: WallProbe,
): Brief {
  const name = nameOf(spec, owner);
  const wall = plannedWalls(spec, secretDraws(secret, `${name} form`))[place - 1];
  if (!wall) throw new FormError(`the set work has ${spec.walls} walls, none at ${place}`);
  const draws = secretDraws(secret, `${name} wall ${place}`);
  const { severity } = spec;
  const count = wall.isSound || severity === undefined ? 1 : CHOICE;
  const found = walls(count, () => briefOf(spec, wall, draws.seed()), !wall.isSound, probe, wall);
  const farOff = (each: Found) => Math.abs(each.severity - (severity ?? 0));
  return found.reduce((best, each) => (farOff(each) < farOff(best) ? each : best)).brief;
}

interface PlannedWall extends Pick<Brief, 'topic' | 'kind'> {
  readonly isSound: boolean;
}

/** Of all walls three tenths to half are sound (our default): how many cannot be worked out from the number of walls. */
function plannedWalls(spec: SetWorkSpec, draws: SecretDraws): readonly PlannedWall[] {
  const least = spec.walls < 3 ? 0 : Math.max(1, Math.floor((spec.walls * 3) / 10));
  const sound = draws.whole(least, Math.ceil(spec.walls / 2));
  const topics = draws.shuffled(turns(spec.topics, spec.walls));
  const kinds = draws.shuffled(turns(spec.kinds, spec.walls));
  const isSound = draws.shuffled(turns([true], spec.walls).map((_, place) => place < sound));
  return topics.map((topic, place) => ({
    topic,
    kind: kinds[place] as Brief['kind'],
    isSound: isSound[place] === true,
  }));
}

interface Found {
  readonly brief: Brief;
  /** Mean over its faults; 0 for a sound wall. */
  readonly severity: number;
}

/** The first `count` drawn that are faulty, or sound, as asked: planned so, and found so once laid. */
function walls(
  count: number,
  draw: () => Brief,
  faulty: boolean,
  probe: WallProbe,
  { topic, kind }: Pick<Brief, 'topic' | 'kind'>,
): readonly Found[] {
  const found: Found[] = [];
  for (let tries = 0; tries < MOST_TRIES && found.length < count; tries++) {
    const brief = draw();
    if (probe.planned(brief) > 0 !== faulty) continue;
    const faults = probe.measured(brief);
    if (faults.length > 0 === faulty) found.push({ brief, severity: faulty ? meanOf(faults) : 0 });
  }
  if (found.length > 0) return found;
  throw new FormError(
    `no wall of the topic "${topic}" and the kind "${kind}" ${faulty ? 'can have a fault' : 'is sound'} under these rules: choose another topic or kind`,
  );
}

function nameOf({ sameForAll }: SetWorkSpec, { learner, attempt }: FormOwner): string {
  return `${sameForAll || learner === null ? 'everyone' : `learner ${learner}`} attempt ${attempt}`;
}

function briefOf(spec: SetWorkSpec, { topic, kind }: Pick<Brief, 'topic' | 'kind'>, seed: number): Brief {
  return { topic, kind, difficulty: spec.difficulty, rules: spec.rules, seed };
}

function meanOf(list: readonly number[]): number {
  return list.reduce((sum, each) => sum + each, 0) / list.length;
}

/** The list over and over until there are `count`. */
function turns<T>(list: readonly T[], count: number): readonly T[] {
  return Array.from({ length: count }, (_, place) => list[place % list.length] as T);
}
