import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { bundleMDX } from 'mdx-bundler';
import remarkGfm from 'remark-gfm';
import { z } from 'zod';

/** Reads `content/<name>.mdx`. Only pages that are made while building call this: it needs the file and a compiler. */
export async function readContent(name: string) {
  const file = `content/${name}.mdx`;
  return parseContent(file, await readFile(join(process.cwd(), 'content', `${name}.mdx`), 'utf8'));
}

const FrontMatter = z.strictObject({
  /** The page's heading and its name in the browser. */
  title: z.string().trim().min(1),
  /** One sentence for search and for lists of pages. */
  summary: z.string().trim().min(1),
});

interface Content {
  readonly meta: z.infer<typeof FrontMatter>;
  /** The compiled text, for `ContentText`. */
  readonly code: string;
}

/** The text of a content file cannot be used; the message begins with the file's name. */
export class ContentError extends Error {}

/**
 * Compiles one MDX text. Throws a ContentError that names `file` when the front matter is not as the schema says, the text does
 * not compile, or it imports something: an import would bring a second React along, so components come by name from a map.
 */
export async function parseContent(file: string, source: string): Promise<Content> {
  const line = source.split('\n').findIndex((text) => /^(import|export)\s/.test(text)) + 1;
  if (line > 0) throw new ContentError(`${file}:${line}: no import or export; name a component from the map`);

  const { code, frontmatter } = await compile(file, source);
  const meta = FrontMatter.safeParse(frontmatter);
  if (!meta.success) {
    const problems = meta.error.issues.map(
      (issue) => `${issue.path.join('.') || 'front matter'}: ${issue.message}`,
    );
    throw new ContentError(`${file}: ${problems.join('; ')}`);
  }
  return { meta: meta.data, code };
}

async function compile(file: string, source: string) {
  try {
    return await bundleMDX({
      source,
      // The error below says it all; without this the compiler prints it a second time.
      esbuildOptions: (options) => ({ ...options, logLevel: 'silent' }),
      mdxOptions: (options) => ({
        ...options,
        remarkPlugins: [...(options.remarkPlugins ?? []), remarkGfm],
      }),
    });
  } catch (error) {
    // The compiler speaks of a file it made up itself.
    throw new ContentError(`${file}: ${error instanceof Error ? error.message : String(error)}`, {
      cause: error,
    });
  }
}
