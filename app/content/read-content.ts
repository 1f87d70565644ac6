import 'server-only';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parseContent } from './parse-content';

/** Reads `content/<name>.mdx`. Only pages that are made while building call this: it needs the file and a compiler. */
export async function readContent(name: string) {
  const file = `content/${name}.mdx`;
  return parseContent(file, await readFile(join(process.cwd(), 'content', `${name}.mdx`), 'utf8'));
}
