'use client';

import { GuidedFind } from '../../../../components/drills/guided/guided-find';
import { GuidedName } from '../../../../components/drills/guided/guided-name';
import { GuidedTold } from '../../../../components/drills/guided/guided-told';
import type { LengthSystem } from '../../../../lib/units';
import { LoadingNotice } from '../../../walls/loading-notice';
import type { useGuided } from './use-guided';

/** Beside the wall: what is shown, or what is asked. */
export function GuidedSide(props: {
  readonly guided: ReturnType<typeof useGuided>;
  readonly step: 1 | 2;
  readonly half: 'name' | 'place';
  readonly system: LengthSystem;
  readonly nameOf: (part: string) => string;
  readonly onShow: (number: number) => void;
}) {
  const { guided, step, half, system, nameOf, onShow } = props;
  const { rows, right, places, active, loading } = guided;
  if (guided.isTold) {
    const well = right?.filter((each) => each).length ?? 0;
    return (
      <>
        <h2 id="side-heading" tabIndex={-1}>
          {step === 1 ? 'What is wrong with it' : `${well} of ${rows.length} right`}
        </h2>
        {step === 1 && (
          <p>
            Each ring on the wall has its number here. Look at the place, read the measure, and see by how
            much it is beyond its limit.
          </p>
        )}
        <GuidedTold rows={rows} right={right} system={system} onShow={onShow} />
      </>
    );
  }
  return (
    <>
      <h2 id="side-heading">Now you do half</h2>
      {half === 'name' ? (
        <GuidedName rows={rows} onShow={onShow} onCheck={guided.checkNames} />
      ) : (
        <GuidedFind
          rows={rows.map((row, index) => {
            const place = places[index] ?? null;
            return { ...row, picked: place === null ? null : nameOf(place) };
          })}
          active={active}
          onActive={guided.setActive}
          onCheck={guided.checkPlaces}
        />
      )}
      {loading && <LoadingNotice of={[loading]} />}
    </>
  );
}
