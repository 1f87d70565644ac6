'use client';

import Link from 'next/link';
import { useEffect, useState } from 'react';
import styles from './search.module.css';
import type { Entry, Kind } from './search-options';

const KIND_WORDS: Readonly<Record<Kind, string>> = {
  lesson: 'Lesson',
  word: 'Word of the trade',
  fault: 'Fault',
  limit: 'Limit',
};
/** More than these are not read: another word narrows them down. */
const MOST = 20;

type Found = Pick<Entry, 'kind' | 'name' | 'says' | 'href'> & { readonly id: string };
type Find = (words: string) => readonly Found[];

/** Looks up words as they are typed. The library and its index come with the first visit to this page and with no other. */
export function SearchRoom() {
  const [words, setWords] = useState('');
  const [find, setFind] = useState<Find | 'failed' | null>(null);
  useEffect(() => {
    setWords(new URLSearchParams(window.location.search).get('q') ?? '');
    loadIndex().then(
      (loaded) => setFind(() => loaded),
      () => setFind('failed'),
    );
  }, []);
  const asked = words.trim();
  const found = typeof find === 'function' && asked !== '' ? find(asked) : [];
  const write = (typed: string) => {
    setWords(typed);
    // So that the page can be kept and shared as it is.
    window.history.replaceState(
      null,
      '',
      typed === '' ? '/search' : `/search?q=${encodeURIComponent(typed)}`,
    );
  };
  return (
    <>
      <search>
        <form action="/search" className={styles.form} onSubmit={(event) => event.preventDefault()}>
          <label htmlFor="search-words">What are you looking for?</label>
          <input
            id="search-words"
            type="search"
            name="q"
            value={words}
            autoComplete="off"
            onChange={(event) => write(event.target.value)}
          />
        </form>
      </search>
      <p role="status">{statusOf(find, asked, found.length)}</p>
      <ul className="plain">
        {found.slice(0, MOST).map(({ id, kind, name, says, href }) => (
          <li key={id} className={styles.found}>
            <Link href={href} prefetch={false}>
              {name.charAt(0).toUpperCase() + name.slice(1)}
            </Link>{' '}
            <span className={styles.kind}>{KIND_WORDS[kind]}</span>
            <p>{says}</p>
          </li>
        ))}
      </ul>
    </>
  );
}

function statusOf(find: Find | 'failed' | null, asked: string, count: number): string {
  if (find === 'failed') return 'The search did not arrive. Look at the network, then load the page again.';
  if (find === null) return 'One moment …';
  if (asked === '') return 'Try “weep”, “tie spacing” or “crack”.';
  if (count === 0) return `Nothing here answers to “${asked}”. Try another word, or fewer.`;
  if (count > MOST) return `${count} places, the best ${MOST} first. One more word narrows them down.`;
  return count === 1 ? 'One place.' : `${count} places, the best first.`;
}

async function loadIndex(): Promise<Find> {
  const [{ default: MiniSearch }, { SEARCH_OPTIONS }, answer] = await Promise.all([
    import('minisearch'),
    import('./search-options'),
    fetch('/search/index.json'),
  ]);
  if (!answer.ok) throw new Error(`the index of the search: ${answer.status}`);
  const index = await MiniSearch.loadJSONAsync<Entry>(await answer.text(), SEARCH_OPTIONS);
  return (words) => index.search(words) as unknown as readonly Found[];
}
