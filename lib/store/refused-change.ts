/** A change that is not made; the message is for whoever asked for it. */
export class RefusedChange extends Error {
  override name = 'RefusedChange';
}
