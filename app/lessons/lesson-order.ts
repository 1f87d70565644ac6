import { LessonError } from './lesson-error';
import type { Lesson } from './parse-lesson';

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
