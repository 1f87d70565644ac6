import type { Metadata } from 'next';
import type { Asked } from '../../walls/asked-brief';
import { AskWall } from '../ask-wall';

export const metadata: Metadata = {
  title: 'Guided wall',
  description:
    'Three walls with faults of one family: the first is shown to you, the second half shown, the third yours alone.',
};

export default async function GuidedStartPage({ searchParams }: { readonly searchParams: Promise<Asked> }) {
  return (
    <AskWall
      asked={await searchParams}
      way="/practise/guided"
      title="Guided wall"
      what="Three walls with faults of one family. On the first wall every fault is ringed, measured and explained. On the second you do half of the work, and the third is yours alone."
      send="Lay the first wall"
    />
  );
}
