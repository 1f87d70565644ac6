import type { Brief } from '../generate/brief';
import { type SecretDraws, secretDraws } from './secret-draws';
import type { SetWorkSpec } from './set-work';

/**
 * What a wall holds, as families of its faults in a fixed order, one entry a fault; empty for a sound wall.
 * The caller looks into the walls: this room may neither lay nor inspect a wall.
 */
export interface WallProbe {
  /** What the brief plans: quick, right but for a fault that finds no room. */
  readonly planned: (brief: Brief) => readonly string[];
  /** What the laid wall is found to hold: the truth. */
  readonly measured: (brief: Brief) => readonly string[];
}

/** One wall of a form, by what has to be alike in all forms. */
export interface Slot {
  readonly topic: Brief['topic'];
  readonly kind: Brief['kind'];
  /** What to draw: some faults leave no room for one another, so that the wall may hold less than was planned. */
  readonly planned: readonly string[];
  /** What the wall has to hold. */
  readonly families: readonly string[];
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

/** Plans drawn to learn which mixes of faults are common. */
const SAMPLE = 200;
/** A mix of faults has to come up this often in the sample: a rarer one could not be found again for each learner. */
const OFTEN_ENOUGH = 2;
/** Walls laid of one planned mix to see what becomes of it. */
const LAID = 8;
/** Tries for one wall: enough for a mix that one plan in a thousand holds. */
const MOST_TRIES = 20_000;

/**
 * What all forms of a set work share: for each wall its topic, kind and families of faults. From the secret alone, so that it is
 * the same for every learner. The number of sound walls is drawn from three tenths to half of all (our default): it cannot be
 * worked out from the number of walls. Kept with the set work, for it takes a second or two.
 * @throws FormError where no wall can have a fault
 */
export function slotsOf(spec: SetWorkSpec, secret: string, probe: WallProbe): readonly Slot[] {
  const draws = secretDraws(secret, 'slots');
  const least = spec.walls < 3 ? 0 : Math.max(1, Math.floor((spec.walls * 3) / 10));
  const sound = draws.whole(least, Math.ceil(spec.walls / 2));
  const topics = draws.shuffled(turns(spec.topics, spec.walls));
  const kinds = draws.shuffled(turns(spec.kinds, spec.walls));
  const isSound = draws.shuffled(turns([true], spec.walls).map((_, place) => place < sound));
  return topics.map((topic, place) => {
    const kind = kinds[place] as Brief['kind'];
    const mix = isSound[place] ? SOUND : commonMix(spec, { topic, kind }, draws, probe);
    return { topic, kind, ...mix };
  });
}

/**
 * The walls of one learner, in their order. Every form of a set work has the same slots, in an order of its own, so that a
 * neighbour's answer is worth nothing. Candidates are drawn until the wall holds what its slot asks for.
 * @throws FormError where no such wall is found
 */
export function formFor(
  spec: SetWorkSpec,
  slots: readonly Slot[],
  secret: string,
  owner: FormOwner,
  probe: WallProbe,
): readonly Brief[] {
  return orderFor(spec, secret, owner).map((_, index) =>
    briefAt(spec, slots, secret, owner, index + 1, probe),
  );
}

/** One wall of a form, `place` from 1. @throws FormError where no such wall is found, or the form has no such place */
export function briefAt(
  spec: SetWorkSpec,
  slots: readonly Slot[],
  secret: string,
  owner: FormOwner,
  place: number,
  probe: WallProbe,
): Brief {
  const at = orderFor(spec, secret, owner)[place - 1];
  const slot = at === undefined ? undefined : slots[at];
  if (!slot)
    throw new FormError(`the set work has ${slots.length} slots for ${spec.walls} walls, none at ${place}`);
  const brief = matchedBrief(spec, slot, secretDraws(secret, `${nameOf(spec, owner)} wall ${at}`), probe);
  if (brief) return brief;
  throw new FormError(
    `no ${slot.kind} of the topic "${slot.topic}" with ${keyOf(slot.families) || 'no fault'} was found: choose another topic or kind`,
  );
}

/** By place in the learner's form: which slot stands there, both from 0. One wall for all keeps the order of the slots. */
export function orderFor(spec: SetWorkSpec, secret: string, owner: FormOwner): readonly number[] {
  const slots = Array.from({ length: spec.walls }, (_, slot) => slot);
  if (spec.sameForAll) return slots;
  return secretDraws(secret, `${nameOf(spec, owner)} order`).shuffled(slots);
}

function nameOf({ sameForAll }: SetWorkSpec, { learner, attempt }: FormOwner): string {
  return `${sameForAll || learner === null ? 'everyone' : `learner ${learner}`} attempt ${attempt}`;
}

type Mix = Pick<Slot, 'planned' | 'families'>;
const SOUND: Mix = { planned: [], families: [] };

/** The first mix of faults that is common in plans, and what most of its walls hold. */
function commonMix(
  spec: SetWorkSpec,
  slot: Pick<Slot, 'topic' | 'kind'>,
  draws: SecretDraws,
  probe: WallProbe,
): Mix {
  const briefs = Array.from({ length: SAMPLE }, () => briefOf(spec, slot, draws.seed()));
  const mixes = new Map<string, { readonly planned: readonly string[]; readonly briefs: Brief[] }>();
  for (const brief of briefs) {
    const planned = probe.planned(brief);
    const mix = mixes.get(keyOf(planned)) ?? { planned, briefs: [] };
    mixes.set(keyOf(planned), mix);
    mix.briefs.push(brief);
  }
  for (const { planned, briefs: alike } of mixes.values()) {
    if (planned.length === 0 || alike.length < OFTEN_ENOUGH) continue;
    const held = alike.slice(0, LAID).map(probe.measured);
    const families = held.find((each, at) => each.length > 0 && isHalfOf(each, held.slice(at)));
    if (families) return { planned, families };
  }
  throw new FormError(
    `no wall of the topic "${slot.topic}" and the kind "${slot.kind}" can have a fault under these rules: choose another topic or kind`,
  );
}

/** True where a mix comes up again, and in at least half of the list: it will then be found again in a few tries. */
function isHalfOf(mix: readonly string[], held: readonly (readonly string[])[]): boolean {
  const same = held.filter((each) => keyOf(each) === keyOf(mix)).length;
  return same >= 2 && same * 2 >= held.length;
}

function matchedBrief(spec: SetWorkSpec, slot: Slot, draws: SecretDraws, probe: WallProbe): Brief | null {
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const brief = briefOf(spec, slot, draws.seed());
    if (keyOf(probe.planned(brief)) !== keyOf(slot.planned)) continue;
    if (keyOf(probe.measured(brief)) === keyOf(slot.families)) return brief;
  }
  return null;
}

function briefOf(spec: SetWorkSpec, { topic, kind }: Pick<Slot, 'topic' | 'kind'>, seed: number): Brief {
  return { topic, kind, difficulty: spec.difficulty, rules: spec.rules, seed };
}

function keyOf(families: readonly string[]): string {
  return families.join(' + ');
}

/** The list over and over until there are `count`. */
function turns<T>(list: readonly T[], count: number): readonly T[] {
  return Array.from({ length: count }, (_, place) => list[place % list.length] as T);
}
