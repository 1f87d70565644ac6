import { createServer as createHttpServer, request } from 'node:http';
import { type AddressInfo, connect, createServer, type Server, type Socket } from 'node:net';

export interface Balancer {
  readonly address: string;
  readonly close: () => void;
}

/**
 * Sends each request to the next of the addresses. Where nobody answers it cuts the connection, so that every answer that comes through
 * is the site's own.
 */
export async function openBalancer(addresses: () => readonly string[]): Promise<Balancer> {
  let turn = 0;
  const server = createHttpServer((asked, answer) => {
    const all = addresses();
    turn = (turn + 1) % all.length;
    const { method, url = '/', headers } = asked;
    const passed = request(`${all[turn]}${url}`, { method, headers }, (reply) => {
      answer.writeHead(reply.statusCode ?? 502, reply.headers);
      reply.pipe(answer);
      reply.once('error', () => answer.destroy());
    });
    passed.once('error', () => answer.destroy());
    asked.pipe(passed);
  });
  const port = await listening(server);
  return {
    address: `http://127.0.0.1:${port}`,
    close: () => {
      server.close();
      server.closeAllConnections();
    },
  };
}

/** An address that one machine has and another one takes over. */
export interface FloatingAddress {
  readonly port: number;
  /** Nothing comes through any more, and nothing is closed: as when a machine loses its power. */
  readonly fallSilent: () => void;
  /** New connections go there; those to a machine that fell silent stay as they are. */
  readonly moveTo: (port: number) => void;
  readonly close: () => void;
}

export async function openFloatingAddress(first: number): Promise<FloatingAddress> {
  let target = first;
  let isSilent = false;
  const open = new Set<Socket>();
  const silent = new Set<Socket>();
  const server = createServer((near) => {
    open.add(near);
    near.once('close', () => open.delete(near));
    near.on('error', () => near.destroy());
    if (isSilent) return;
    const far = connect(target, '127.0.0.1');
    far.on('error', () => far.destroy());
    near.on('data', (data) => silent.has(near) || far.write(data));
    far.on('data', (data) => silent.has(near) || near.write(data));
    near.once('close', () => far.destroy());
    far.once('close', () => silent.has(near) || near.destroy());
  });
  const port = await listening(server);
  return {
    port,
    fallSilent: () => {
      isSilent = true;
      for (const each of open) silent.add(each);
    },
    moveTo: (next) => {
      target = next;
      isSilent = false;
    },
    close: () => {
      server.close();
      for (const each of open) each.destroy();
    },
  };
}

async function listening(server: Server): Promise<number> {
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return (server.address() as AddressInfo).port;
}
