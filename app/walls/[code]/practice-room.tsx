'use client';

import { LengthChoice } from '../../../components/forms/length-choice';
import { DrawContext } from '../../../components/wall/draw-context';
import { usePrinting } from '../../../components/wall/use-printing';
import { WallDrawing } from '../../../components/wall/wall-drawing';
import { FirstWallHints, knowWalls } from '../../../components/wall-page/first-wall-hints';
import { LiftedBack, LiftedRecord } from '../../../components/wall-page/lifted-back';
import { TicketLines } from '../../../components/wall-page/ticket-lines';
import { WallStage } from '../../../components/wall-page/wall-stage';
import { hiddenFromFront } from '../../../lib/wall-page/hidden-from-front';
import type { LaidPractice } from '../../../lib/wall-page/laid-practice';
import { viewChoices, viewOf } from '../../../lib/wall-page/view-choices';
import { liftingPlan, whatShows } from '../../../lib/wall-page/what-shows';
import { LoadingNotice } from '../loading-notice';
import { useLaterViews } from '../use-later-views';
import styles from './practice.module.css';
import type { SetWork } from './set-work';
import { Side } from './side';
import { usePractice } from './use-practice';

/** One wall to read and mark. It is graded in the browser, unless it is set work. */
export function PracticeRoom(props: {
  readonly laid: LaidPractice;
  readonly label: string;
  readonly setWork?: SetWork;
}) {
  const { laid, label, setWork = null } = props;
  const practice = usePractice(laid, setWork);
  const { open, isLooking, system, lifting, announcement } = practice;
  const printing = usePrinting();
  const viewKey = printing ? 'front' : practice.viewKey;
  const behind = viewKey === 'behind';
  const views = useLaterViews(viewOf(behind ? 'front' : viewKey, lifting.unit, open.wall));
  const backs = useLaterViews(
    viewOf(behind && practice.seesBehind ? 'behind' : 'front', lifting.unit, open.wall),
  );
  const loading = views.loading ?? backs.loading;
  // On paper before hand-in: the wall as everyone gets it, without this reader's marks.
  const bare = printing && practice.work.phase !== 'handed in';
  const picked = bare ? null : practice.picked;
  return (
    <div
      className={styles.room}
      data-ready={practice.ready}
      data-phase={practice.work.phase}
      ref={practice.room}
    >
      <div className={styles.wall}>
        <DrawContext value={views.draw}>
          <WallStage
            surveyed={open}
            label={label}
            views={viewChoices(open.wall)}
            viewKey={viewKey}
            view={views.view}
            hint={
              (isLooking && viewKey === 'front' && hiddenFromFront(laid.topic, laid.difficulty)) ||
              whatShows(viewKey, open.wall)
            }
            bar={loading && <LoadingNotice of={[loading]} />}
            beside={
              behind && (
                <LiftedBack
                  name={lifting.name}
                  isOpen={practice.seesBehind && backs.loading === null}
                  lifting={isLooking ? lifting : null}
                  plan={liftingPlan(open.wall)}
                  onRead={isLooking ? () => practice.pick(lifting.unit) : undefined}
                >
                  <DrawContext value={backs.draw}>
                    <WallDrawing
                      surveyed={open}
                      view={backs.view}
                      marks={[]}
                      selected={null}
                      layer="units"
                      system={system}
                      label={`The back of ${lifting.name}`}
                    />
                  </DrawContext>
                </LiftedBack>
              )
            }
            below={behind && <LiftedRecord record={lifting.record} onLook={practice.lift} />}
            lifted={bare ? [] : practice.work.opened}
            unitsAlone={behind && isLooking}
            note={
              practice.hint === null
                ? undefined
                : (isNear) => (
                    <FirstWallHints
                      step={isNear && practice.hint === 1 ? 2 : (practice.hint ?? 1)}
                      onSkip={knowWalls}
                    />
                  )
            }
            onPaper={printing}
            marks={bare ? [] : practice.drawn}
            dimensions={practice.dimensions}
            selected={behind && practice.seesBehind ? lifting.unit : picked}
            system={system}
            lengths={<LengthChoice system={system} />}
            onView={practice.view}
            onPick={isLooking ? (behind ? practice.lift : practice.pick) : undefined}
          />
        </DrawContext>
        {printing && <TicketLines batches={open.wall.batches} />}
      </div>
      <div className={styles.side}>
        <Side practice={practice} setWork={setWork} />
      </div>
      <p className="visually-hidden" role="status">
        {announcement}
      </p>
    </div>
  );
}
