import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import { compileMdx, parseFrontMatter } from './compile-mdx';

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

/** The front matter of one MDX text, and its code for `ContentText`. @throws ContentError that names `file`. */
export async function parseContent(file: string, source: string) {
  const { code, frontmatter } = await compileMdx(file, source);
  return { meta: parseFrontMatter(FrontMatter, file, source, frontmatter), code };
}
