import type { Metadata } from 'next';
import Link from 'next/link';
import { DRAWINGS } from '../../components/trade/drawings';
import { Caution } from '../../components/ui/caution';
import { LIMIT_CAUTIONS } from '../../lib/inspect/make-safe';
import styles from './drawings.module.css';

export const dynamic = 'error';

export const metadata: Metadata = {
  title: 'Interactive drawings',
  description: 'Change a length, a load or a mix and watch what the arithmetic of the trade answers.',
};

export default function DrawingsPage() {
  return (
    <div className="column">
      <h1>Interactive drawings</h1>
      <p>Change a number. The drawing and its answer follow. Each one says how it is worked out.</p>
      <ul className={styles.list}>
        {DRAWINGS.map(({ name, title, summary }) => (
          <li key={name}>
            <Link href={`/drawings/${name}`}>{title}</Link>
            <br />
            {summary}
          </li>
        ))}
      </ul>
      <Caution lines={LIMIT_CAUTIONS} />
    </div>
  );
}
