'use client';

import { LengthChoice } from '../../../components/forms/length-choice';
import { DrawContext } from '../../../components/wall/looks/draw-context';
import { usePrinting } from '../../../components/wall/use-printing';
import { WallDrawing } from '../../../components/wall/wall-drawing';
import { FirstWallHints, knowWalls } from '../../../components/wall-page/first-wall-hints';
import { LiftedBack, LiftedRecord } from '../../../components/wall-page/lifted-back';
import { TicketLines } from '../../../components/wall-page/ticket-lines';
import { WallStage } from '../../../components/wall-page/wall-stage';
import { hiddenFromFront } from '../../../lib/wall-page/hidden-from-front';
import { viewChoices, viewOf } from '../../../lib/wall-page/view-choices';
import type { WallToRead } from '../../../lib/wall-page/wall-to-read';
import { liftingPlan, whatShows } from '../../../lib/wall-page/what-shows';
import { LoadingNotice } from '../loading-notice';
import { useLaterViews } from '../use-later-views';
import type { SetWork } from './set-work';
import { Side } from './side';
import { useWallRoom } from './use-wall-room';
import styles from './wall-room.module.css';

/** One wall to read and mark. It is graded in the browser, unless it is set work. */
export function WallRoom(props: {
  readonly laid: WallToRead;
  readonly label: string;
  readonly setWork?: SetWork;
}) {
  const { laid, label, setWork = null } = props;
  const wallRoom = useWallRoom(laid, setWork);
  const { open, isLooking, system, lifting, announcement } = wallRoom;
  const printing = usePrinting();
  const viewKey = printing ? 'front' : wallRoom.viewKey;
  const behind = viewKey === 'behind';
  const looks = setWork?.site?.looks ?? null;
  const views = useLaterViews(viewOf(behind ? 'front' : viewKey, lifting.unit, open.wall), looks);
  const backs = useLaterViews(
    viewOf(behind && wallRoom.seesBehind ? 'behind' : 'front', lifting.unit, open.wall),
    looks,
  );
  const loading = views.loading ?? backs.loading;
  // On paper before hand-in: the wall as everyone gets it, without this reader's marks.
  const bare = printing && wallRoom.work.phase !== 'handed in';
  const picked = bare ? null : wallRoom.picked;
  return (
    <div
      className={styles.room}
      data-ready={wallRoom.ready}
      data-phase={wallRoom.work.phase}
      ref={wallRoom.room}
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
            bar={
              loading ? (
                <LoadingNotice of={[loading]} />
              ) : (
                looks && <p>Nothing is written on these drawings. Pick a part and measure it.</p>
              )
            }
            beside={
              behind && (
                <LiftedBack
                  name={lifting.name}
                  isOpen={wallRoom.seesBehind && backs.loading === null}
                  lifting={isLooking ? lifting : null}
                  plan={liftingPlan(open.wall)}
                  onRead={isLooking ? () => wallRoom.pick(lifting.unit) : undefined}
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
            below={behind && <LiftedRecord record={lifting.record} onLook={wallRoom.lift} />}
            lifted={bare ? [] : wallRoom.work.opened}
            unitsAlone={behind && isLooking}
            note={
              wallRoom.hint === null
                ? undefined
                : (isNear) => (
                    <FirstWallHints
                      step={isNear && wallRoom.hint === 1 ? 2 : (wallRoom.hint ?? 1)}
                      onSkip={knowWalls}
                    />
                  )
            }
            onPaper={printing}
            marks={bare ? [] : wallRoom.drawn}
            dimensions={wallRoom.dimensions}
            selected={behind && wallRoom.seesBehind ? lifting.unit : picked}
            system={system}
            lengths={<LengthChoice system={system} />}
            onView={wallRoom.view}
            onPick={isLooking ? (behind ? wallRoom.lift : wallRoom.pick) : undefined}
          />
        </DrawContext>
        {printing && looks === null && <TicketLines batches={open.wall.batches} />}
      </div>
      <div className={styles.side}>
        <Side wallRoom={wallRoom} setWork={setWork} />
      </div>
      <p className="visually-hidden" role="status">
        {announcement}
      </p>
    </div>
  );
}
