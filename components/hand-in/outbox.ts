import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { type HandIn, type Sent, sendHandIn, type WallAnswer } from './hand-in';

interface OutboxSchema extends DBSchema {
  'hand-ins': { key: string; value: HandIn };
}

/** First wait before another try, and the longest, ms: it doubles in between, with a fifth more or less by chance. */
const FIRST_WAIT = 1_000;
const LONGEST_WAIT = 60_000;

/**
 * Hand-ins of this device, on its own disk. One entry an attempt: putting it in twice, in two tabs too, is putting it in once.
 */
export interface Outbox {
  /** Kept on the device when this resolves, before anything is sent. */
  readonly put: (attempt: string, learner: string, walls: readonly WallAnswer[]) => Promise<HandIn>;
  readonly find: (attempt: string) => Promise<HandIn | undefined>;
  /** How many of this learner are not sent yet. */
  readonly waiting: (learner: string) => Promise<number>;
  /** Sends what waits of this learner, each once. Gives how long to wait before the next try, ms; null when nothing waits. */
  readonly flush: (learner: string) => Promise<number | null>;
  readonly close: () => void;
}

export async function openOutbox(name = 'read-the-wall outbox'): Promise<Outbox> {
  const db = await openDB<OutboxSchema>(name, 1, {
    upgrade: (made) => {
      made.createObjectStore('hand-ins', { keyPath: 'attempt' });
    },
  });
  let misses = 0;
  return {
    put: (attempt, learner, walls) => put(db, attempt, learner, walls),
    find: (attempt) => db.get('hand-ins', attempt),
    waiting: async (learner) => (await waitingOf(db, learner)).length,
    flush: async (learner) => {
      const waiting = await waitingOf(db, learner);
      const asked: (number | null)[] = [];
      for (const handIn of waiting) {
        const sent = await sendHandIn(handIn);
        await settle(db, handIn, sent);
        if (sent.kind === 'waiting') asked.push(sent.after);
      }
      misses = asked.length === 0 ? 0 : misses + 1;
      return asked.length === 0 ? null : waitFor(misses, asked);
    },
    close: () => db.close(),
  };
}

async function waitingOf(db: IDBPDatabase<OutboxSchema>, learner: string): Promise<readonly HandIn[]> {
  const all = await db.getAll('hand-ins');
  return all.filter((each) => each.state === 'waiting' && each.learner === learner);
}

/** In one transaction: of two that come at once the first one counts. A refused one may be put in again, under a new key. */
async function put(
  db: IDBPDatabase<OutboxSchema>,
  attempt: string,
  learner: string,
  walls: readonly WallAnswer[],
): Promise<HandIn> {
  const change = db.transaction('hand-ins', 'readwrite', { durability: 'strict' });
  const before = await change.store.get(attempt);
  if (before && before.state !== 'refused') {
    await change.done;
    return before;
  }
  const handIn: HandIn = {
    attempt,
    learner,
    key: makeKey(),
    walls,
    state: 'waiting',
    receipt: null,
    problem: null,
  };
  await change.store.put(handIn);
  await change.done;
  return handIn;
}

/** Writes down what a try gave, unless another tab got further meanwhile. */
async function settle(db: IDBPDatabase<OutboxSchema>, { attempt, key }: HandIn, sent: Sent): Promise<void> {
  const change = db.transaction('hand-ins', 'readwrite', { durability: 'strict' });
  const now = await change.store.get(attempt);
  if (now?.key === key && now.state === 'waiting') {
    await change.store.put({
      ...now,
      state: sent.kind,
      receipt: sent.kind === 'received' ? sent.receipt : null,
      problem: sent.kind === 'received' ? null : sent.problem,
    });
  }
  await change.done;
}

function waitFor(misses: number, asked: readonly (number | null)[]): number {
  const doubled = Math.min(LONGEST_WAIT, FIRST_WAIT * 2 ** Math.min(misses - 1, 10));
  const byChance = doubled * (0.8 + 0.4 * Math.random());
  return Math.max(byChance, ...asked.map((ms) => ms ?? 0));
}

/** A random UUID (RFC 9562, version 4). Browsers have their own only over https; a classroom's server may be without. */
function makeKey(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x40;
  bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return [8, 12, 16, 20, 32].map((end, index) => hex.slice([0, 8, 12, 16, 20][index], end)).join('-');
}
