/** What is wrong with a photograph, its four points or its reference, in one sentence for the person who gave them. */
export class PhotoError extends Error {
  override name = 'PhotoError';
}
