import { createServer, request, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { setTimeout as wait } from 'node:timers/promises';
import { onTestFinished } from 'vitest';

/** What became of the requests that came by. */
export interface Damage {
  lostBefore: number;
  lostAfter: number;
  doubled: number;
  late: number;
}

/**
 * A network between device and site that loses requests, loses answers after the site did its work, sends requests twice and holds
 * some up so that later ones overtake them. `chance` gives 0 to 1, the same for the same run.
 */
export async function badNetwork(
  site: string,
  chance: () => number,
): Promise<{ address: string; damage: Damage }> {
  const damage: Damage = { lostBefore: 0, lostAfter: 0, doubled: 0, late: 0 };
  const server = createServer(async (asked, answer) => {
    const chunks: Buffer[] = [];
    for await (const chunk of asked) chunks.push(chunk as Buffer);
    const forward = () => ask(`${site}${asked.url}`, asked.headers, Buffer.concat(chunks));
    const fate = chance();
    if (fate < 0.2) {
      damage.lostBefore += 1;
      return void answer.destroy();
    }
    if (fate < 0.35) {
      damage.late += 1;
      await wait(chance() * 150);
    }
    if (fate > 0.85) {
      damage.doubled += 1;
      void forward().catch(() => undefined);
    }
    const given = await forward().catch(() => undefined);
    if (given === undefined || chance() < 0.3) {
      damage.lostAfter += 1;
      return void answer.destroy();
    }
    reply(answer, given);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  onTestFinished(async () => {
    server.closeAllConnections();
    await new Promise((resolve) => server.close(resolve));
  });
  return { address: `http://127.0.0.1:${(server.address() as AddressInfo).port}`, damage };
}

interface Given {
  readonly status: number;
  readonly text: string;
}

function ask(url: string, headers: NodeJS.Dict<string | string[]>, body: Buffer): Promise<Given> {
  return new Promise((resolve, reject) => {
    const sent = request(url, { method: 'POST', headers, agent: false }, (response) => {
      let text = '';
      response.setEncoding('utf8').on('data', (part: string) => {
        text += part;
      });
      response.once('end', () => resolve({ status: response.statusCode ?? 0, text }));
    });
    sent.once('error', reject);
    sent.end(body);
  });
}

function reply(answer: ServerResponse, { status, text }: Given): void {
  answer.writeHead(status, { 'content-type': 'application/json' }).end(text);
}
