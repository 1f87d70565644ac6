import type { Server, ServerResponse } from 'node:http';

/** Time for whoever holds a connection to send what is on its way, and to be told that it closes. */
const GRACE_MS = 500;
/** Whoever has no answer by then gets none. */
const AT_MOST_MS = 10_000;

/**
 * Asked to end, the server closes each connection after its next answer, takes no new one after half a second and answers what is
 * under way; `over` runs when all are closed. What was acknowledged is on disk already.
 */
export function endWhenAsked(server: Server, over: () => void): void {
  const underWay = new Set<ServerResponse>();
  let isEnding = false;
  server.prependListener('request', (_, response) => {
    response.shouldKeepAlive &&= !isEnding;
    underWay.add(response);
    response.once('close', () => {
      underWay.delete(response);
      // One that had begun before, and so could not say that the connection closes.
      if (isEnding && !server.listening) setImmediate(() => server.closeIdleConnections());
    });
  });
  const end = () => {
    if (isEnding) return;
    isEnding = true;
    for (const response of underWay) response.shouldKeepAlive = false;
    setTimeout(() => {
      server.close(over);
      server.closeIdleConnections();
    }, GRACE_MS);
    setTimeout(over, AT_MOST_MS);
  };
  for (const signal of ['SIGTERM', 'SIGINT', 'SIGHUP'] as const) process.on(signal, end);
}
