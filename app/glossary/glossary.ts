import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';

const Entry = z.strictObject({
  /** The address on the page, and what <Term id> takes. */
  id: z.string().regex(/^[a-z-]+$/),
  /** As said in North America and in Britain; the same where they agree. */
  american: z.string().min(1),
  british: z.string().min(1),
  /** One or two sentences, no figures. */
  means: z.string().min(1),
  /** What its picture shows, for those who do not see it; without the word itself where that would say nothing. */
  shows: z.string().min(1),
  /** A drawing with the thing ringed: which sound wall, which view, which kind of part; soldiers as a row. */
  picture: z
    .strictObject({
      part: z.enum([
        'unit',
        'bed',
        'head',
        'course',
        'opening',
        'support',
        'tie',
        'corner',
        'edge',
        'soldier',
        'quoin',
        'gable',
        'cut',
      ]),
      of: z.enum(['plain', 'window', 'corner', 'gable']),
      view: z.enum(['front', 'before-cover']),
    })
    .optional(),
});

export type GlossaryEntry = z.infer<typeof Entry>;

// Read where the server starts: only pages that are made while building ask for it.
const words: unknown = JSON.parse(readFileSync(join(process.cwd(), 'content', 'glossary.json'), 'utf8'));

/** Every word of the trade that we explain, in the order of the alphabet. */
export const GLOSSARY: readonly GlossaryEntry[] = z
  .array(Entry)
  .parse(words)
  .sort((a, b) => (a.american < b.american ? -1 : 1));

const BY_ID: ReadonlyMap<string, GlossaryEntry> = new Map(GLOSSARY.map((entry) => [entry.id, entry]));

export function isTerm(id: string): boolean {
  return BY_ID.has(id);
}

export function entryOf(id: string): GlossaryEntry | undefined {
  return BY_ID.get(id);
}
