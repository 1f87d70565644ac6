import { bundleMDX } from 'mdx-bundler';
import remarkGfm from 'remark-gfm';
import { type Complaint, checkLesson, type LessonParts, partsOfLesson } from './check-lesson';
import { LessonError, type LessonMeta, parseFrontMatter } from './front-matter';
import type { TextNode } from './lesson-tree';

export interface Lesson extends LessonParts {
  readonly slug: string;
  readonly meta: LessonMeta;
  /** The compiled text, for `LessonText`. */
  readonly code: string;
}

/**
 * Compiles one lesson. `slugs` are the lessons a link may lead to. Throws a LessonError with one line for each thing that is wrong:
 * front matter, an unknown component, limit, fault, source, term or wall, a dead link, a figure typed by hand, a step out of order.
 */
export async function parseLesson(slug: string, source: string, slugs: readonly string[]): Promise<Lesson> {
  const file = `content/lessons/${slug}.mdx`;
  // Told before the compiler looks for what is imported.
  const imported = source.split('\n').findIndex((text) => /^(import|export)\s/.test(text)) + 1;
  if (imported > 0) {
    const says = 'no import or export; name a component from the map';
    throw new LessonError(told(file, [{ line: imported, says }]));
  }
  let tree: TextNode = { type: 'root' };
  const keepTree = () => (root: unknown) => {
    tree = root as TextNode;
  };
  const { code, frontmatter } = await compile(file, source, keepTree);
  const meta = parseFrontMatter(file, source, frontmatter);
  const complaints = checkLesson(tree, slugs);
  if (complaints.length > 0) throw new LessonError(told(file, complaints));
  return { slug, meta, code, ...partsOfLesson(tree) };
}

function told(file: string, complaints: readonly Complaint[]): string {
  return complaints.map(({ line, says }) => `${file}:${line}: ${says}`).join('\n');
}

async function compile(file: string, source: string, keepTree: () => (root: unknown) => void) {
  try {
    return await bundleMDX({
      source,
      // The error below says it all; without this the compiler prints it a second time.
      esbuildOptions: (options) => ({ ...options, logLevel: 'silent' }),
      mdxOptions: (options) => ({
        ...options,
        remarkPlugins: [...(options.remarkPlugins ?? []), remarkGfm, keepTree],
      }),
    });
  } catch (error) {
    // The compiler speaks of a file it made up itself.
    const text = error instanceof Error ? error.message : String(error);
    const [, line] = /_mdx_bundler_entry_point[^:_]*:(\d+)/.exec(text) ?? [];
    throw new LessonError(told(file, [{ line: Number(line ?? 1), says: text }]), { cause: error });
  }
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
