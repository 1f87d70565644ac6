'use client';

import { useEffect, useMemo, useRef, useState } from 'react';
import { LiftSteps } from '../../../../components/drills/build/lift-steps';
import styles from '../../../../components/drills/drills.module.css';
import { GuidedFind } from '../../../../components/drills/guided/guided-find';
import { GuidedName } from '../../../../components/drills/guided/guided-name';
import { GuidedTold } from '../../../../components/drills/guided/guided-told';
import { LengthChoice, useLengthSystem } from '../../../../components/forms/length-choice';
import { GoOn } from '../../../../components/today/go-on';
import { Caution } from '../../../../components/ui/caution';
import { DrawContext } from '../../../../components/wall/looks/draw-context';
import { WallStage } from '../../../../components/wall-page/wall-stage';
import type { GuidedRow } from '../../../../lib/drills/guided/guided-rows';
import type { Finding } from '../../../../lib/inspect/finding';
import { COULD_FALL_CAUTIONS } from '../../../../lib/inspect/make-safe';
import type { LengthSystem } from '../../../../lib/units';
import type { Wall } from '../../../../lib/wall/model';
import { openWallOf } from '../../../../lib/wall-page/open-wall';
import { viewChoices, viewKeyFor } from '../../../../lib/wall-page/view-choices';
import { whatShows } from '../../../../lib/wall-page/what-shows';
import { LoadingNotice } from '../../../walls/loading-notice';
import { useLaterViews } from '../../../walls/use-later-views';
import { useStage } from '../../use-stage';
import { type GuidedWall, useGuided } from './use-guided';

/** One step of a guided wall: all shown, or half left to the reader. */
export function GuidedPractice(props: {
  readonly of: GuidedWall;
  readonly wall: Wall;
  readonly rows: readonly GuidedRow[];
  readonly step: 1 | 2;
  /** Which half is left to the reader in the second step. */
  readonly half: 'name' | 'place';
  readonly next: { readonly href: string; readonly words: string };
}) {
  const { wall, rows, step, half, next } = props;
  const { code, rules } = props.of;
  const open = useMemo(() => openWallOf(wall), [wall]);
  const { parts } = open;
  const stage = useStage(open);
  const views = useLaterViews(stage.view);
  const guided = useGuided(open, props.of, rows, step);
  const { isTold } = guided;
  const system = useLengthSystem(rules === 'united-states' ? 'inches' : 'mm');
  const room = useRef<HTMLDivElement>(null);
  const [shown, setShown] = useState<Finding | null>(null);

  useEffect(() => {
    if (isTold && step === 2) room.current?.querySelector<HTMLElement>('#side-heading')?.focus();
  }, [isTold, step]);

  const show = (number: number) => {
    const finding = rows.find((each) => each.number === number)?.finding;
    if (!finding) return;
    const [part] = finding.parts;
    const key = viewKeyFor(finding, wall);
    stage.choose(key);
    setShown(finding);
    if (key === 'behind' && part) stage.lift(part);
    room.current?.querySelector('h2')?.scrollIntoView({ block: 'start' });
  };
  const canPick = step === 2 && half === 'place' && !isTold;
  const ringed: readonly GuidedRow[] = isTold || (step === 2 && half === 'name') ? rows : [];
  const picked = guided.places.flatMap((id, index) => {
    const part = id === null || isTold ? undefined : parts.get(id);
    return part ? [{ ...part, part: part.id, number: index + 1, state: 'mark' as const }] : [];
  });
  const onward = (
    <a className="button" href={next.href}>
      {next.words}
    </a>
  );
  return (
    <div className={styles.room} ref={room} data-told={isTold}>
      <div>
        <DrawContext value={views.draw}>
          <WallStage
            surveyed={open}
            label={`Wall ${code}`}
            views={viewChoices(wall)}
            viewKey={stage.viewKey}
            view={views.view}
            hint={whatShows(stage.viewKey, wall)}
            bar={
              views.loading ? (
                <LoadingNotice of={[views.loading]} />
              ) : (
                stage.viewKey === 'behind' && <LiftSteps name={stage.liftedName} onStep={stage.step} />
              )
            }
            below={
              stage.viewKey === 'behind' &&
              canPick && (
                <p>
                  <button
                    type="button"
                    className="button button-plain"
                    onClick={() => guided.pick(stage.lifted, null)}
                  >
                    Pick the lifted unit
                  </button>
                </p>
              )
            }
            marks={[
              ...ringed.map(({ finding, number }) => ({
                part: finding.parts[0] ?? finding.region.panel,
                number,
                state: 'mark' as const,
                ...finding.region,
              })),
              ...picked,
            ]}
            dimensions={
              isTold
                ? rows
                    .filter(({ finding }) => shown === null || finding === shown)
                    .map(({ finding, number }) => ({ ...finding, number }))
                : []
            }
            selected={shown?.parts[0] ?? null}
            system={system}
            lengths={<LengthChoice system={system} />}
            onView={stage.choose}
            onPick={canPick ? guided.pick : undefined}
          />
        </DrawContext>
      </div>
      <section aria-labelledby="side-heading">
        <GuidedSide
          guided={guided}
          step={step}
          half={half}
          system={system}
          nameOf={open.nameOf}
          onShow={show}
        />
        {isTold && (
          <>
            {rows.some(({ finding }) => finding.hazard === 'could fall') && (
              <Caution word="Danger, on a real wall" lines={COULD_FALL_CAUTIONS} toSafety />
            )}
            <p>{step === 1 ? onward : <GoOn otherwise={onward} />}</p>
          </>
        )}
      </section>
    </div>
  );
}

/** Beside the wall: what is shown, or what is asked. */
function GuidedSide(props: {
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
