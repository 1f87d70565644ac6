import type { Metadata } from 'next';
import Link from 'next/link';
import { redirect } from 'next/navigation';
import { CodeBox } from '../../components/forms/code-box';
import { WallForm } from '../../components/forms/wall-form';
import { Caution } from '../../components/ui/caution';
import { MAX_SEED } from '../../lib/generate/brief';
import { codeOf } from '../../lib/generate/wall-code';
import { LIMIT_CAUTIONS } from '../../lib/inspect/make-safe';
import { type Asked, askedBrief, BRIEF_FIELDS, textOf } from './asked-brief';
import { readCode } from './read-code';
import styles from './walls.module.css';

export const metadata: Metadata = {
  title: 'Walls',
  description:
    'Set up a practice wall: choose a topic, a kind of wall, how hard it should be, and the rules to check it against.',
};

export default async function WallsPage({ searchParams }: { readonly searchParams: Promise<Asked> }) {
  const asked = await searchParams;
  const code = textOf(asked.code);
  const codeIsWrong = code === undefined ? null : openCode(code);
  const { typed, problems, brief } = askedBrief(asked);
  if (brief) redirect(`/walls/${codeOf(brief)}`);
  return (
    <div className={styles.page}>
      <h1>Set up a practice wall</h1>
      <p>
        Each wall is new. It may have faults, or it may be sound. Look it over,{' '}
        <Link href="/instruments">measure</Link> it, and mark anything that is out of tolerance. The code of a
        wall opens it again, for anyone.
      </p>
      <div className={styles.ways}>
        <section aria-labelledby="new-wall">
          <h2 id="new-wall">A new wall</h2>
          <WallForm
            action="/walls"
            send="Show the wall"
            fields={BRIEF_FIELDS}
            typed={typed}
            problems={problems}
            mostSeed={MAX_SEED}
          />
        </section>
        <section aria-labelledby="known-wall">
          <h2 id="known-wall">Open a wall by its code</h2>
          <CodeBox {...(code === undefined ? {} : { typed: code })} problem={codeIsWrong} />
        </section>
      </div>
      <Caution lines={LIMIT_CAUTIONS} />
    </div>
  );
}

/** Leads on to the wall of a code, or gives what is wrong with it. */
function openCode(code: string): string {
  if (code.trim() === '') return 'The box is empty. Type the ten letters and digits of a code.';
  const read = readCode(code);
  return typeof read === 'string' ? read : redirect(`/walls/${codeOf(read)}`);
}
