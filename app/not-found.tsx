import type { Metadata } from 'next';
import Link from 'next/link';

export const metadata: Metadata = { title: 'No such page' };

/** Every page carries this one with it, so it is short. */
const WAYS = [
  { href: '/lessons', words: 'Lessons', what: 'what to look at, how to measure it, and why it matters' },
  { href: '/practise', words: 'Practise', what: 'walls to read, easy ones first' },
  { href: '/walls', words: 'Have a wall code?', what: 'open the wall it belongs to' },
  { href: '/limits', words: 'Limits', what: 'what the rules say, with their sources' },
  { href: '/glossary', words: 'Words of the trade', what: 'each with a picture' },
  { href: '/search', words: 'Search', what: 'for any of these' },
  { href: '/safety', words: 'Safety', what: 'what to do if masonry looks loose' },
] as const;

export default function NotFound() {
  return (
    <div className="column">
      <h1>There is no page here</h1>
      <p>The address may be mistyped, or the page may have moved. You may have been looking for:</p>
      <ul>
        {WAYS.map(({ href, words, what }) => (
          <li key={href}>
            <Link href={href} prefetch={false}>
              {words}
            </Link>
            : {what}
          </li>
        ))}
      </ul>
      <p>
        Or go to{' '}
        <Link href="/" prefetch={false}>
          the start
        </Link>
        .
      </p>
    </div>
  );
}
