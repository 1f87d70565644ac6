import type { Metadata } from 'next';
import type { Asked } from '../../walls/asked-brief';
import { AskWall } from '../ask-wall';

export const metadata: Metadata = {
  title: 'Pair',
  description: 'The same wall sound and spoiled, side by side: what differs?',
};

export default async function PairStartPage({ searchParams }: { readonly searchParams: Promise<Asked> }) {
  return (
    <AskWall
      asked={await searchParams}
      way="/practise/pair"
      title="Pair: what differs?"
      what="You get the same wall twice, side by side. One is sound. The other was spoiled. Say which it is, where, and what is wrong. Then both are measured."
      send="Lay the pair"
    />
  );
}
