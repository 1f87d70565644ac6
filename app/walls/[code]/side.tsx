'use client';

import { GO_ON, useToday } from '../../../components/today/use-today';
import { MarkingPanel } from '../../../components/wall-page/marking-panel';
import { COULD_FALL_CAUTIONS, DRAWING_CAUTIONS } from '../../../lib/inspect/make-safe';
import { placeFile } from '../../../lib/wall-page/place-file';
import { LoadingNotice } from '../loading-notice';
import type { SetWork } from './set-work';
import type { SiteAnswers } from './site-answers';
import type { useWallRoom } from './use-wall-room';

/** Beside the wall: the marks and the card, then the review, then the result. */
export function Side(props: {
  readonly wallRoom: ReturnType<typeof useWallRoom>;
  readonly setWork: SetWork | null;
}) {
  const { wallRoom, setWork } = props;
  const { laid, open, work, rows, system } = wallRoom;
  const isToday = useToday() !== null;
  if (work.phase === 'handed in') {
    if (wallRoom.problem !== null) {
      return (
        <p role="alert">
          {wallRoom.problem}{' '}
          <button
            type="button"
            className="button button-plain"
            onClick={setWork ? wallRoom.handIn : wallRoom.startAgain}
          >
            {setWork ? 'Hand in again' : 'Read this wall afresh'}
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
    const { resultView } = wallRoom;
    if (rows === null || resultView.loaded === null) {
      return <LoadingNotice of={[resultView, ...(setWork ? [] : [wallRoom.grading])]} />;
    }
    const ResultView = resultView.loaded;
    const next = isToday ? GO_ON : { href: laid.nextHref, words: 'Next wall on this topic' };
    const places = setWork ? (setWork.places ?? null) : `/walls/${laid.code}/places`;
    return (
      <ResultView
        rows={rows}
        notebook={work.readings}
        system={system}
        shown={wallRoom.shown}
        picture={places === null ? null : (finding, side) => `${places}/${placeFile(finding, side)}`}
        again={setWork ? null : { next, onStartAgain: wallRoom.startAgain }}
        drawingCautions={DRAWING_CAUTIONS}
        couldFallCautions={COULD_FALL_CAUTIONS}
        onShow={wallRoom.show}
      />
    );
  }
  if (work.phase === 'review') {
    const { tools } = wallRoom;
    if (tools.loaded === null) return <LoadingNotice of={[tools]} />;
    const { Review, reviewQuestions } = tools.loaded;
    return (
      <Review
        marks={wallRoom.named}
        saysSound={work.saysSound}
        looks={reviewQuestions(open.wall)}
        cautions={DRAWING_CAUTIONS}
        isOneOfSeveral={setWork !== null}
        onChange={wallRoom.change}
        onRemove={wallRoom.remove}
        onLook={wallRoom.look}
        onBack={() => wallRoom.look('front')}
        onSaySound={wallRoom.saySound}
        onHandIn={wallRoom.handIn}
      />
    );
  }
  return (
    <MarkingPanel
      marks={wallRoom.named}
      canUndo={work.past.length > 0}
      cautions={DRAWING_CAUTIONS}
      onChange={wallRoom.change}
      onRemove={wallRoom.remove}
      onUndo={wallRoom.undo}
      onSaySound={wallRoom.saySound}
      onReview={wallRoom.review}
      notes={<Notes wallRoom={wallRoom} />}
    >
      <Card wallRoom={wallRoom} site={setWork?.site} />
    </MarkingPanel>
  );
}

/** The card of the part picked, once what it needs is here. */
function Card({
  wallRoom,
  site,
}: {
  readonly wallRoom: ReturnType<typeof useWallRoom>;
  readonly site: SiteAnswers | undefined;
}) {
  const { picked, tools } = wallRoom;
  if (picked === null) return null;
  if (tools.loaded === null) return <LoadingNotice of={[tools]} />;
  const { PickedCard } = tools.loaded;
  return (
    <PickedCard
      open={wallRoom.open}
      site={site}
      work={wallRoom.work}
      part={picked}
      aim={wallRoom.aim}
      changing={wallRoom.changing}
      system={wallRoom.system}
      rules={wallRoom.laid.rulesTitle}
      lifting={wallRoom.lifting}
      viewKey={wallRoom.viewKey}
      measuring={wallRoom.measuring}
      attached={wallRoom.attached}
      onPick={wallRoom.pick}
      onClose={wallRoom.close}
      onLift={wallRoom.liftHere}
      onMeasure={wallRoom.measure}
      onNote={wallRoom.note}
      onFill={wallRoom.fillIn}
      onMark={wallRoom.mark}
    />
  );
}

/** The notebook, beside the wall whether a part is picked or not. */
function Notes({ wallRoom }: { readonly wallRoom: ReturnType<typeof useWallRoom> }) {
  const { work, picked, open, system, tools } = wallRoom;
  if (work.readings.length === 0 || tools.loaded === null) return null;
  const { Notebook } = tools.loaded;
  return (
    <Notebook
      notebook={work.readings}
      nameOf={open.nameOf}
      onForget={wallRoom.forget}
      onAttach={picked === null ? undefined : wallRoom.attach}
      system={system}
    />
  );
}
