import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { DrawingByName } from '../../../components/trade/drawing-by-name';
import { DRAWINGS } from '../../../components/trade/drawings';
import { Caution } from '../../../components/ui/caution';
import { LIMIT_CAUTIONS } from '../../../lib/inspect/make-safe';
import styles from '../drawings.module.css';

interface Asked {
  readonly params: Promise<{ readonly name: string }>;
}

export const dynamicParams = false;

export function generateStaticParams() {
  return DRAWINGS.map(({ name }) => ({ name }));
}

export async function generateMetadata({ params }: Asked): Promise<Metadata> {
  const { title, summary } = await drawingOf(params);
  return { title, description: summary };
}

export default async function DrawingPage({ params }: Asked) {
  const { name, title, summary } = await drawingOf(params);
  return (
    <div className={styles.page}>
      <h1>{title}</h1>
      <p>{summary}</p>
      <DrawingByName name={name} />
      <Caution lines={LIMIT_CAUTIONS} />
      <p>
        <Link href="/drawings">All drawings</Link>
      </p>
    </div>
  );
}

async function drawingOf(params: Asked['params']) {
  const { name } = await params;
  return DRAWINGS.find((drawing) => drawing.name === name) ?? notFound();
}
