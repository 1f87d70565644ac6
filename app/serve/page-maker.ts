import { createServer } from 'node:http';
import next from 'next';
import { withoutNext } from './without-next';

/** A further process of the site that answers what the first one passes on (page-makers.ts), at the socket named. */
const [, , socket] = process.argv;
const site = next({ dev: false });
await site.prepare();
const answer = withoutNext(site.getRequestHandler());
const server = createServer((request, response) => void answer(request, response));
// The first process keeps its connections for as long as it likes.
server.keepAliveTimeout = 0;
server.listen(socket, () => process.send?.('ready'));
// It ends with the first process alone: a signal to all is no reason, for what is under way is still to be answered.
process.once('disconnect', () => process.exit(0));
for (const signal of ['SIGTERM', 'SIGINT', 'SIGHUP'] as const) process.on(signal, () => undefined);
