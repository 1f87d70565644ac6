import { z } from 'zod';
import { SOURCES } from '../../lib/limits/bibliography';

/** For whom a lesson is. */
const READERS = ['apprentice', 'instructor', 'homeowner'] as const;

const KEYS = SOURCES.map(({ key }) => key);

export const LessonFrontMatter = z.strictObject({
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

export type LessonMeta = z.infer<typeof LessonFrontMatter>;
