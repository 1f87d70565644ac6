declare module 'compression' {
  import type { IncomingMessage, ServerResponse } from 'node:http';

  /** Compresses what is written to the response, in the best way that the request allows. */
  type Compress = (request: IncomingMessage, response: ServerResponse, next: () => void) => void;
  const compression: () => Compress;
  export = compression;
}
