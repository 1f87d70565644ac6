import { randomUUID } from 'node:crypto';
import { writeSync } from 'node:fs';
import { appendAudit } from '../../lib/store/audit';
import { openDatabase, type Store, type StoreSettings } from '../../lib/store/database';
import { migrate } from '../../lib/store/migrate';
import { openAttempt, recordAsDevice, recordHandIn, sampleHandIn } from '../store/samples/sample-attempt';

// Another server process as the storage tests start it: a task, the settings, what the task needs.
const LOST_ITS_SERVER = 3;
const [, , task = '', settings = '', ...args] = process.argv;
const store = await openDatabase(JSON.parse(settings) as StoreSettings);
switch (task) {
  case 'migrate':
    tell(String(await migrate(store, 0)));
    break;
  case 'audit':
    for (let n = 0; n < Number(args[0]); n += 1) {
      const entry = { at: n, actor: 'server', action: 'tried', subject: 'nothing', detail: n };
      await store.db.transaction().execute((trx) => appendAudit(trx, store.kind, entry));
    }
    break;
  case 'same-hand-in': {
    const [attempt = '', learner = '', key = ''] = args;
    const receipts = await Promise.all(
      Array.from({ length: 10 }, () => recordAsDevice(store, sampleHandIn({ attempt, learner }, { key }))),
    );
    tell(JSON.stringify(receipts));
    break;
  }
  case 'hand-in':
    try {
      await Promise.all([1, 2, 3].map(() => handInForEver(store, args[0] ?? '', args[1] ?? '')));
    } catch {
      // The server went: whatever the driver says of it.
      process.exit(LOST_ITS_SERVER);
    }
    break;
  default:
    throw new Error(`no task ${task}`);
}
await store.close();

/** Hands in one attempt after the other until it is killed, and tells of each as soon as it is acknowledged. */
async function handInForEver(opened: Store, work: string, learner: string): Promise<never> {
  for (;;) {
    const number = Number.parseInt(randomUUID().slice(0, 7), 16) + 1;
    const attempt = await openAttempt(opened, work, learner, number);
    const handIn = sampleHandIn({ attempt, learner });
    const { receipt } = await recordHandIn(opened, handIn);
    tell(`${attempt} ${handIn.key} ${receipt}`);
  }
}

/** At once, and whole: a kill right after must not swallow what was told. */
function tell(line: string): void {
  writeSync(1, `${line}\n`);
}
