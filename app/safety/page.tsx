import type { Metadata } from 'next';
import { ContentText } from '../content/content-text';
import { readContent } from '../content/read-content';

export const dynamic = 'error';

export async function generateMetadata(): Promise<Metadata> {
  const { meta } = await readContent('safety');
  return { title: meta.title, description: meta.summary };
}

export default async function SafetyPage() {
  const { meta, code } = await readContent('safety');
  return (
    <article className="column">
      <h1>{meta.title}</h1>
      <ContentText code={code} />
    </article>
  );
}
