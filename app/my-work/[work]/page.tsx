import type { Metadata } from 'next';
import { WorkPage } from '../work-page';

export const metadata: Metadata = { title: 'Set work' };

export default function SetWorkPage({ params }: { readonly params: Promise<{ readonly work: string }> }) {
  return <WorkPage params={params} place={null} />;
}
