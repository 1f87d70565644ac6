'use client';

import { LengthChoice } from '../../../components/forms/length-choice';
import { LiftedBar, LiftedRecord } from '../../../components/practice/lifted-bar';
import { MixingTickets } from '../../../components/practice/mixing-tickets';
import { WallStage } from '../../../components/practice/wall-stage';
import { viewChoices, viewOf } from '../view-choices';
import styles from './practice.module.css';
import type { SetWork } from './set-work';
import { Side } from './side';
import { usePractice } from './use-practice';
import { usePrinting } from './use-printing';

/** The practice on one wall, laid in the browser. Inspected and marked there too, unless it is set work. */
export function Practice(props: {
  readonly code: string;
  readonly label: string;
  readonly setWork?: SetWork;
}) {
  const { code, label, setWork = null } = props;
  const practice = usePractice(code, setWork);
  const { open, isLooking, system, lifting, said } = practice;
  const printing = usePrinting();
  const viewKey = printing ? 'front' : practice.viewKey;
  const behind = viewKey === 'behind';
  // On paper before hand-in: the wall as everyone gets it, without what this reader thinks of it.
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
        <WallStage
          wall={open.wall}
          label={label}
          views={viewChoices(open.wall)}
          viewKey={viewKey}
          view={viewOf(behind && !practice.seesBehind ? 'front' : viewKey, lifting.unit, open.wall)}
          hint={
            isLooking && viewKey === 'front' && !printing && open.wall.masonry === 'adhered'
              ? `The front cannot show how well these units stick. Lift some here and there: choose “Behind a unit”. You may lift ${lifting.most}.`
              : null
          }
          bar={
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
          }
          below={behind && <LiftedRecord record={lifting.record} onLook={practice.lift} />}
          marks={bare ? [] : practice.drawn}
          selected={behind && !practice.seesBehind ? lifting.unit : picked}
          system={system}
          lengths={<LengthChoice system={system} />}
          onView={practice.view}
          onPick={isLooking ? practice.pick : undefined}
        />
        <MixingTickets
          batches={open.wall.batches}
          open={printing || practice.ticketsOpen}
          onToggle={(isOpen) => !printing && practice.openTickets(isOpen)}
          picked={picked}
          onPick={isLooking && !printing ? practice.pick : null}
        />
      </div>
      <div className={styles.bench}>
        <Side practice={practice} setWork={setWork} />
      </div>
      <p className={styles.said} role="status">
        {said}
      </p>
    </div>
  );
}
