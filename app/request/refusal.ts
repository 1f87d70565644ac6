import type * as z from 'zod';

/** A request that is refused, in words for the person who sent it, and by the name of each field that is wrong. */
export class Refusal extends Error {
  override name = 'Refusal';
  constructor(
    readonly status: 400 | 401 | 403 | 404 | 409 | 410 | 413 | 415 | 422 | 429 | 503,
    readonly problem: string,
    readonly fields: Readonly<Record<string, string>> = {},
    /** After how many seconds to come back. */
    readonly retryAfter?: number,
  ) {
    super(problem);
  }
}

/** Refuses what one field says. */
export function wrongField(field: string, problem: string): Refusal {
  return new Refusal(422, problem, { [field]: problem });
}

export const TOO_MANY_TRIES = 'Too many wrong tries. Wait 15 minutes, then try again.';

export function tooManyTries(problem = TOO_MANY_TRIES, minutes = 15): Refusal {
  return new Refusal(429, problem, {}, minutes * 60);
}

/** The body as the schema reads it. @throws Refusal with one message a field: the schema's own words are shown to people. */
export function parseFields<T>(schema: z.ZodType<T>, body: unknown): T {
  const read = schema.safeParse(body);
  if (read.success) return read.data;
  const fields: Record<string, string> = {};
  for (const { path, message } of read.error.issues) {
    const field = String(path[0] ?? '');
    if (field !== '' && !Object.hasOwn(fields, field)) fields[field] = message;
  }
  throw new Refusal(422, Object.values(fields)[0] ?? 'This could not be read.', fields);
}
