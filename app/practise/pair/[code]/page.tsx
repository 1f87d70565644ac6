import type { Metadata } from 'next';
import Link from 'next/link';
import { permanentRedirect } from 'next/navigation';
import { TodayLine } from '../../../../components/today/today-line';
import { Caution } from '../../../../components/ui/caution';
import { seedAfter } from '../../../../lib/drills/faulty-brief';
import { measuredPair } from '../../../../lib/drills/pair/measured-pair';
import { TOPIC_TITLES } from '../../../../lib/generate/topics';
import { codeOf } from '../../../../lib/generate/wall-code';
import { DRAWING_CAUTIONS } from '../../../../lib/inspect/make-safe';
import { ruleSetTitle } from '../../../../lib/limits/limits';
import { DIFFICULTY_WORDS, KIND_TITLES } from '../../../../lib/wall-page/brief-words';
import { plainCode, readCode } from '../../../walls/read-code';
import { WrongCode } from '../../../walls/wrong-code';
import { PairPractice } from './pair-practice';

interface Props {
  readonly params: Promise<{ readonly code: string }>;
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const read = readCode((await params).code);
  if (typeof read === 'string') return { title: 'Wrong wall code' };
  return {
    title: `Pair ${codeOf(read)}`,
    description: 'The same wall twice, once sound and once spoiled: find what differs.',
  };
}

/** A code whose wall measures sound leads on to the next that does not: there must be something to find. */
export default async function PairPage({ params }: Props) {
  const { code } = await params;
  const read = readCode(code);
  if (typeof read === 'string') return <WrongCode code={plainCode(code)} problem={read} />;
  const pair = measuredPair(read);
  const { brief } = pair;
  const exact = codeOf(brief);
  if (code !== exact) permanentRedirect(`/practise/pair/${exact}`);
  return (
    <>
      <h1>Pair: what is different?</h1>
      <TodayLine />
      <p className="column">
        Both walls were laid from the same number. One is sound, the other was spoiled in one place or more.
        Choose a look: both change. Zoom one: both zoom.
      </p>
      <p>
        Pair <strong>{exact}</strong> · {KIND_TITLES[brief.kind]} · {TOPIC_TITLES[brief.topic]} ·{' '}
        {DIFFICULTY_WORDS[brief.difficulty]?.toLowerCase()} · checked against{' '}
        <Link href={`/limits/${brief.rules}`} prefetch={false}>
          {ruleSetTitle(brief.rules)}
        </Link>
      </p>
      <noscript>
        <p>The other views and your answers need JavaScript. Without it you see only the fronts.</p>
      </noscript>
      <PairPractice
        key={exact}
        code={exact}
        pair={pair}
        next={`/practise/pair/${codeOf(seedAfter(brief))}`}
      />
      <div className="column">
        <Caution lines={DRAWING_CAUTIONS} />
      </div>
    </>
  );
}
