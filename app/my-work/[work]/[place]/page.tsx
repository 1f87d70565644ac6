import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { requirePage } from '../../../access/require-page';
import { WorkPage } from '../../work-page';

export const metadata: Metadata = { title: 'A wall of set work' };

/** One wall of a set work. The page is that of the work, opened at the wall: it goes on without a network. */
export default async function SetWallPage({
  params,
}: {
  readonly params: Promise<{ readonly work: string; readonly place: string }>;
}) {
  const asked = await requirePage('/my-work/[work]/[place]', params);
  const { place = '' } = asked.params;
  if (!/^[1-9]\d?$/.test(place)) notFound();
  return <WorkPage {...asked} place={Number(place)} />;
}
