import type { Metadata } from 'next';
import Link from 'next/link';
import { RecordRoom } from './record-room';

export const metadata: Metadata = {
  title: 'Your practice record',
  description: 'What this device keeps of your practice: take it away, bring it back, delete it.',
};

export default function RecordPage() {
  return (
    <div className="column">
      <h1>Your practice record</h1>
      <p>
        This device keeps what you practised: which walls, what you marked, what you found and what you
        missed. It stays in this browser and is not sent anywhere. Walls of set work are in it once you have
        looked at their result here. Whoever else uses this browser can see it: delete it if the device is
        shared.
      </p>
      <noscript>
        <p>The record is read by your browser, which needs JavaScript.</p>
      </noscript>
      <RecordRoom />
      <p>
        <Link href="/practise" prefetch={false}>
          Ways to practise
        </Link>
      </p>
    </div>
  );
}
