import { z } from 'zod';
import { SOURCES } from '../../lib/limits/bibliography';

/** A lesson cannot be used; the message begins with file and line. */
export class LessonError extends Error {
  override name = 'LessonError';
}

/** For whom a lesson is. */
export const READERS = ['apprentice', 'instructor', 'homeowner'] as const;

const KEYS = SOURCES.map(({ key }) => key);

const FrontMatter = z.strictObject({
  title: z.string().trim().min(1),
  /** One sentence for lists and for search. */
  summary: z.string().trim().min(1).endsWith('.'),
  /** Place among the lessons, from 1. */
  order: z.int().min(1),
  /** A few words: what it is about. */
  topic: z.string().trim().min(1),
  /** What you will be able to do, each read after "You can". */
  able: z.array(z.string().trim().min(1)).min(2).max(4),
  /** Keys of the bibliography. */
  sources: z.array(z.literal(KEYS)).min(1),
  readers: z.array(z.enum(READERS)).min(1),
});

export type LessonMeta = z.infer<typeof FrontMatter>;

/** Checks front matter. @throws LessonError with the line of each wrong entry. */
export function parseFrontMatter(file: string, source: string, loose: unknown): LessonMeta {
  const meta = FrontMatter.safeParse(loose);
  if (meta.success) return meta.data;
  const lines = source.split('\n');
  const problems = meta.error.issues.map(({ path, message }) => {
    const entry = String(path[0] ?? 'front matter');
    const line = lines.findIndex((text) => text.startsWith(`${entry}:`)) + 1;
    return `${file}:${Math.max(line, 1)}: ${entry}: ${message}`;
  });
  throw new LessonError(problems.join('\n'));
}
