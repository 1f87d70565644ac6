'use client';

import { useEffect, useRef, useState } from 'react';
import { LiftSteps } from '../../../../components/drills/build/lift-steps';
import styles from '../../../../components/drills/pair/pair.module.css';
import { type PairWall, PairWalls } from '../../../../components/drills/pair/pair-walls';
import { LengthChoice, useLengthSystem } from '../../../../components/forms/length-choice';
import { GoOn } from '../../../../components/today/go-on';
import { Caution } from '../../../../components/ui/caution';
import { ChoiceBar } from '../../../../components/ui/choice-bar';
import { DrawContext } from '../../../../components/wall/looks/draw-context';
import { useViewSettings } from '../../../../components/wall/use-view-settings';
import type { DrawnMark } from '../../../../components/wall/wall-drawing-props';
import { Controls, LAYER_CHOICES, Places } from '../../../../components/wall-page/wall-stage';
import type { Pair } from '../../../../lib/drills/pair/measured-pair';
import type { PairRows } from '../../../../lib/drills/pair/pair-rows';
import { pairViewFor, pairViews, viewOn } from '../../../../lib/drills/pair/pair-views';
import { COULD_FALL_CAUTIONS } from '../../../../lib/inspect/make-safe';
import type { FindingDimension } from '../../../../lib/views/pointing/finding-dimension';
import type { Layer } from '../../../../lib/views/pointing/targets';
import type { Part } from '../../../../lib/wall/parts';
import { hiddenFromFront } from '../../../../lib/wall-page/hidden-from-front';
import { LoadingNotice } from '../../../walls/loading-notice';
import { useLaterViews } from '../../../walls/use-later-views';
import { PairAsk } from './pair-ask';
import { usePair } from './use-pair';

/** Two walls from one seed, one of them spoiled. */
export function PairPractice(props: {
  readonly code: string;
  readonly pair: Pair;
  /** Address of the next pair. */
  readonly next: string;
}) {
  const { code, next } = props;
  const pair = usePair(code, props.pair);
  const { brief, sound, spoiled, spoiledIs } = pair.pair;
  const { side, rows, picked, opened, Result } = pair;
  const system = useLengthSystem(brief.rules === 'united-states' ? 'inches' : 'mm');
  const [look, setLook] = useState('front');
  const [layer, setLayer] = useState<Layer>('units');
  const [lifted, setLifted] = useState(opened.sound.firstUnit);
  const room = useRef<HTMLDivElement>(null);
  const isTold = rows !== null;
  const hidden = look === 'front' && !isTold ? hiddenFromFront(brief.topic, brief.difficulty) : null;
  const { draw, view, loading } = useLaterViews(viewOn(sound, sound, look, lifted));
  const settings = useViewSettings(look, view);
  // A cut or a course is moved on both walls at once.
  const isMoved = settings.view.kind === 'side-section' || settings.view.kind === 'above';

  useEffect(() => {
    if (isTold) room.current?.querySelector<HTMLElement>('#pair-heading')?.focus();
  }, [isTold]);

  const show = (number: number) => {
    const finding = rows?.findings.find((each) => each.number === number)?.finding;
    if (!finding) return;
    const key = pairViewFor(finding, spoiled, sound);
    setLook(key);
    const [part] = finding.parts;
    if (key === 'behind' && part) setLifted(part);
    room.current?.scrollIntoView({ block: 'start' });
  };
  const walls = ([1, 2] as const).map((number): PairWall => {
    const surveyed = pair.openOf(number);
    const canPick = side === number && !isTold;
    return {
      number,
      surveyed,
      view: isMoved || loading ? settings.view : viewOn(surveyed.wall, sound, look, lifted),
      marks: drawnOn(number, pair, surveyed.parts),
      dimensions: number === spoiledIs ? dimensionsOf(rows) : [],
      selected: side === number ? picked : null,
      ...(canPick ? { onPick: pair.pick } : {}),
    };
  });

  return (
    <div ref={room} data-told={isTold}>
      <div className="stack">
        <Places views={pairViews(sound)} viewKey={look} onView={setLook} />
        {hidden && <p className={styles.hint}>{hidden}</p>}
        <Controls wall={sound} viewKey={look} settings={settings} system={system} />
        {loading && <LoadingNotice of={[loading]} />}
        {look === 'behind' && !loading && (
          <LiftSteps
            name={opened.sound.nameOf(lifted)}
            onStep={(along, by) =>
              setLifted(
                along === 'course' ? opened.sound.unitFrom(lifted, by) : opened.sound.courseFrom(lifted, by),
              )
            }
          />
        )}
      </div>
      <DrawContext value={draw}>
        <PairWalls
          walls={walls}
          chosen={side}
          layer={layer}
          viewing={settings.viewing}
          system={system}
          look={look}
        />
      </DrawContext>
      <div className="stack">
        {side !== null && !isTold && settings.view.kind !== 'tickets' && (
          <ChoiceBar legend="Arrow keys go by" options={LAYER_CHOICES} value={layer} onChoose={setLayer} />
        )}
        <LengthChoice system={system} />
      </div>
      {rows && Result ? (
        <>
          <Result rows={rows} spoiledIs={spoiledIs} system={system} onShow={show} />
          {rows.findings.some(({ finding }) => finding.hazard === 'could fall') && (
            <Caution word="Danger, on a real wall" lines={COULD_FALL_CAUTIONS} toSafety />
          )}
          <p className="row">
            <GoOn
              otherwise={
                <a className="button" href={next}>
                  Another pair like it
                </a>
              }
            />
            <a className="button button-plain" href={`/walls/${code}`}>
              Open the spoiled wall as a full wall
            </a>
            <button type="button" className="button button-plain" onClick={pair.again}>
              This pair again
            </button>
          </p>
        </>
      ) : (
        <PairAsk pair={pair} lifted={look === 'behind' ? lifted : null} />
      )}
    </div>
  );
}

/** The reader's marks on the wall pointed to; once told, what differs, ringed on both walls. */
function drawnOn(
  number: 1 | 2,
  { rows, side, marks, pair }: ReturnType<typeof usePair>,
  parts: ReadonlyMap<string, Part>,
): readonly DrawnMark[] {
  if (rows) {
    return rows.findings.map(({ finding, number: at, outcome }) => ({
      part: finding.parts[0] ?? finding.region.panel,
      number: at,
      state:
        number !== pair.spoiledIs
          ? 'mark'
          : outcome === 'found' || outcome === 'wrong name'
            ? 'found'
            : 'missed',
      ...finding.region,
    }));
  }
  if (side !== number) return [];
  return marks.flatMap(({ part: id }, index) => {
    const part = parts.get(id);
    if (!part) return [];
    const { panel, x, y, width, height } = part;
    return [{ part: id, number: index + 1, state: 'mark' as const, panel, x, y, width, height }];
  });
}

/** What was measured, as dimension lines. */
function dimensionsOf(rows: PairRows | null): readonly FindingDimension[] {
  return (rows?.findings ?? []).map(({ number, finding }) => ({ ...finding, number }));
}
