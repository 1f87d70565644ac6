import type { Metadata } from 'next';
import { requirePage } from '../../access/require-page';
import { WorkPage } from '../work-page';

export const metadata: Metadata = { title: 'Set work' };

export default async function SetWorkPage({
  params,
}: {
  readonly params: Promise<{ readonly work: string }>;
}) {
  return <WorkPage {...(await requirePage('/my-work/[work]', params))} place={null} />;
}
