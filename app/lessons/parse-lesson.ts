import { ContentError, compileMdx, parseFrontMatter } from '../content/compile-mdx';
import { checkLesson, type LessonParts, partsOfLesson } from './check-lesson';
import { LessonFrontMatter, type LessonMeta } from './front-matter';
import { inSteps } from './in-steps';
import type { TextNode } from './lesson-tree';

export interface Lesson extends LessonParts {
  readonly slug: string;
  readonly meta: LessonMeta;
  /** The compiled text, for `LessonText`. */
  readonly code: string;
}

/**
 * Compiles one lesson. `slugs` are the lessons a link may lead to. Throws a ContentError with one line for each thing that is wrong:
 * front matter, an unknown component, limit, fault, source, term or wall, a dead link, a figure typed by hand, a step out of order.
 */
export async function parseLesson(slug: string, source: string, slugs: readonly string[]): Promise<Lesson> {
  const file = `content/lessons/${slug}.mdx`;
  const compiled = await compileMdx(file, source, [inSteps]);
  const tree = compiled.tree as TextNode;
  const meta = parseFrontMatter(LessonFrontMatter, file, source, compiled.frontmatter);
  const complaints = checkLesson(tree, slugs);
  if (complaints.length > 0) {
    throw new ContentError(complaints.map(({ line, says }) => `${file}:${line}: ${says}`).join('\n'));
  }
  return { slug, meta, code: compiled.code, ...partsOfLesson(tree) };
}

/** Sorts lessons by their place. @throws ContentError when two have the same. */
export function inOrder(lessons: readonly Lesson[]): readonly Lesson[] {
  const sorted = [...lessons].sort((a, b) => a.meta.order - b.meta.order);
  sorted.forEach(({ slug, meta }, index) => {
    if (meta.order === sorted[index + 1]?.meta.order) {
      throw new ContentError(`content/lessons/${slug}.mdx:1: order: ${meta.order} is taken`);
    }
  });
  return sorted;
}
