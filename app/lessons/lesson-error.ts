/** A lesson cannot be used; the message begins with file and line. */
export class LessonError extends Error {
  override name = 'LessonError';
}
