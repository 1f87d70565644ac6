'use client';

import { Bench } from '../../../components/practice/bench';
import { Review } from '../../../components/practice/review';
import { COULD_FALL_CAUTIONS, DRAWING_CAUTIONS } from '../../../lib/inspect/make-safe';
import { nextCode } from '../open-wall';
import { lastLooks } from '../view-choices';
import { Awaited } from './awaited';
import type { SetWork } from './set-work';
import type { usePractice } from './use-practice';

/** Beside the wall: the bench, then the last look, then the result. */
export function Side(props: {
  readonly practice: ReturnType<typeof usePractice>;
  readonly setWork: SetWork | null;
}) {
  const { practice, setWork } = props;
  const { brief, open, work, rows, system } = practice;
  if (work.phase === 'handed in') {
    if (practice.problem !== null) {
      return (
        <p role="alert">
          {practice.problem}{' '}
          <button
            type="button"
            className="button button-plain"
            onClick={setWork ? practice.handIn : practice.startAgain}
          >
            {setWork ? 'Hand in again' : 'Lay this wall again'}
          </button>
        </p>
      );
    }
    if (setWork && rows === null) {
      return (
        <section aria-labelledby="result-heading">
          <h2 id="result-heading" tabIndex={-1}>
            Handed in
          </h2>
          <p>Your work is handed in. The result shows here once it is given out.</p>
        </section>
      );
    }
    const { resultPart } = practice;
    if (rows === null || resultPart.part === null) {
      return <Awaited parts={[resultPart, ...(setWork ? [] : [practice.marker])]} />;
    }
    const { ResultView } = resultPart.part;
    return (
      <ResultView
        rows={rows}
        system={system}
        shown={practice.shown}
        again={setWork ? null : { nextHref: `/walls/${nextCode(brief)}`, onStartAgain: practice.startAgain }}
        drawingCautions={DRAWING_CAUTIONS}
        couldFallCautions={COULD_FALL_CAUTIONS}
        onShow={practice.show}
      />
    );
  }
  if (work.phase === 'review') {
    return (
      <Review
        marks={practice.named}
        saysSound={work.saysSound}
        looks={lastLooks(open.wall)}
        cautions={DRAWING_CAUTIONS}
        isOneOfSeveral={setWork !== null}
        onChange={practice.change}
        onRemove={practice.remove}
        onLook={practice.look}
        onBack={() => practice.look('front')}
        onSaySound={practice.saySound}
        onHandIn={practice.handIn}
      />
    );
  }
  return (
    <Bench
      marks={practice.named}
      canUndo={work.past.length > 0}
      cautions={DRAWING_CAUTIONS}
      onChange={practice.change}
      onRemove={practice.remove}
      onUndo={practice.undo}
      onSaySound={practice.saySound}
      onReview={practice.review}
    >
      <Card practice={practice} />
    </Bench>
  );
}

/** The card of the part picked, once what it needs is here. */
function Card({ practice }: { readonly practice: ReturnType<typeof usePractice> }) {
  const { picked, changing, lifting, second } = practice;
  if (picked === null) return null;
  if (second.part === null) return <Awaited parts={[second]} />;
  const { PickedCard } = second.part;
  return (
    <PickedCard
      key={`${picked} ${changing ?? 'new'}`}
      open={practice.open}
      part={picked}
      lifting={lifting}
      looksBehind={practice.viewKey === 'behind'}
      changing={changing}
      marks={practice.work.marks}
      system={practice.system}
      onPick={practice.pick}
      onLift={practice.liftHere}
      onClose={practice.close}
      onMark={practice.mark}
    />
  );
}
