import type { Metadata } from 'next';
import type { Asked } from '../../walls/asked-brief';
import { AskWall } from '../ask-wall';

export const metadata: Metadata = {
  title: 'Visit',
  description: 'A wall some years old that is failing: make safe, read it, say what comes next and why.',
};

export default async function VisitStartPage({ searchParams }: { readonly searchParams: Promise<Asked> }) {
  return (
    <AskWall
      asked={await searchParams}
      way="/practise/visit"
      title="Visit: a wall that is failing"
      what="You are called to a wall some years old. First make the place safe from the street. Then read its face, say what is wrong, which unit may come down next, what the evidence allows as the cause, and what is to be done today."
      send="Take the call"
    />
  );
}
