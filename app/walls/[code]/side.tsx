'use client';

import { MarkingPanel } from '../../../components/wall-page/marking-panel';
import { COULD_FALL_CAUTIONS, DRAWING_CAUTIONS } from '../../../lib/inspect/make-safe';
import { placeFile } from '../../../lib/wall-page/place-file';
import { LoadingNotice } from '../loading-notice';
import type { SetWork } from './set-work';
import type { usePractice } from './use-practice';

/** Beside the wall: the marks and the card, then the review, then the result. */
export function Side(props: {
  readonly practice: ReturnType<typeof usePractice>;
  readonly setWork: SetWork | null;
}) {
  const { practice, setWork } = props;
  const { laid, open, work, rows, system } = practice;
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
    const { resultView } = practice;
    if (rows === null || resultView.loaded === null) {
      return <LoadingNotice of={[resultView, ...(setWork ? [] : [practice.grading])]} />;
    }
    const ResultView = resultView.loaded;
    return (
      <ResultView
        rows={rows}
        notebook={work.readings}
        system={system}
        shown={practice.shown}
        picture={setWork ? null : (finding, side) => `/walls/${laid.code}/places/${placeFile(finding, side)}`}
        again={setWork ? null : { nextHref: laid.nextHref, onStartAgain: practice.startAgain }}
        drawingCautions={DRAWING_CAUTIONS}
        couldFallCautions={COULD_FALL_CAUTIONS}
        onShow={practice.show}
      />
    );
  }
  if (work.phase === 'review') {
    const { tools } = practice;
    if (tools.loaded === null) return <LoadingNotice of={[tools]} />;
    const { Review, reviewQuestions } = tools.loaded;
    return (
      <Review
        marks={practice.named}
        saysSound={work.saysSound}
        looks={reviewQuestions(open.wall)}
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
    <MarkingPanel
      marks={practice.named}
      canUndo={work.past.length > 0}
      cautions={DRAWING_CAUTIONS}
      onChange={practice.change}
      onRemove={practice.remove}
      onUndo={practice.undo}
      onSaySound={practice.saySound}
      onReview={practice.review}
      notes={<Notes practice={practice} />}
    >
      <Card practice={practice} />
    </MarkingPanel>
  );
}

/** The card of the part picked, once what it needs is here. */
function Card({ practice }: { readonly practice: ReturnType<typeof usePractice> }) {
  const { picked, tools } = practice;
  if (picked === null) return null;
  if (tools.loaded === null) return <LoadingNotice of={[tools]} />;
  const { PickedCard } = tools.loaded;
  return (
    <PickedCard
      open={practice.open}
      work={practice.work}
      part={picked}
      aim={practice.aim}
      changing={practice.changing}
      system={practice.system}
      rules={practice.laid.rulesTitle}
      lifting={practice.lifting}
      viewKey={practice.viewKey}
      measuring={practice.measuring}
      attached={practice.attached}
      onPick={practice.pick}
      onClose={practice.close}
      onLift={practice.liftHere}
      onMeasure={practice.measure}
      onNote={practice.note}
      onFill={practice.fillIn}
      onMark={practice.mark}
    />
  );
}

/** The notebook, beside the wall whether a part is picked or not. */
function Notes({ practice }: { readonly practice: ReturnType<typeof usePractice> }) {
  const { work, picked, open, system, tools } = practice;
  if (work.readings.length === 0 || tools.loaded === null) return null;
  const { Notebook } = tools.loaded;
  return (
    <Notebook
      notebook={work.readings}
      nameOf={open.nameOf}
      onForget={practice.forget}
      onAttach={picked === null ? undefined : practice.attach}
      system={system}
    />
  );
}
