import type { Metadata } from 'next';
import { SearchRoom } from './search-room';

export const dynamic = 'error';

export const metadata: Metadata = {
  title: 'Search',
  description: 'Look up a lesson, a word of the trade, a fault or a limit.',
  robots: { index: false },
};

export default function SearchPage() {
  return (
    <div className="column">
      <h1>Search</h1>
      <p>Lessons, words of the trade, faults and limits, all in one place.</p>
      <noscript>
        <p>
          The search needs a script. Without one, look in the lessons, the words of the trade and the limits.
        </p>
      </noscript>
      <SearchRoom />
    </div>
  );
}
