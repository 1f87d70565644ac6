import type { Metadata } from 'next';
import Link from 'next/link';
import { permanentRedirect } from 'next/navigation';
import styles from '../../../../components/drills/drills.module.css';
import { TodayLine } from '../../../../components/today/today-line';
import { Caution } from '../../../../components/ui/caution';
import { faultyWall } from '../../../../lib/drills/faulty-wall';
import { guidedRows, guidedWall } from '../../../../lib/drills/guided/guided-rows';
import { GUIDED_STEPS, type GuidedStep, halfOf, parseStep } from '../../../../lib/drills/guided/guided-steps';
import { TOPIC_TITLES } from '../../../../lib/generate/topics';
import { codeOf } from '../../../../lib/generate/wall-code';
import { DRAWING_CAUTIONS } from '../../../../lib/inspect/make-safe';
import { ruleSetTitle } from '../../../../lib/limits/limits';
import { KIND_TITLES } from '../../../../lib/wall-page/brief-words';
import type { Asked } from '../../../walls/asked-brief';
import { plainCode, readCode } from '../../../walls/read-code';
import { WrongCode } from '../../../walls/wrong-code';
import { GuidedPractice } from './guided-practice';

interface Props {
  readonly params: Promise<{ readonly code: string }>;
  readonly searchParams: Promise<Asked>;
}

const STEP_WORDS: Readonly<Record<GuidedStep, string>> = {
  1: 'All shown',
  2: 'Half shown',
  3: 'On your own',
};

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const read = readCode((await params).code);
  if (typeof read === 'string') return { title: 'Wrong wall code' };
  return {
    title: `Guided wall ${codeOf(read)}`,
    description: 'A wall whose faults are shown and told, then half left to you.',
  };
}

/** Three walls with faults of one family. A code whose wall measures sound leads on to the next that does not. */
export default async function GuidedPage({ params, searchParams }: Props) {
  const { code } = await params;
  const read = readCode(code);
  if (typeof read === 'string') return <WrongCode code={plainCode(code)} problem={read} />;
  const first = faultyWall(read);
  const exact = codeOf(first.brief);
  if (code !== exact) permanentRedirect(`/practise/guided/${exact}`);
  const step = parseStep((await searchParams).step);
  const laid = guidedWall(first, step);
  const { brief } = laid;
  const wallCode = codeOf(brief);
  const at = (to: GuidedStep) => `/practise/guided/${exact}?step=${to}`;
  return (
    <>
      <h1>Guided wall: {TOPIC_TITLES[brief.topic].toLowerCase()}</h1>
      <TodayLine />
      <nav aria-label="Steps">
        <ol className={`links ${styles.steps}`}>
          {GUIDED_STEPS.map((each) => (
            <li key={each}>
              <Link href={at(each)} prefetch={false} aria-current={each === step ? 'step' : undefined}>
                {each}. {STEP_WORDS[each]}
              </Link>
            </li>
          ))}
        </ol>
      </nav>
      <p>
        {KIND_TITLES[brief.kind]} <strong>{wallCode}</strong> · checked against{' '}
        <Link href={`/limits/${brief.rules}`} prefetch={false}>
          {ruleSetTitle(brief.rules)}
        </Link>
      </p>
      <noscript>
        <p>The other views and your answers need JavaScript. Without it you see only the front.</p>
      </noscript>
      {step === 3 ? (
        <div className="column">
          <p>
            The third wall has a fault of the same family on it, or more than one. Nothing is shown. Look,
            measure, mark, and hand in.
          </p>
          <p>
            <Link className="button" href={`/walls/${wallCode}`} prefetch={false}>
              Read the wall on your own
            </Link>
          </p>
          <p>
            <Link href="/practise/guided" prefetch={false}>
              Another guided wall
            </Link>
          </p>
        </div>
      ) : (
        <GuidedPractice
          key={`${wallCode} ${step}`}
          of={{ code: wallCode, topic: brief.topic, difficulty: brief.difficulty, rules: brief.rules }}
          wall={laid.wall}
          rows={guidedRows(laid)}
          step={step}
          half={halfOf(first.brief.seed)}
          next={
            step === 1
              ? { href: at(2), words: 'Next: a wall where you do half' }
              : { href: at(3), words: 'Next: a wall on your own' }
          }
        />
      )}
      <div className="column">
        <Caution lines={DRAWING_CAUTIONS} />
      </div>
    </>
  );
}
