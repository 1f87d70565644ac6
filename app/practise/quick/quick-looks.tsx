'use client';

import { type Dispatch, type ReactNode, useEffect, useMemo, useReducer, useRef, useState } from 'react';
import { KeptRounds } from '../../../components/drills/quick/kept-rounds';
import styles from '../../../components/drills/quick/quick.module.css';
import { QuickBar } from '../../../components/drills/quick/quick-bar';
import { QuickDrawing } from '../../../components/drills/quick/quick-drawing';
import { QuickFigures } from '../../../components/drills/quick/quick-figures';
import { QuickResult } from '../../../components/drills/quick/quick-result';
import { QuickStart } from '../../../components/drills/quick/quick-start';
import { LengthChoice, useLengthSystem } from '../../../components/forms/length-choice';
import { Caution } from '../../../components/ui/caution';
import { keepText, readKept } from '../../../components/wall-page/kept-text';
import { formatBegun, parseBegun } from '../../../lib/drills/quick/begun-round';
import { detectionFiguresOf } from '../../../lib/drills/quick/detection-figures';
import { isSort, sortNumber } from '../../../lib/drills/quick/quick-look';
import type { QuickRoundName } from '../../../lib/drills/quick/quick-picture';
import type { QuickRound } from '../../../lib/drills/quick/quick-record';
import {
  askOf,
  QUICK_START,
  type QuickAction,
  type QuickState,
  quickReducer,
} from '../../../lib/drills/quick/quick-round';
import type { QuickRow } from '../../../lib/drills/quick/quick-rows';
import { MAX_SEED } from '../../../lib/generate/brief';
import { COULD_FALL_CAUTIONS } from '../../../lib/inspect/make-safe';
import { LoadingNotice } from '../../walls/loading-notice';
import { useFirstInteraction } from '../../walls/use-first-interaction';
import { loadViews } from '../../walls/use-later-views';
import { useLazy } from '../../walls/use-lazy';
import { useKeptRounds } from './use-kept-rounds';

/** What lays, measures and draws the pictures of a round. */
const loadQuick = () =>
  Promise.all([import('../../../lib/drills/quick/quick-picture'), loadViews()]).then(
    ([{ quickPicture }, drawingOf]) => ({
      quickPicture,
      drawingOf,
    }),
  );

/** Whether the last wall answered was faulty, and the answer right; null before the first. */
function verdictOn(name: QuickRoundName, answers: readonly boolean[]) {
  const said = answers.at(-1);
  if (said === undefined) return null;
  const { faulty } = askOf(name, answers.length - 1, MAX_SEED);
  return { faulty, right: faulty === said };
}

/** Beside the page's own record, which tells rounds done before. */
async function recordRound(round: QuickRound): Promise<void> {
  const [{ addAttempt }, { lookAttempt }, { doneAt }] = await Promise.all([
    import('../../../components/record/add-attempt'),
    import('../../../components/record/look-attempt'),
    import('../../../components/record/done-at'),
  ]);
  await addAttempt(lookAttempt(round, doneAt(null)));
}

