'use client';

import { useCallback, useMemo, useState } from 'react';
import { LengthChoice, useLengthSystem } from '../../../components/forms/length-choice';
import { Bench } from '../../../components/practice/bench';
import { MixingTickets } from '../../../components/practice/mixing-tickets';
import { Review } from '../../../components/practice/review';
import { useKeptPractice } from '../../../components/practice/use-kept-practice';
import { WallStage } from '../../../components/practice/wall-stage';
import { ResultView } from '../../../components/result/result-view';
import { parseCode } from '../../../lib/generate/wall-code';
import { COULD_FALL_CAUTIONS, DRAWING_CAUTIONS } from '../../../lib/inspect/make-safe';
import { drawnMarks, drawnResult } from '../drawn-marks';
import { faultName } from '../fault-choices';
import { nextCode, openWall } from '../open-wall';
import { lastLooks, viewChoices, viewKeyFor, viewOf } from '../view-choices';
import { PickedCard } from './picked-card';
import styles from './practice.module.css';
import { useFocusMoves } from './use-focus-moves';
import { useResult } from './use-result';

/** The practice on one wall: laid, inspected and marked in the browser. */
export function Practice({ code, label }: { readonly code: string; readonly label: string }) {
  const brief = useMemo(() => parseCode(code), [code]);
  const open = useMemo(() => openWall(brief), [brief]);
  const { wall, parts } = open;
  const isPart = useCallback((id: string) => parts.has(id), [parts]);
  const [work, dispatch, ready] = useKeptPractice(code, isPart);
  const system = useLengthSystem(brief.rules === 'united-states' ? 'inches' : 'mm');
  const [picked, setPicked] = useState<string | null>(null);
  const [changing, setChanging] = useState<number | null>(null);
  const [viewKey, setViewKey] = useState('front');
  const [lifted, setLifted] = useState(open.firstUnit);
  const [ticketsOpen, setTicketsOpen] = useState(brief.topic === 'mortar');
  const [shown, setShown] = useState<number | null>(null);
  const [said, setSaid] = useState('');
  const focus = useFocusMoves();
  const result = useResult(work, open, brief.rules);
  const isLooking = work.phase === 'looking';
  const nameOf = open.nameOf;
  const named = work.marks.map((mark) => ({
    mark,
    faultName: faultName(mark.fault),
    partName: nameOf(mark.part),
  }));

  const pick = (part: string) => {
    setPicked(part);
    setChanging(null);
    if (parts.get(part)?.kind === 'unit') setLifted(part);
    focus.toCard();
  };
  const close = () => {
    setPicked(null);
    setChanging(null);
    focus.backToWall();
  };
  const look = (view: string) => {
    dispatch({ kind: 'back to the wall' });
    if (view === 'tickets') setTicketsOpen(true);
    else setViewKey(view);
    focus.to(view === 'tickets' ? 'tickets' : 'stage');
  };
  const change = (index: number) => {
    const mark = work.marks[index];
    if (!mark) return;
    dispatch({ kind: 'back to the wall' });
    setPicked(mark.part);
    setChanging(index);
    focus.toCard();
  };
  const remove = (index: number) => {
    dispatch({ kind: 'remove', index });
    setChanging(null);
    setSaid(`Mark ${index + 1} removed.`);
    focus.to(isLooking ? 'marks' : 'review');
  };
  const show = (number: number) => {
    const row = result?.rows?.findings.find((each) => each.number === number);
    const part =
      row?.finding.parts[0] ?? result?.rows?.falseMarks.find((each) => each.number === number)?.part;
    setShown(number);
    if (part && parts.get(part)?.kind === 'unit') setLifted(part);
    if (parts.get(part ?? '')?.kind === 'batch') setTicketsOpen(true);
    setViewKey(row ? viewKeyFor(row.finding, wall) : 'front');
    setPicked(part ?? null);
    setSaid(`Number ${number} is shown on the wall.`);
    focus.scrollToWall();
  };
  const startAgain = () => {
    dispatch({ kind: 'start again' });
    setPicked(null);
    setShown(null);
    setViewKey('front');
    setSaid('The wall is laid again. Your marks are gone.');
    focus.to('stage');
  };

  const marks = result?.rows ? drawnResult(result.rows, parts) : drawnMarks(work.marks, parts);

  return (
    <div
      className={styles.room}
      data-phase={work.phase.replace(' ', '-')}
      data-ready={ready}
      ref={focus.room}
    >
      <div className={styles.wall}>
        <WallStage
          wall={wall}
          label={label}
          views={viewChoices(wall)}
          viewKey={viewKey}
          view={viewOf(viewKey, lifted, wall)}
          liftedName={viewKey === 'behind' ? nameOf(lifted) : null}
          marks={marks}
          selected={picked}
          system={system}
          lengths={<LengthChoice system={system} />}
          onView={(key) => {
            setViewKey(key);
            if (key === 'behind' && isLooking) setPicked(lifted);
          }}
          onStep={(by) => {
            const next = open.unitFrom(lifted, by);
            setLifted(next);
            if (isLooking) setPicked(next);
          }}
          onPick={isLooking ? pick : undefined}
        />
        <MixingTickets
          batches={wall.batches}
          open={ticketsOpen}
          onToggle={setTicketsOpen}
          picked={picked}
          onPick={isLooking ? pick : null}
        />
      </div>
      <div className={styles.bench}>
        {result?.rows ? (
          <ResultView
            rows={result.rows}
            system={system}
            shown={shown}
            nextHref={`/walls/${nextCode(brief)}`}
            drawingCautions={DRAWING_CAUTIONS}
            couldFallCautions={COULD_FALL_CAUTIONS}
            onShow={show}
            onStartAgain={startAgain}
          />
        ) : work.phase === 'review' ? (
          <Review
            marks={named}
            saysSound={work.saysSound}
            looks={lastLooks(wall)}
            cautions={DRAWING_CAUTIONS}
            onChange={change}
            onRemove={remove}
            onLook={look}
            onBack={() => {
              dispatch({ kind: 'back to the wall' });
              focus.to('stage');
            }}
            onSaySound={() => dispatch({ kind: 'say sound' })}
            onHandIn={() => {
              dispatch({ kind: 'hand in' });
              setPicked(null);
              setSaid('Handed in.');
              focus.to('result');
            }}
          />
        ) : (
          <Bench
            marks={named}
            canUndo={work.past.length > 0}
            cautions={DRAWING_CAUTIONS}
            onChange={change}
            onRemove={remove}
            onUndo={() => {
              dispatch({ kind: 'undo' });
              setSaid('The last step is undone.');
            }}
            onSaySound={() => {
              dispatch({ kind: 'say sound' });
              focus.to('review');
            }}
            onReview={() => {
              setPicked(null);
              dispatch({ kind: 'look once more' });
              focus.to('review');
            }}
          >
            {picked !== null && (
              <PickedCard
                key={`${picked} ${changing ?? 'new'}`}
                open={open}
                part={picked}
                lifted={viewKey === 'behind' && lifted === picked}
                changing={changing}
                marks={work.marks}
                system={system}
                onPick={pick}
                onLift={() => setViewKey('behind')}
                onClose={close}
                onMark={(mark) => {
                  dispatch(
                    changing === null ? { kind: 'mark', mark } : { kind: 'change', index: changing, mark },
                  );
                  const number = (changing ?? work.marks.length) + 1;
                  setSaid(`Mark ${number}: ${faultName(mark.fault)}, ${nameOf(mark.part)}.`);
                  close();
                }}
              />
            )}
          </Bench>
        )}
        {result?.problem && <p role="alert">{result.problem}</p>}
      </div>
      <p className={styles.said} role="status">
        {said}
      </p>
    </div>
  );
}
