import type { Metadata } from 'next';
import Link from 'next/link';
import { StandRoom } from './stand-room';

export const metadata: Metadata = {
  title: 'Where you stand',
  description: 'What your practice record says: what you read well, what you miss, and what is due.',
};

export default function WhereYouStandPage() {
  return (
    <>
      <h1>Where you stand</h1>
      <noscript>
        <p>The record is on your device and is read by your browser, which needs JavaScript.</p>
      </noscript>
      <StandRoom />
      <p className="links">
        <Link href="/practise" prefetch={false}>
          Ways to practise
        </Link>
        <Link href="/practise/record" prefetch={false}>
          Your practice record
        </Link>
      </p>
    </>
  );
}
