import type { Metadata } from 'next';
import type { Asked } from '../../walls/asked-brief';
import { TodayRoom } from './today-room';

export const metadata: Metadata = {
  title: 'Today’s practice',
  description: 'Ten minutes of practice, chosen from what you miss and what you have not seen for a while.',
};

export default async function TodayPage({ searchParams }: { readonly searchParams: Promise<Asked> }) {
  const goesOn = (await searchParams).go === 'on';
  return (
    <div className="column">
      <h1>Today’s practice</h1>
      <noscript>
        <p>What comes next is worked out by your browser, which needs JavaScript.</p>
      </noscript>
      <TodayRoom goesOn={goesOn} />
    </div>
  );
}
