import { readdirSync, readFileSync } from 'node:fs';
import MiniSearch from 'minisearch';
import { beforeAll, expect, test } from 'vitest';
import { parseLesson } from '../../app/lessons/parse-lesson';
import { searchEntries } from '../../app/search/entries';
import { KINDS, SEARCH_OPTIONS } from '../../app/search/search-options';

const ALL = readdirSync('content/lessons').map((name) => name.replace(/\.mdx$/, ''));
const SLUGS = ['the-trowel', 'ties'];
const index = new MiniSearch(SEARCH_OPTIONS);
let entries: ReturnType<typeof searchEntries> = [];
beforeAll(async () => {
  const lessons = SLUGS.map((slug) =>
    parseLesson(slug, readFileSync(`content/lessons/${slug}.mdx`, 'utf8'), ALL),
  );
  entries = searchEntries(await Promise.all(lessons));
  index.addAll(entries);
});

const found = (words: string) => index.search(words).map(({ href }) => String(href));

test('lessons, words, faults and limits can all be looked up', () => {
  const kinds = entries.map(({ kind }) => kind);
  expect([...new Set(kinds)].sort()).toEqual([...KINDS].sort());
});

test.each([
  ['the trowel', '/lessons/the-trowel'],
  ['weep', '/glossary/weep'],
  // What Britain calls a head joint, and what a mason calls the parts of an arch.
  ['perpend', '/glossary/head-joint'],
  ['skewback', '/glossary/arch'],
  // The beginning of a word, and a letter left out.
  ['efflor', '/glossary/bloom'],
  ['flasing', '/glossary/flashing'],
  ['open head joint', '/lessons/full-joints#fault-open-head'],
  ['minor arch', '/limits/good-practice#minor-arch'],
])('%s: %s is among the first three', (words, href) => {
  expect(found(words).slice(0, 3)).toContain(href);
});

test('every word has to be there: the more words, the fewer answers', () => {
  expect(found('tie').length).toBeGreaterThan(found('tie spacing').length);
  expect(found('zzzz')).toEqual([]);
});
