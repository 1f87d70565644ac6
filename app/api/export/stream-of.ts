/** Pieces of text as a stream that makes the next piece only when the last one was taken: the whole is never in memory. */
export function streamOf(pieces: AsyncIterable<string>): ReadableStream<Uint8Array> {
  const encoder = new TextEncoder();
  const iterator = pieces[Symbol.asyncIterator]();
  return new ReadableStream({
    pull: async (controller) => {
      const { done, value } = await iterator.next();
      if (done) controller.close();
      else controller.enqueue(encoder.encode(value));
    },
    cancel: async () => {
      await iterator.return?.();
    },
  });
}