/** A round of quick looks: the pictures are made in the browser one by one; right or wrong is said after each, the key when all are answered. */
export function QuickLooks({
  name,
  of,
  next,
}: {
  readonly name: QuickRoundName;
  /** What it looks at, and how hard, in words. */
  readonly of: string;
  /** The way on, after the round. */
  readonly next: ReactNode;
}) {
  const { rules, round } = name;
  const salt = sortNumber(name);
  const [state, dispatch] = useQuickRound(`quick-round:${rules} ${round}${salt === 0 ? '' : ` ${salt}`}`);
  const [rows, setRows] = useState<readonly QuickRow[] | null>(null);
  const [failed, setFailed] = useState(false);
  const kept = useKeptRounds();
  const [isRepeat, setIsRepeat] = useState(false);
  const system = useLengthSystem(rules === 'united-states' ? 'inches' : 'mm');
  const alike = kept.rounds.filter((each) => isSort(each, name));
  const room = useRef<HTMLDivElement>(null);
  const { phase, paused, answers } = state;
  const place = answers.length;
  const isSeen = phase === 'looking';
  const quick = useLazy(loadQuick, useFirstInteraction() || phase !== 'ready');
  const tools = quick.loaded;
  const picture = useMemo(
    () => (isSeen && tools ? tools.quickPicture(name, place) : null),
    [isSeen, tools, name, place],
  );
  useClock(picture !== null && !paused && state.left !== null, (ms) => dispatch({ kind: 'pass', ms }));

  const { add, wasCounted } = kept;
  const finish = () => {
    setFailed(false);
    import('../../../lib/drills/quick/quick-rows').then(
      ({ quickRows }) => {
        const found = quickRows(name, answers);
        setIsRepeat(wasCounted(name));
        setRows(found);
        const walls = [...found]
          .sort((a, b) => a.number - b.number)
          .map(({ code, faulty, saidFaulty }) => ({ code, faulty, saidFaulty }));
        const done = { ...name, time: state.time, walls };
        add(done);
        void recordRound(done).catch(() => undefined);
      },
      () => setFailed(true),
    );
  };
  const isOver = phase === 'over';
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the round is over
  useEffect(() => {
    if (isOver) finish();
  }, [isOver]);

  const stage = isSeen && !paused ? place : null;
  useEffect(() => {
    // The button just pressed is gone: a screen reader goes on from what took its place.
    if (stage === 0) {
      const heading = room.current?.querySelector<HTMLElement>('[data-round]');
      heading?.focus();
      // The clock is running: the wall and both answers must be on the screen.
      heading?.parentElement?.scrollIntoView();
    }
    if (rows) room.current?.querySelector<HTMLElement>('#round-heading')?.focus();
  }, [stage, rows]);

  return (
    <div ref={room} data-phase={phase}>
      {phase === 'ready' && (
        <QuickStart
          time={state.time}
          begun={place}
          onTime={(time) => dispatch({ kind: 'choose time', time })}
          onStart={() => dispatch({ kind: 'start' })}
        />
      )}
      {(phase === 'looking' || phase === 'covered') && (
        <section aria-label="The round" className={styles.round}>
          <h2 data-round tabIndex={-1} className="visually-hidden">
            Sound, or is something wrong?
          </h2>
          {isSeen && tools === null && <LoadingNotice of={[quick]} />}
          {tools && picture && !paused ? (
            <QuickDrawing
              key={place}
              draw={tools.drawingOf}
              surveyed={picture}
              view={picture.view}
              window={picture.window}
              system={system}
              label={`Wall ${place + 1} of the round`}
            />
          ) : isSeen && tools === null ? null : (
            <p className={styles.cover}>
              {paused ? 'The clock is stopped and the wall is covered.' : 'The time is up. What do you say?'}
            </p>
          )}
          <QuickBar
            state={state}
            before={verdictOn(name, answers)}
            onAnswer={(faulty) => dispatch({ kind: 'answer', faulty })}
            onPause={(to) => dispatch({ kind: 'pause', paused: to })}
          />
          <p role="status" className="visually-hidden">
            {phase === 'covered' ? 'The time is up. Sound, or is something wrong?' : `Wall ${place + 1}`}
          </p>
        </section>
      )}
      {isOver && rows === null && (
        <p role="status">
          {failed ? 'Part of this page did not arrive. Your answers are kept. ' : 'Measuring the walls …'}
          {failed && (
            <button type="button" className="button button-plain" onClick={finish}>
              Fetch it again
            </button>
          )}
        </p>
      )}
      {rows && tools && (
        <>
          <LengthChoice system={system} />
          <QuickResult rows={rows} system={system} draw={tools.drawingOf} />
          {rows.some(({ findings }) => findings.some(({ finding }) => finding.hazard === 'could fall')) && (
            <Caution word="Danger, on a real wall" lines={COULD_FALL_CAUTIONS} toSafety />
          )}
          {isRepeat && <p>You have done this round before, so it is not counted again.</p>}
          <p>{next}</p>
        </>
      )}
      {alike.length > 0 && (phase === 'ready' || rows) && (
        <QuickFigures
          of={of}
          figures={detectionFiguresOf(alike.flatMap(({ walls }) => walls))}
          rounds={alike.length}
        />
      )}
      {(phase === 'ready' || rows) && (
        <KeptRounds text={kept.text} unknown={kept.unknown} onErase={kept.erase} />
      )}
    </div>
  );
}

const BEAT_MS = 200;

/** Reports the time that has passed, beat by beat, while it runs. None passes while the page is hidden. */
function useClock(runs: boolean, onPass: (ms: number) => void): void {
  const heard = useRef(onPass);
  heard.current = onPass;
  useEffect(() => {
    if (!runs) return;
    let last = Date.now();
    const beat = setInterval(() => {
      const now = Date.now();
      if (document.visibilityState === 'visible') heard.current(now - last);
      last = now;
    }, BEAT_MS);
    return () => clearInterval(beat);
  }, [runs]);
}

/** A round of quick looks, kept in this tab: a reload goes on where it was. */
function useQuickRound(keptAs: string): readonly [QuickState, Dispatch<QuickAction>] {
  const [state, dispatch] = useReducer(quickReducer, QUICK_START);
  const [ready, setReady] = useState(false);
  const { time, answers } = state;

  useEffect(() => {
    const begun = parseBegun(readKept(keptAs));
    if (begun) dispatch({ kind: 'take up', begun });
    setReady(true);
  }, [keptAs]);

  useEffect(() => {
    if (ready) keepText(keptAs, formatBegun({ time, answers }));
  }, [ready, keptAs, time, answers]);

  return [state, dispatch];
}
