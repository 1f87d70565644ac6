import { createHash, randomUUID } from 'node:crypto';
import { setTimeout as wait } from 'node:timers/promises';
import { openDatabase, type Store, type StoreSettings } from '../../lib/store/database';
import { realWalls } from '../store/samples/real-walls';
import { openAttempt, sampleAnswers, sampleAttempt, sampleGroup } from '../store/samples/sample-attempt';

/** A hand-in as a device keeps it until it is acknowledged. */
export interface KeptHandIn {
  readonly body: string;
  readonly cookie: string;
}

/** What a device keeps of the answer. */
export interface Receipt {
  readonly receipt: string;
  readonly handedInAt: number;
}

export interface Sent extends KeptHandIn {
  readonly answer: Receipt;
}

const BETWEEN_TRIES_MS = 20;

export async function onStore<T>(settings: StoreSettings, work: (store: Store) => Promise<T>): Promise<T> {
  const store = await openDatabase(settings);
  try {
    return await work(store);
  } finally {
    await store.close();
  }
}

/** So many open attempts, shared out among so many learners, with what is to be handed in. */
export async function prepareHandIns(
  store: Store,
  count: number,
  learners: number,
): Promise<readonly KeptHandIn[]> {
  const walls = realWalls();
  const place = await sampleGroup(store);
  const kept: KeptHandIn[] = [];
  for (let n = 0; n < learners; n++) {
    const { work, learner, attempt } = await sampleAttempt(store, place, walls);
    const token = randomUUID();
    const token_hash = createHash('sha256').update(token).digest('base64url');
    const session = { token_hash, learner_id: learner, created_at: 0, expires_at: Date.now() + 86_400_000 };
    await store.db.insertInto('learner_session').values(session).execute();
    const attempts = [attempt];
    while (attempts.length * learners < count)
      attempts.push(await openAttempt(store, work, learner, attempts.length + 1, walls));
    for (const id of attempts) {
      const body = JSON.stringify({ attempt: id, key: randomUUID(), walls: sampleAnswers(walls) });
      kept.push({ body, cookie: `learner=${token}` });
    }
  }
  return kept;
}

/**
 * As a device does: the same again until a receipt comes. @throws for any answer but a receipt and "not now, come back".
 */
export async function sendUntilTaken(
  address: () => string,
  { body, cookie }: KeptHandIn,
  notNow: () => void = () => undefined,
): Promise<Receipt> {
  const headers = { 'content-type': 'application/json', 'sec-fetch-site': 'same-origin', cookie };
  while (true) {
    const answer = await fetch(`${address()}/api/hand-in`, { method: 'POST', headers, body }).catch(
      () => null,
    );
    const text = (await answer?.text().catch(() => null)) ?? null;
    if (answer && text !== null) {
      if (answer.ok) {
        const { receipt, handedInAt } = JSON.parse(text) as Receipt;
        return { receipt, handedInAt };
      }
      if (answer.status !== 503 || !answer.headers.has('retry-after'))
        throw new Error(`a hand-in was refused: ${answer.status} ${text}`);
      notNow();
    }
    await wait(BETWEEN_TRIES_MS);
  }
}

/** Hand-ins under way. */
export interface HandingIn {
  /** Those acknowledged so far. */
  readonly taken: readonly Sent[];
  /** How often a device was asked to come back. */
  readonly askedBack: () => number;
  /** Waits until that many are. @throws as soon as one is refused: it would be final on a device. */
  readonly until: (count: number) => Promise<void>;
}

/** Many devices hand in at once, each its next hand-in when the one before is taken. */
export function handInAll(address: () => string, handIns: readonly KeptHandIn[], devices: number): HandingIn {
  const taken: Sent[] = [];
  let askedBack = 0;
  const notNow = () => {
    askedBack += 1;
  };
  const next = handIns[Symbol.iterator]();
  const all = Promise.all(
    Array.from({ length: devices }, async () => {
      for (const each of next) {
        const answer = await sendUntilTaken(address, each, notNow);
        taken.push({ ...each, answer });
      }
    }),
  );
  all.catch(() => undefined);
  return {
    taken,
    askedBack: () => askedBack,
    until: async (count) => {
      while (taken.length < count) await Promise.race([wait(2), all]);
    },
  };
}

/** Those of which the same hand-in gets another answer now, or none. */
export async function changedAnswers(
  address: () => string,
  sent: readonly Sent[],
): Promise<readonly string[]> {
  const changed: string[] = [];
  for (const each of sent) {
    const again = await sendUntilTaken(address, each);
    if (JSON.stringify(again) !== JSON.stringify(each.answer)) changed.push(each.answer.receipt);
  }
  return changed;
}

/** Attempts that have only some of their parts, or one of them twice. */
export async function halfWritten({ db }: Store): Promise<readonly string[]> {
  const attempts = await db.selectFrom('attempt').select(['id', 'state', 'hand_in_key']).execute();
  const results = countBy(await db.selectFrom('result_version').select('attempt_id as of').execute());
  const answered = countBy(
    await db.selectFrom('attempt_wall').select('attempt_id as of').where('marks', '!=', '[]').execute(),
  );
  const told = countBy(await db.selectFrom('audit').select('subject as of').execute());
  const walls = realWalls().length;
  return attempts.flatMap(({ id, state, hand_in_key }) => {
    const parts = [results.get(id) ?? 0, answered.get(id) ?? 0, told.get(`attempt ${id}`) ?? 0].join();
    const isWhole = state === 'open' ? hand_in_key === null && parts === '0,0,0' : parts === `1,${walls},1`;
    return isWhole ? [] : [id];
  });
}

function countBy(rows: readonly { readonly of: string }[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { of } of rows) counts.set(of, (counts.get(of) ?? 0) + 1);
  return counts;
}
