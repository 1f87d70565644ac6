import { randomUUID } from 'node:crypto';
import { MOST_LEARNERS } from '../../lib/classes/roster';
import { audited } from '../../lib/store/audit';
import type { Store } from '../../lib/store/database';
import {
  addLearner,
  groupByCode,
  holdRoster,
  type JoinGroup,
  type LearnerRow,
  learnerIn,
  rosterOf,
  setFirstPin,
  wasTakenOff,
} from '../../lib/store/learners';
import { countTry, mayTry } from '../../lib/store/throttle';
import { networkOf } from '../request/address';
import { Refusal, tooManyTries, wrongField } from '../request/refusal';
import { log } from '../server/log';
import { isEasyPin } from './guessed-password';
import { knownDevice } from './known-device';
import { hashSecret, isSecretOf } from './passwords';
import { rateLimited } from './rate-limit';

interface Entry {
  readonly store: Store;
  readonly headers: Headers;
  readonly at: number;
  readonly code: string;
  readonly who: { readonly id: string } | { readonly name: string };
  readonly pin: string;
  /** The one-time word, tidied, where the name asks for one. */
  readonly word?: string | undefined;
  /** The PIN is chosen, not remembered. */
  readonly isFirst: boolean;
}

/** The learner whose name and PIN these are; a new name, or a name without a PIN, takes this one. @throws Refusal. */
export async function enterGroup(
  entry: Entry,
): Promise<{ readonly learnerId: string; readonly groupId: string }> {
  const { store, headers, at, code, who, pin } = entry;
  const group = await openGroup(store, headers, code, at);
  if (!group)
    throw wrongField('code', 'No open group has this code. Look at it again, or ask your instructor.');
  const learner =
    'id' in who ? await learnerIn(store.db, group.id, who.id) : await learnerNamed(entry, group, who.name);
  if (!learner) throw new Refusal(404, 'This name is not on the list any more. Go back and choose again.');
  if (learner.pinHash === null) {
    await refuseFirstPin(entry, learner);
    if (await setFirstPin(store.db, learner.id, await hashSecret(pin))) {
      log.info({ subject: `learner ${learner.id}` }, 'chose a PIN');
      return { learnerId: learner.id, groupId: group.id };
    }
  }
  // Another try was faster. It may have been the same person, who tapped twice or got no answer.
  const pinHash = learner.pinHash ?? (await learnerIn(store.db, group.id, learner.id))?.pinHash ?? null;
  if (pinHash !== null && (await isRight(entry, learner.id, pinHash, pin)))
    return { learnerId: learner.id, groupId: group.id };
  if (entry.isFirst || pinHash === null) {
    throw new Refusal(409, 'This name has a PIN already. Type that PIN, or ask your instructor to reset it.');
  }
  throw wrongField(
    'pin',
    'Name and PIN do not fit together. Try again, or ask your instructor to reset the PIN.',
  );
}

/**
 * The open group with this code. Wrong codes are counted by network, so that codes cannot be tried through; a browser that was in
 * the group before is let in whatever its neighbours try.
 */
export async function openGroup(
  store: Store,
  headers: Headers,
  code: string,
  at: number,
): Promise<JoinGroup | undefined> {
  const group = await groupByCode(store.db, code);
  if (group && knownDevice(headers, group.id) !== undefined) return group;
  const network = networkOf(headers);
  if (!(await mayTry(store.db, 'network', network, at))) {
    log.warn('too many wrong group codes: refused unread');
    throw tooManyTries('Too many wrong codes came from your network. Wait 5 minutes, then try again.', 5);
  }
  if (!group) await countTry(store.db, 'network', network, at);
  return group;
}

/** One name, one learner: 'ann lee' is Ann Lee. */
async function learnerNamed({ store, at }: Entry, group: JoinGroup, name: string): Promise<LearnerRow> {
  const id = randomUUID();
  return audited(store, { actor: `learner ${id}`, at }, async (trx, note) => {
    await holdRoster(trx, group.id);
    const roster = await rosterOf(trx, group.id);
    const known = roster.find((row) => row.name.toLowerCase() === name.toLowerCase());
    if (known) return known;
    if (await wasTakenOff(trx, group.id, name)) {
      throw new Refusal(409, 'This name was taken off the list. Ask your instructor to put it back.');
    }
    if (!group.takesNew) {
      throw new Refusal(409, 'This group takes no new names just now. Ask your instructor to add yours.');
    }
    if (roster.length >= MOST_LEARNERS) throw new Refusal(409, 'This group is full. Ask your instructor.');
    await addLearner(trx, { id, groupId: group.id, name, at });
    await note('joined', `group ${group.id}`);
    return { id, name, pinHash: null, wordHash: null };
  });
}

/** @throws Refusal where the PIN is one that others try first, or where this name waits for its one-time word and this is another. */
async function refuseFirstPin(entry: Entry, { id, wordHash }: LearnerRow): Promise<void> {
  if (isEasyPin(entry.pin)) {
    throw wrongField('pin', 'This PIN is one of the first that others would try. Choose another.');
  }
  if (wordHash === null || (await isRight(entry, id, wordHash, entry.word ?? ''))) return;
  throw wrongField('word', 'This is not the word for this name. Ask your instructor for a new one.');
}

async function isRight(
  { store, headers, at }: Entry,
  learnerId: string,
  hash: string,
  typed: string,
): Promise<boolean> {
  const right = await rateLimited(
    {
      store,
      headers,
      kinds: ['pin', 'pinDay'],
      of: learnerId,
      subject: `learner ${learnerId}`,
      at,
      problem: 'Too many wrong tries for this name. Wait, or ask your instructor to reset the PIN.',
    },
    async () => (await isSecretOf(hash, typed)) || undefined,
  );
  return right === true;
}
