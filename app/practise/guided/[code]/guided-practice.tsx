'use client';

import { useEffect, useMemo, useRef, useState } from 'react';
import { Caution } from '../../../../components/forms/caution';
import { LengthChoice, useLengthSystem } from '../../../../components/forms/length-choice';
import { MixingTickets } from '../../../../components/practice/mixing-tickets';
import { WallStage } from '../../../../components/practice/wall-stage';
import { LiftSteps } from '../../../../components/practise/lift-steps';
import styles from '../../../../components/practise/practise.module.css';
import { AllViews } from '../../../../components/wall/all-views';
import { layWall } from '../../../../lib/generate/generate';
import { parseCode } from '../../../../lib/generate/wall-code';
import { COULD_FALL_CAUTIONS } from '../../../../lib/inspect/make-safe';
import { openWallOf } from '../../../walls/open-wall';
import { viewChoices, viewKeyFor } from '../../../walls/view-choices';
import { useStage } from '../../use-stage';
import type { GuidedRow } from './guided-key';
import { GuidedSide } from './guided-side';
import { useGuided } from './use-guided';

/** One step of a guided wall: all shown, or half left to the reader. */
export function GuidedPractice({
  code,
  step,
  half,
  next,
}: {
  readonly code: string;
  readonly step: 1 | 2;
  /** Which half is left to the reader in the second step. */
  readonly half: 'name' | 'place';
  readonly next: { readonly href: string; readonly words: string };
}) {
  const brief = useMemo(() => parseCode(code), [code]);
  const open = useMemo(() => openWallOf(layWall(brief)), [brief]);
  const { wall, parts } = open;
  const stage = useStage(open);
  const guided = useGuided(open, brief, step);
  const { rows, isTold } = guided;
  const system = useLengthSystem(brief.rules === 'united-states' ? 'inches' : 'mm');
  const [ticketsOpen, setTicketsOpen] = useState(false);
  const room = useRef<HTMLDivElement>(null);

  useEffect(() => {
    if (isTold && step === 2) room.current?.querySelector<HTMLElement>('#side-heading')?.focus();
  }, [isTold, step]);

  const show = (number: number) => {
    const finding = rows?.find((each) => each.number === number)?.finding;
    if (!finding) return;
    const [part] = finding.parts;
    const key = viewKeyFor(finding, wall);
    stage.choose(key);
    if (key === 'behind' && part) stage.lift(part);
    if (part?.startsWith('batch-')) setTicketsOpen(true);
    room.current?.querySelector('h2')?.scrollIntoView({ block: 'start' });
  };
  const canPick = step === 2 && half === 'place' && rows !== null && !isTold;
  const ringed: readonly GuidedRow[] = isTold || (step === 2 && half === 'name') ? (rows ?? []) : [];
  const picked = guided.places.flatMap((id, index) => {
    const part = id === null || isTold ? undefined : parts.get(id);
    return part ? [{ ...part, part: part.id, number: index + 1, state: 'mark' as const }] : [];
  });
  return (
    <div className={styles.room} ref={room} data-told={isTold}>
      <div>
        <AllViews>
          <WallStage
            wall={wall}
            label={`Wall ${code}`}
            views={viewChoices(wall)}
            viewKey={stage.viewKey}
            view={stage.view}
            hint={null}
            bar={stage.viewKey === 'behind' && <LiftSteps name={stage.liftedName} onStep={stage.step} />}
            below={
              stage.viewKey === 'behind' &&
              canPick && (
                <p>
                  <button
                    type="button"
                    className="button button-plain"
                    onClick={() => guided.pick(stage.lifted)}
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
            dimensions={isTold ? (rows ?? []).map(({ finding, number }) => ({ ...finding, number })) : []}
            selected={null}
            system={system}
            lengths={<LengthChoice system={system} />}
            onView={stage.choose}
            onPick={canPick ? guided.pick : undefined}
          />
        </AllViews>
        <MixingTickets
          batches={wall.batches}
          open={ticketsOpen}
          onToggle={setTicketsOpen}
          picked={null}
          onPick={canPick ? guided.pick : null}
        />
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
            {rows?.some(({ finding }) => finding.hazard === 'could fall') && (
              <Caution word="Danger, on a real wall" lines={COULD_FALL_CAUTIONS} toSafety />
            )}
            <p>
              <a className="button" href={next.href}>
                {next.words}
              </a>
            </p>
          </>
        )}
      </section>
    </div>
  );
}
