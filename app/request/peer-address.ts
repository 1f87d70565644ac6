import { subscribe } from 'node:diagnostics_channel';
import type { IncomingMessage } from 'node:http';
import { PEER_HEADER } from './address';

/**
 * Writes the address at the other end of the connection into each request's headers: handlers get no socket from Next, and the
 * forwarded-for header that Next fills is kept when the caller has filled it first. Called once, when the server starts.
 */
export function tellPeerAddress(): void {
  subscribe('http.server.request.start', (message) => {
    const { request } = message as { request: IncomingMessage };
    request.headers[PEER_HEADER] = request.socket.remoteAddress ?? 'unknown';
  });
}
