import type { Metadata } from 'next';
import Link from 'next/link';
import styles from '../../../components/household/household.module.css';
import { PrintButton } from '../../../components/ui/print-button';
import { NO_PAPERS, PAPER_SETS } from '../../../lib/household/papers';

export const dynamic = 'error';

export const metadata: Metadata = {
  title: 'Questions and papers',
  description:
    'What to ask a mason before you hire, while the wall goes up and when it is finished, and what a good answer sounds like.',
};

export default function PapersPage() {
  return (
    <div className="column">
      <h1>Questions and papers</h1>
      <p>
        Take these along and tick them off. Below each question stands what a good answer sounds like. A good
        mason does not mind being asked.
      </p>
      <p className={styles.screen}>
        <PrintButton />
      </p>
      {PAPER_SETS.map(({ id, title, lead, papers }) => (
        <section key={id} id={id}>
          <h2>{title}</h2>
          <p>{lead}</p>
          <ul className={styles.papers}>
            {papers.map(({ ask, good }) => (
              <li key={ask}>
                <strong>{ask}</strong>
                {good}
              </li>
            ))}
          </ul>
        </section>
      ))}
      <h2>If there are no papers</h2>
      <p>{NO_PAPERS}</p>
      <p>
        These are common practice of the trade, in plain words. Figures for your place:{' '}
        <Link href="/your-wall/limits">ten limits from the ground</Link>, or{' '}
        <Link href="/limits">all of them</Link>. Your local code decides.
      </p>
    </div>
  );
}
