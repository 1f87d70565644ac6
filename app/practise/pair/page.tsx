import type { Metadata } from 'next';
import type { Asked } from '../../walls/asked-brief';
import { AskWall } from '../ask-wall';

export const metadata: Metadata = {
  title: 'Pair',
  description: 'The same wall, sound and spoiled, side by side: what is different?',
};

export default async function PairStartPage({ searchParams }: { readonly searchParams: Promise<Asked> }) {
  return (
    <AskWall
      asked={await searchParams}
      way="/practise/pair"
      title="Pair: what is different?"
      what="You get the same wall twice, side by side. One is sound and the other has been spoiled. Say which one, where, and what is wrong. Then both are measured."
      send="Lay the pair"
    />
  );
}
