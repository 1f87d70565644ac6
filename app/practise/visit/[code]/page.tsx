import type { Metadata } from 'next';
import { permanentRedirect } from 'next/navigation';
import { Caution } from '../../../../components/ui/caution';
import { seedAfter } from '../../../../lib/drills/faulty-brief';
import { codeOf } from '../../../../lib/generate/wall-code';
import { DRAWING_CAUTIONS } from '../../../../lib/inspect/make-safe';
import { calledWall } from '../../../../lib/visit/visit-wall';
import { KIND_TITLES } from '../../../../lib/wall-page/brief-words';
import { plainCode, readCode } from '../../../walls/read-code';
import { WrongCode } from '../../../walls/wrong-code';
import { VisitRoom } from './visit-room';

interface Props {
  readonly params: Promise<{ readonly code: string }>;
}

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const read = readCode((await params).code);
  if (typeof read === 'string') return { title: 'Wrong wall code' };
  return {
    title: `Visit ${codeOf(read)}`,
    description: 'A wall that is failing: make safe, read it, say what comes next and why.',
  };
}

/** A code whose wall was laid with faults leads on to the next that was laid sound: what shows has come since. */
export default async function VisitPage({ params }: Props) {
  const { code } = await params;
  const read = readCode(code);
  if (typeof read === 'string') return <WrongCode code={plainCode(code)} problem={read} />;
  const called = calledWall(read);
  const exact = codeOf(called.brief);
  if (code !== exact) permanentRedirect(`/practise/visit/${exact}`);
  return (
    <>
      <h1>Visit: a wall that is failing</h1>
      <p className="column">
        Somebody has called you to this wall. It was laid sound, years ago. Make the place safe, read the
        wall, and say what is wrong, what may come down next, why, and what is to be done today.
      </p>
      <p>
        Visit <strong>{exact}</strong> · {KIND_TITLES[called.brief.kind]}
      </p>
      <noscript>
        <p>What the years have done to the wall is worked out in your browser, which needs JavaScript.</p>
      </noscript>
      <VisitRoom
        key={exact}
        called={called}
        code={exact}
        next={`/practise/visit/${codeOf(seedAfter(called.brief))}`}
      />
      <div className="column">
        <Caution lines={DRAWING_CAUTIONS} />
      </div>
    </>
  );
}
