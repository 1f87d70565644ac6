import { request as ask, type IncomingHttpHeaders, type IncomingMessage } from 'node:http';
import { request as askSecurely, createServer, Agent as SecureAgent } from 'node:https';
import type { AddressInfo } from 'node:net';
import { makeCertificate } from './certificate';

interface Sent {
  readonly method?: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: string;
}

interface Answer {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly text: string;
}

/** What stands in front of a site on the internet: it ends TLS, adds the caller's address to the header and passes on over plain http. */
export interface TlsProxy {
  readonly address: string;
  /** To the site at this address from now on. */
  readonly passOnTo: (site: string) => void;
  /** By a caller who trusts this certificate alone. */
  readonly fetch: (path: string, sent?: Sent) => Promise<Answer>;
  readonly close: () => Promise<void>;
}

export async function openTlsProxy(): Promise<TlsProxy> {
  const { key, cert } = makeCertificate();
  let behind = '';
  const server = createServer({ key, cert }, (request, response) => {
    const caller = request.socket.remoteAddress ?? '';
    const forwarded = [request.headers['x-forwarded-for'], caller].filter(Boolean).join(', ');
    const headers = { ...request.headers, 'x-forwarded-for': forwarded, 'x-forwarded-proto': 'https' };
    const asked = ask(behind + request.url, { method: request.method, headers }, (answer) => {
      response.writeHead(answer.statusCode ?? 502, answer.headersDistinct as IncomingHttpHeaders);
      answer.pipe(response);
    });
    asked.once('error', () => response.destroy());
    request.pipe(asked);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = `https://127.0.0.1:${(server.address() as AddressInfo).port}`;
  const agent = new SecureAgent({ ca: cert, keepAlive: true });
  return {
    address,
    passOnTo: (site) => {
      behind = site;
    },
    fetch: (path, { method = 'GET', headers = {}, body } = {}) =>
      new Promise((resolve, reject) => {
        const asked = askSecurely(address + path, { method, headers, agent }, (answer) => {
          textOf(answer).then(
            (text) => resolve({ status: answer.statusCode ?? 0, headers: answer.headers, text }),
            reject,
          );
        });
        asked.once('error', reject);
        asked.end(body);
      }),
    close: async () => {
      agent.destroy();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}

async function textOf(answer: IncomingMessage): Promise<string> {
  const chunks: Buffer[] = [];
  for await (const chunk of answer) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks).toString('utf8');
}
