import 'server-only';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { LessonError } from './lesson-error';
import { type Lesson, parseLesson } from './parse-lesson';

/** Compiling is slow: a text that has not changed since is not compiled again. */
const compiled = new Map<string, { readonly text: string; readonly lesson: Promise<Lesson> }>();

/** All lessons, in their order. @throws LessonError for any that cannot be used: the build stops. */
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

/** Sorts lessons by their place. @throws LessonError when two have the same. */
export function inOrder(lessons: readonly Lesson[]): readonly Lesson[] {
  const sorted = [...lessons].sort((a, b) => a.meta.order - b.meta.order);
  sorted.forEach(({ slug, meta }, index) => {
    if (meta.order === sorted[index + 1]?.meta.order) {
      throw new LessonError(`content/lessons/${slug}.mdx:1: order: ${meta.order} is taken`);
    }
  });
  return sorted;
}
