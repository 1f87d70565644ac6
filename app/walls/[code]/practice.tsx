'use client';

import { LengthChoice } from '../../../components/forms/length-choice';
import { Bench } from '../../../components/practice/bench';
import { LiftedBar } from '../../../components/practice/lifted-bar';
import { MixingTickets } from '../../../components/practice/mixing-tickets';
import { Review } from '../../../components/practice/review';
import { WallStage } from '../../../components/practice/wall-stage';
import { COULD_FALL_CAUTIONS, DRAWING_CAUTIONS } from '../../../lib/inspect/make-safe';
import { nextCode } from '../open-wall';
import { lastLooks, viewChoices, viewOf } from '../view-choices';
import styles from './practice.module.css';
import { usePractice } from './use-practice';
import type { Fetched } from './use-second-part';

const LIFT_HINT =
  'The front cannot show how well these units stick. Lift some here and there: choose “Behind a unit”.';

/** The practice on one wall: laid, inspected and marked in the browser. */
export function Practice({ code, label }: { readonly code: string; readonly label: string }) {
  const practice = usePractice(code);
  const { open, isLooking, picked, system, viewKey, lifting, said } = practice;
  return (
    <div className={styles.room} data-ready={practice.ready} ref={practice.room}>
      <div className={styles.wall}>
        <WallStage
          wall={open.wall}
          label={label}
          views={viewChoices(open.wall)}
          viewKey={viewKey}
          view={viewOf(viewKey, lifting.lifted, open.wall)}
          hint={isLooking && viewKey === 'front' && open.wall.masonry === 'adhered' ? LIFT_HINT : null}
          bar={
            viewKey === 'behind' && (
              <LiftedBar
                name={open.nameOf(lifting.lifted)}
                record={lifting.record}
                onStep={practice.step}
                onLift={practice.lift}
                onRead={isLooking ? () => practice.pick(lifting.lifted) : undefined}
              />
            )
          }
          marks={practice.drawn}
          selected={picked}
          system={system}
          lengths={<LengthChoice system={system} />}
          onView={practice.view}
          onPick={isLooking ? practice.pick : undefined}
        />
        <MixingTickets
          batches={open.wall.batches}
          open={practice.ticketsOpen}
          onToggle={practice.openTickets}
          picked={picked}
          onPick={isLooking ? practice.pick : null}
        />
      </div>
      <div className={styles.bench}>
        <Side practice={practice} />
      </div>
      <p className={styles.said} role="status">
        {said}
      </p>
    </div>
  );
}

/** Beside the wall: the bench, then the last look, then the result. */
function Side({ practice }: { readonly practice: ReturnType<typeof usePractice> }) {
  const { brief, open, work, picked, changing, named, system, result, second } = practice;
  if (result?.problem) {
    return (
      <p role="alert">
        {result.problem}{' '}
        <button type="button" className="button button-plain" onClick={practice.startAgain}>
          Lay this wall again
        </button>
      </p>
    );
  }
  if (work.phase === 'handed in' && !second.part) return <Awaited second={second} />;
  if (result?.rows && second.part) {
    const { ResultView } = second.part;
    return (
      <ResultView
        rows={result.rows}
        system={system}
        shown={practice.shown}
        nextHref={`/walls/${nextCode(brief)}`}
        drawingCautions={DRAWING_CAUTIONS}
        couldFallCautions={COULD_FALL_CAUTIONS}
        onShow={practice.show}
        onStartAgain={practice.startAgain}
      />
    );
  }
  if (work.phase === 'review') {
    return (
      <Review
        marks={named}
        saysSound={work.saysSound}
        looks={lastLooks(open.wall)}
        cautions={DRAWING_CAUTIONS}
        onChange={practice.change}
        onRemove={practice.remove}
        onLook={practice.look}
        onBack={() => practice.look('front')}
        onSaySound={practice.saySound}
        onHandIn={practice.handIn}
      />
    );
  }
  const PickedCard = second.part?.PickedCard;
  return (
    <Bench
      marks={named}
      canUndo={work.past.length > 0}
      cautions={DRAWING_CAUTIONS}
      onChange={practice.change}
      onRemove={practice.remove}
      onUndo={practice.undo}
      onSaySound={practice.saySound}
      onReview={practice.review}
    >
      {picked !== null && !PickedCard && <Awaited second={second} />}
      {picked !== null && PickedCard && (
        <PickedCard
          key={`${picked} ${changing ?? 'new'}`}
          open={open}
          part={picked}
          lifted={practice.viewKey === 'behind' && practice.lifting.lifted === picked}
          changing={changing}
          marks={work.marks}
          system={system}
          onPick={practice.pick}
          onLift={practice.liftHere}
          onClose={practice.close}
          onMark={practice.mark}
        />
      )}
    </Bench>
  );
}

/** In place of what is still being fetched. */
function Awaited({ second }: { readonly second: Fetched }) {
  return (
    <p role="status">
      {second.failed ? 'Part of this page did not arrive. Your marks are kept. ' : 'One moment …'}
      {second.failed && (
        <button type="button" className="button button-plain" onClick={second.fetchAgain}>
          Fetch it again
        </button>
      )}
    </p>
  );
}
