import type { Metadata } from 'next';
import Link from 'next/link';
import { permanentRedirect } from 'next/navigation';
import { ShareWall } from '../../../components/forms/share-wall';
import { TodayLine } from '../../../components/today/today-line';
import { TOPIC_TITLES } from '../../../lib/generate/topics';
import { codeOf } from '../../../lib/generate/wall-code';
import { ruleSetTitle } from '../../../lib/limits/limits';
import { DIFFICULTY_WORDS, KIND_TITLES } from '../../../lib/wall-page/brief-words';
import { wallToRead } from '../../../lib/wall-page/wall-to-read';
import { plainCode, readCode } from '../read-code';
import { WrongCode } from '../wrong-code';
import styles from './page.module.css';
import { WallRoom } from './wall-room';

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
  if (typeof read === 'string') return <WrongCode code={plainCode(code)} problem={read} />;
  const exact = codeOf(read);
  if (code !== exact) permanentRedirect(`/walls/${exact}`);
  const title = KIND_TITLES[read.kind];
  return (
    <>
      <header className={styles.head}>
        <h1>{title}</h1>
        <p>
          Checked against{' '}
          <Link href={`/limits/${read.rules}`} prefetch={false}>
            {ruleSetTitle(read.rules)}
          </Link>
        </p>
        <p>
          <strong className={styles.code}>{exact}</strong> · {TOPIC_TITLES[read.topic]} ·{' '}
          {DIFFICULTY_WORDS[read.difficulty]?.toLowerCase()}
        </p>
        <noscript>
          <p>
            Marking happens in your browser and needs JavaScript. Without it you can look at the wall only.
          </p>
        </noscript>
        <TodayLine />
      </header>
      <WallRoom key={exact} laid={wallToRead(read)} label={`${title}, wall ${exact}`} />
      {/* After the wall: it is not on the way to handing in. */}
      <ShareWall />
    </>
  );
}
