import { filesUnder } from './source-files';

/** One page, or one method of a route handler, as app/access/access-table.ts names it. */
export interface DiskRoute {
  readonly name: string;
  readonly file: string;
  readonly text: string;
}

const METHODS =
  /\bexport\s+(?:const|function|async\s+function)\s+(GET|HEAD|POST|PUT|PATCH|DELETE|OPTIONS)\b/g;

/** '/desk/people' of app/desk/people/page.tsx; groups in round brackets are no part of an address. */
function addressOf(file: string): string {
  const folder = file.replace(/^app/, '').replace(/\/(page\.tsx|route\.ts)$/, '');
  return folder.replaceAll(/\/\([^)]*\)/g, '') || '/';
}

/** Everything under app that answers a request. */
export function routesOnDisk(): readonly DiskRoute[] {
  return filesUnder('app').flatMap(({ path: file, text, code }) => {
    if (/\/page\.tsx$/.test(file)) return [{ name: addressOf(file), file, text }];
    if (!/\/route\.ts$/.test(file)) return [];
    return [...code.matchAll(METHODS)].map(([, method]) => ({
      name: `${method} ${addressOf(file)}`,
      file,
      text,
    }));
  });
}
