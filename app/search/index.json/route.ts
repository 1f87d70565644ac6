import MiniSearch from 'minisearch';
import { readLessons } from '../../lessons/read-lessons';
import { searchEntries } from '../entries';
import { SEARCH_OPTIONS } from '../search-options';

export const dynamic = 'force-static';

/** The index of the search, made once while the site is built. */
export async function GET() {
  const index = new MiniSearch(SEARCH_OPTIONS);
  index.addAll(searchEntries(await readLessons()));
  return new Response(JSON.stringify(index), { headers: { 'content-type': 'application/json' } });
}
