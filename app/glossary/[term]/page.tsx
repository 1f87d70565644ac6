import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { capital } from '../../../lib/limits/format-amount';
import { LinkedData, SITE_PART } from '../../frame/linked-data';
import { sharedAs } from '../../frame/shared-as';
import { entryOf, GLOSSARY } from '../glossary';
import styles from '../glossary.module.css';
import { TermEntry } from '../term-entry';

export const dynamic = 'error';
export const dynamicParams = false;

interface Props {
  readonly params: Promise<{ readonly term: string }>;
}

export function generateStaticParams() {
  return GLOSSARY.map(({ id }) => ({ term: id }));
}

async function entryAt({ params }: Props) {
  return entryOf((await params).term) ?? notFound();
}

export async function generateMetadata(props: Props): Promise<Metadata> {
  const { american, means } = await entryAt(props);
  const title = `${capital(american)}: what it means in masonry`;
  return { title, description: means, openGraph: sharedAs('word', title, means) };
}

/** One word of the trade by itself, for whoever looks it up or follows a link. */
export default async function TermPage(props: Props) {
  const entry = await entryAt(props);
  const { american, british, means } = entry;
  return (
    <article className={`column ${styles.term}`}>
      <LinkedData
        of={{
          '@type': 'DefinedTerm',
          name: american,
          ...(british === american ? {} : { alternateName: british }),
          description: means,
          inDefinedTermSet: { '@type': 'DefinedTermSet', name: 'Words of the mason’s trade', ...SITE_PART },
        }}
      />
      <h1>{capital(american)}</h1>
      <TermEntry entry={entry} isFirst />
      <p>
        <Link
          className="link"
          href={`/search?q=${encodeURIComponent(american.replace(/,.*/, ''))}`}
          prefetch={false}
        >
          Lessons, faults and limits that speak of it
        </Link>
      </p>
      <p>
        <Link className="link" href="/glossary" prefetch={false}>
          All words of the trade
        </Link>
      </p>
    </article>
  );
}
