'use client';

import { useEffect, useMemo, useReducer, useRef, useState } from 'react';
import { LengthChoice, useLengthSystem } from '../../../components/forms/length-choice';
import { KeptRounds } from '../../../components/practise/kept-rounds';
import styles from '../../../components/practise/quick.module.css';
import { QuickBar } from '../../../components/practise/quick-bar';
import { QuickResult } from '../../../components/practise/quick-result';
import type { QuickRow } from '../../../components/practise/quick-rows';
import { QuickStanding } from '../../../components/practise/quick-standing';
import { QuickStart } from '../../../components/practise/quick-start';
import { WallDrawing } from '../../../components/wall/wall-drawing';
import { layWall } from '../../../lib/generate/generate';
import type { RuleSetId } from '../../../lib/limits/limit';
import { QUICK_START, quickReducer } from '../../../lib/practice/quick-round';
import { standingOf } from '../../../lib/practice/standing';
import { quickBrief } from './quick-walls';
import { useClock } from './use-clock';
import { useKeptRounds } from './use-kept-rounds';

/** A round of quick looks: the walls are laid in the browser one by one, the key is worked out when all are answered. */
export function QuickLooks({
  rules,
  round,
  next,
}: {
  readonly rules: RuleSetId;
  readonly round: number;
  readonly next: string;
}) {
  const [state, dispatch] = useReducer(quickReducer, QUICK_START);
  const [rows, setRows] = useState<readonly QuickRow[] | null>(null);
  const [failed, setFailed] = useState(false);
  const kept = useKeptRounds();
  const [isRepeat, setIsRepeat] = useState(false);
  const system = useLengthSystem(rules === 'united-states' ? 'inches' : 'mm');
  const room = useRef<HTMLDivElement>(null);
  const { phase, paused, answers } = state;
  const place = answers.length;
  const isSeen = phase === 'looking';
  const wall = useMemo(
    () => (isSeen ? layWall(quickBrief(rules, round, place)) : null),
    [isSeen, rules, round, place],
  );
  useClock(isSeen && !paused && state.left !== null, (ms) => dispatch({ kind: 'pass', ms }));

  const { add, wasCounted } = kept;
  const finish = () => {
    setFailed(false);
    import('./quick-key').then(
      ({ quickRows }) => {
        const found = quickRows(rules, round, answers);
        setIsRepeat(wasCounted(round));
        setRows(found);
        const walls = [...found]
          .sort((a, b) => a.number - b.number)
          .map(({ code, faulty, saidFaulty }) => ({ code, faulty, saidFaulty }));
        add({ round, time: state.time, walls });
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
    // What was just pressed has gone: the eye of a screen reader goes on at what came in its place.
    if (stage === 0) room.current?.querySelector<HTMLElement>('[data-round]')?.focus();
    if (rows) room.current?.querySelector<HTMLElement>('#round-heading')?.focus();
  }, [stage, rows]);

  return (
    <div ref={room} data-phase={phase}>
      {phase === 'ready' && (
        <QuickStart
          time={state.time}
          onTime={(time) => dispatch({ kind: 'choose time', time })}
          onStart={() => dispatch({ kind: 'start' })}
        />
      )}
      {(phase === 'looking' || phase === 'covered') && (
        <section aria-label="The round">
          <h2 data-round tabIndex={-1} className="visually-hidden">
            Sound, or is something wrong?
          </h2>
          {wall && !paused ? (
            <WallDrawing
              key={place}
              wall={wall}
              view={{ kind: 'front' }}
              marks={[]}
              selected={null}
              layer="units"
              system={system}
              label={`Wall ${place + 1} of the round`}
            />
          ) : (
            <p className={styles.cover}>
              {paused ? 'The clock stands still. The wall is covered.' : 'The time is up. What do you say?'}
            </p>
          )}
          <QuickBar
            state={state}
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
      {rows && (
        <>
          <LengthChoice system={system} />
          <QuickResult rows={rows} system={system} />
          {isRepeat && <p>You looked through this round before, so it is not counted a second time.</p>}
          <p>
            <a className="button" href={next}>
              Another ten walls
            </a>
          </p>
        </>
      )}
      {kept.rounds.length > 0 && (phase === 'ready' || rows) && (
        <QuickStanding
          standing={standingOf(kept.rounds.flatMap(({ walls }) => walls))}
          rounds={kept.rounds.length}
        />
      )}
      {(phase === 'ready' || rows) && (
        <KeptRounds text={kept.text} unknown={kept.unknown} onErase={kept.erase} />
      )}
    </div>
  );
}
