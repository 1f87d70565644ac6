import type { Metadata } from 'next';
import type { Asked } from '../../walls/asked-brief';
import { AskWall } from '../ask-wall';

export const metadata: Metadata = {
  title: 'Guided wall',
  description: 'Three walls with faults of one family: all shown, half shown, on your own.',
};

export default async function GuidedStartPage({ searchParams }: { readonly searchParams: Promise<Asked> }) {
  return (
    <AskWall
      asked={await searchParams}
      way="/practise/guided"
      title="Guided wall"
      what="Three walls with faults of one family. On the first, each fault is ringed, measured and explained. On the second you do half. The third is yours."
      send="Lay the first wall"
    />
  );
}
