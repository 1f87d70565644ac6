import { bundleMDX } from 'mdx-bundler';
import remarkGfm from 'remark-gfm';
import type { z } from 'zod';

/** A node of a text as the compiler has it just before it writes the code: as much as is asked for here. */
export interface PageNode {
  readonly type: string;
  readonly tagName?: string;
  readonly value?: string;
  children?: PageNode[];
  readonly name?: string;
  readonly attributes?: readonly unknown[];
}

/** A text of `content` cannot be used. Each line of the message begins with file and line. */
export class ContentError extends Error {
  override name = 'ContentError';
}

interface Compiled {
  readonly code: string;
  readonly frontmatter: unknown;
  /** The text as a tree, before it became code. */
  readonly tree: unknown;
}

/**
 * Compiles one MDX text. An import is refused before the compiler looks for it: it would bring a second React along, so components
 * come by name from a map. `pagePlugins` change the page just before it becomes code. @throws ContentError
 */
export async function compileMdx(
  file: string,
  source: string,
  pagePlugins: readonly (() => (root: PageNode) => void)[] = [],
): Promise<Compiled> {
  const line = source.split('\n').findIndex((text) => /^(import|export)\s/.test(text)) + 1;
  if (line > 0) throw new ContentError(`${file}:${line}: no import or export; name a component from the map`);
  let tree: unknown;
  const keepTree = () => (root: unknown) => {
    tree = root;
  };
  try {
    const { code, frontmatter } = await bundleMDX({
      source,
      // The error below says it all; without this the compiler prints it a second time.
      esbuildOptions: (options) => ({ ...options, logLevel: 'silent' }),
      mdxOptions: (options) => ({
        ...options,
        remarkPlugins: [...(options.remarkPlugins ?? []), remarkGfm, keepTree],
        rehypePlugins: [...(options.rehypePlugins ?? []), ...pagePlugins],
      }),
    });
    return { code, frontmatter, tree };
  } catch (error) {
    // The compiler speaks of a file it made up itself.
    const text = error instanceof Error ? error.message : String(error);
    const [, at = 1] = /_mdx_bundler_entry_point[^:_]*:(\d+)/.exec(text) ?? [];
    throw new ContentError(`${file}:${at}: ${text}`, { cause: error });
  }
}

/** Checks front matter. @throws ContentError with the line of each wrong entry. */
export function parseFrontMatter<Meta>(
  schema: z.ZodType<Meta>,
  file: string,
  source: string,
  loose: unknown,
): Meta {
  const meta = schema.safeParse(loose);
  if (meta.success) return meta.data;
  const lines = source.split('\n');
  const problems = meta.error.issues.map(({ path, message }) => {
    const entry = String(path[0] ?? 'front matter');
    const line = lines.findIndex((text) => text.startsWith(`${entry}:`)) + 1;
    return `${file}:${Math.max(line, 1)}: ${entry}: ${message}`;
  });
  throw new ContentError(problems.join('\n'));
}
