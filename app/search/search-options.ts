import type { Options } from 'minisearch';

/** What can be looked up. */
export const KINDS = ['lesson', 'word', 'fault', 'limit'] as const;
export type Kind = (typeof KINDS)[number];

/** One thing that can be found: its name, what else it is called, what it is, and where it stands. */
export interface Entry {
  readonly id: string;
  readonly kind: Kind;
  readonly name: string;
  readonly alsoCalled: string;
  readonly says: string;
  readonly href: string;
}

/** The site makes the index by these while it is built, and the browser reads it by the same. */
export const SEARCH_OPTIONS: Options<Entry> = {
  fields: ['name', 'alsoCalled', 'says'],
  storeFields: ['kind', 'name', 'says', 'href'],
  searchOptions: {
    boost: { name: 4, alsoCalled: 3 },
    // The beginning of a word is enough, and one wrong letter in a longer one.
    prefix: true,
    fuzzy: (term) => (term.length > 4 ? 1 : false),
    combineWith: 'AND',
  },
};
