import { Agent, type IncomingMessage, request } from 'node:http';
import { expect, onTestFinished, test } from 'vitest';
import { openHandInSite } from './hand-in-site';

const HAND_INS = 120;
const CLIENTS = 20;

test('asked to end in the middle of hand-ins, the site answers what it took and keeps what it answered', async () => {
  const { server, store, attempts, handIn, close } = await openHandInSite(HAND_INS);
  onTestFinished(close);
  let answered = 0;
  const answers = await Promise.all(
    attempts.map(async (attempt) => {
      const response = await handIn(attempt).catch(() => undefined);
      answered += 1;
      if (answered === 10) void server.stop();
      return response?.status === 201 ? [attempt] : [];
    }),
  );
  await server.ended;
  const kept = await store.db.selectFrom('attempt').select('id').where('state', '=', 'marked').execute();
  expect(kept.length).toBeGreaterThanOrEqual(10);
  expect(kept.map(({ id }) => id).sort()).toEqual(answers.flat().sort());
});

test('clients that hold their connections are answered, told that the connection closes, and none is cut off', async () => {
  const { server, close } = await openHandInSite(1);
  onTestFinished(close);
  const ends = Array.from({ length: CLIENTS }, () => askUntilClosed(`${server.address}/api/health`));
  await Promise.all(ends.map(({ begun }) => begun));
  void server.stop();
  expect(await Promise.all(ends.map(({ end }) => end))).toEqual(Array(CLIENTS).fill('told to close'));
  await server.ended;
});

/** Asks again and again over one connection; `begun` when it has been used twice. */
function askUntilClosed(url: string) {
  const agent = new Agent({ keepAlive: true, maxSockets: 1 });
  let begin = () => {};
  const begun = new Promise<void>((resolve) => {
    begin = resolve;
  });
  const ask = () =>
    new Promise<IncomingMessage>((resolve, reject) => {
      request(url, { agent }, (answer) => answer.resume().once('end', () => resolve(answer)))
        .once('error', reject)
        .end();
    });
  const askOn = async () => {
    for (let asked = 1; ; asked += 1) {
      const { headers } = await ask();
      if (headers.connection === 'close') return 'told to close';
      if (asked === 2) begin();
    }
  };
  const end = askOn().catch(({ code }) => String(code));
  return { begun, end };
}
