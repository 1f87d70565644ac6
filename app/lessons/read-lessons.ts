import 'server-only';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { LessonError } from './lesson-error';
import { type Lesson, parseLesson } from './parse-lesson';

/** Compiling is slow and the texts do not change while a page is made: each process reads them once. */
let kept: Promise<readonly Lesson[]> | undefined;

/** All lessons, in their order. @throws LessonError for any that cannot be used: the build stops. */
export function readLessons(): Promise<readonly Lesson[]> {
  if (process.env.NODE_ENV === 'development') return readAll();
  kept ??= readAll();
  return kept;
}

async function readAll(): Promise<readonly Lesson[]> {
  const folder = join(process.cwd(), 'content', 'lessons');
  const files = (await readdir(folder)).filter((name) => name.endsWith('.mdx')).sort();
  const slugs = files.map((name) => name.slice(0, -'.mdx'.length));
  const lessons: Lesson[] = [];
  for (const slug of slugs) {
    lessons.push(await parseLesson(slug, await readFile(join(folder, `${slug}.mdx`), 'utf8'), slugs));
  }
  return inOrder(lessons);
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
