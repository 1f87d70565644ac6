import { Agent, request } from 'node:http';
import { setTimeout as wait } from 'node:timers/promises';

export interface Load {
  /** Requests, in the order they are sent. */
  readonly bodies: readonly string[];
  readonly perSecond: number;
  readonly url: string;
  readonly headers: Readonly<Record<string, string>>;
}

export interface Outcome {
  readonly acknowledged: number;
  readonly errors: number;
  /** Milliseconds, from when the request was due to be sent: a server that stands still is charged for those who wait. */
  readonly p50: number;
  readonly p99: number;
  readonly most: number;
}

/** An answer that takes longer counts as an error; it also bounds the bench on a machine that cannot keep up. */
const GIVE_UP_MS = 10_000;

/** Sends at a fixed rate, whatever the answers do. */
export async function load({ bodies, perSecond, url, headers }: Load): Promise<Outcome> {
  const agent = new Agent({ keepAlive: true, maxSockets: 128 });
  const begun = performance.now();
  const times: number[] = [];
  let errors = 0;
  await Promise.all(
    bodies.map(async (body, index) => {
      const due = begun + (index * 1000) / perSecond;
      await wait(Math.max(0, due - performance.now()));
      const status = await post(url, headers, body, agent);
      if (status === 201) times.push(performance.now() - due);
      else errors += 1;
    }),
  );
  agent.destroy();
  times.sort((a, b) => a - b);
  const at = (share: number) => times[Math.min(times.length - 1, Math.floor(times.length * share))] ?? NaN;
  return { acknowledged: times.length, errors, p50: at(0.5), p99: at(0.99), most: at(1) };
}

function post(url: string, headers: Load['headers'], body: string, agent: Agent): Promise<number> {
  return new Promise((resolve) => {
    const sent = request(url, {
      method: 'POST',
      agent,
      headers: { 'content-type': 'application/json', ...headers },
    });
    sent.once('response', (response) => {
      response.resume();
      response.once('end', () => resolve(response.statusCode ?? 0));
    });
    sent.setTimeout(GIVE_UP_MS, () => sent.destroy());
    sent.once('error', () => resolve(0));
    sent.end(body);
  });
}
