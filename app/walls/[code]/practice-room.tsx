'use client';

import { LengthChoice } from '../../../components/forms/length-choice';
import { DrawContext } from '../../../components/wall/draw-context';
import { usePrinting } from '../../../components/wall/use-printing';
import { LiftedBar, LiftedRecord } from '../../../components/wall-page/lifted-bar';
import { TicketLines } from '../../../components/wall-page/ticket-lines';
import { WallStage } from '../../../components/wall-page/wall-stage';
import { hiddenFromFront } from '../../../lib/wall-page/hidden-from-front';
import type { LaidPractice } from '../../../lib/wall-page/laid-practice';
import { viewChoices, viewOf } from '../../../lib/wall-page/view-choices';
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
  const views = useLaterViews(
    viewOf(behind && !practice.seesBehind ? 'front' : viewKey, lifting.unit, open.wall),
  );
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
            wall={open.wall}
            label={label}
            views={viewChoices(open.wall)}
            viewKey={viewKey}
            view={views.view}
            hint={
              isLooking && viewKey === 'front' && !printing ? hiddenFromFront(open.wall, laid.topic) : null
            }
            bar={
              views.loading ? (
                <LoadingNotice of={[views.loading]} />
              ) : (
                behind && (
                  <LiftedBar
                    name={lifting.name}
                    isOpen={practice.seesBehind}
                    left={lifting.left}
                    most={lifting.most}
                    onLift={isLooking ? () => practice.lift(lifting.unit) : undefined}
                    onStep={practice.step}
                    onRead={isLooking ? () => practice.pick(lifting.unit) : undefined}
                  />
                )
              )
            }
            below={behind && <LiftedRecord record={lifting.record} onLook={practice.lift} />}
            onPaper={printing}
            marks={bare ? [] : practice.drawn}
            dimensions={practice.dimensions}
            selected={behind && !practice.seesBehind ? lifting.unit : picked}
            system={system}
            lengths={<LengthChoice system={system} />}
            onView={practice.view}
            onPick={isLooking ? practice.pick : undefined}
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
