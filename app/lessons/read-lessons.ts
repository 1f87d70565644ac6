import 'server-only';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { inOrder, type Lesson, parseLesson } from './parse-lesson';

/** Compiling is slow: a text that has not changed since is not compiled again. */
const compiled = new Map<string, { readonly text: string; readonly lesson: Promise<Lesson> }>();

/** All lessons, in their order. @throws ContentError for any that cannot be used: the build stops. */
export async function readLessons(): Promise<readonly Lesson[]> {
  const folder = join(process.cwd(), 'content', 'lessons');
  const files = (await readdir(folder)).filter((name) => name.endsWith('.mdx')).sort();
  const slugs = files.map((name) => name.slice(0, -'.mdx'.length));
  const lessons = slugs.map(async (slug) =>
    readLesson(slug, await readFile(join(folder, `${slug}.mdx`), 'utf8'), slugs),
  );
  return inOrder(await Promise.all(lessons));
}

function readLesson(slug: string, text: string, slugs: readonly string[]): Promise<Lesson> {
  const known = compiled.get(slug);
  if (known?.text === text) return known.lesson;
  const lesson = parseLesson(slug, text, slugs);
  compiled.set(slug, { text, lesson });
  return lesson;
}
