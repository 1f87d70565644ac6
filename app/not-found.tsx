import type { Metadata } from 'next';
import Link from 'next/link';

export const metadata: Metadata = { title: 'No such page' };

export default function NotFound() {
  return (
    <div className="column">
      <h1>There is no page here</h1>
      <p>The address may be mistyped, or the page has moved.</p>
      <p>
        Go to <Link href="/">the start</Link> or <Link href="/walls">the walls</Link>.
      </p>
    </div>
  );
}
