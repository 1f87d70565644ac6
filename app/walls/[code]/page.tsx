import type { Metadata } from 'next';
import Link from 'next/link';
import { permanentRedirect } from 'next/navigation';
import { CodeBox } from '../../../components/forms/code-box';
import { ShareWall } from '../../../components/forms/share-wall';
import { type Brief, BriefError } from '../../../lib/generate/brief';
import { TOPIC_TITLES } from '../../../lib/generate/topics';
import { codeOf, parseCode } from '../../../lib/generate/wall-code';
import { ruleSetTitle } from '../../../lib/limits/limits';
import { codeProblem } from '../brief-problems';
import { DIFFICULTY_WORDS, KIND_TITLES } from '../brief-words';
import styles from './page.module.css';
import { Practice } from './practice';

interface Props {
  readonly params: Promise<{ readonly code: string }>;
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { code } = await params;
  const read = readCode(code);
  if (typeof read === 'string') return { title: 'Wrong wall code', robots: { index: false } };
  return {
    title: `Wall ${codeOf(read)}`,
    description: `${KIND_TITLES[read.kind]}: ${TOPIC_TITLES[read.topic]}`,
  };
}

export default async function WallPage({ params }: Props) {
  const { code } = await params;
  const read = readCode(code);
  if (typeof read === 'string') return <WrongCode code={plain(code)} problem={read} />;
  const exact = codeOf(read);
  if (code !== exact) permanentRedirect(`/walls/${exact}`);
  const title = KIND_TITLES[read.kind];
  return (
    <>
      <header className={styles.head}>
        <h1>{title}</h1>
        <p>
          Wall <strong className={styles.code}>{exact}</strong> · {TOPIC_TITLES[read.topic]} ·{' '}
          {DIFFICULTY_WORDS[read.difficulty]?.toLowerCase()}
        </p>
        <p>
          Judged by{' '}
          <Link href={`/limits/${read.rules}`} prefetch={false}>
            {ruleSetTitle(read.rules)}
          </Link>
        </p>
        <noscript>
          <p>
            Marking happens in your browser and needs JavaScript. Without it you can look at the wall only.
          </p>
        </noscript>
      </header>
      <Practice key={exact} code={exact} label={`${title}, wall ${exact}`} />
      {/* After the practice: it is not on the way to handing in. */}
      <ShareWall />
    </>
  );
}

/** The brief of a code, or what is wrong with the code in one sentence. */
function readCode(code: string): Brief | string {
  try {
    return parseCode(plain(code));
  } catch (error) {
    if (!(error instanceof BriefError)) throw error;
    return codeProblem(error);
  }
}

/** A code as typed: the address may carry it with escapes, also broken ones. */
function plain(code: string): string {
  try {
    return decodeURIComponent(code);
  } catch {
    return code;
  }
}

function WrongCode({ code, problem }: { readonly code: string; readonly problem: string }) {
  return (
    <div className="column">
      <h1>That wall code does not open a wall</h1>
      <p>Nothing is lost: a wall is laid afresh from its code each time. Put the code right and try again.</p>
      <CodeBox typed={code} problem={problem} />
      <p>
        A code has ten letters and digits, like 3K7-Q2WF-9TB. It never has 0, 1, I, L or O in it. Capitals,
        spaces and hyphens do not matter.
      </p>
      <p>
        <a href="/walls">Lay a new wall instead</a>
      </p>
    </div>
  );
}
