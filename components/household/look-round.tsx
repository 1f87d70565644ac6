'use client';

import { useEffect, useRef } from 'react';
import type { Look } from '../../lib/household/look';
import { isAlarm } from '../../lib/household/note';
import { STOPS, type StopId } from '../../lib/household/stops';
import { LengthChoice } from '../forms/length-choice';
import { useLengthsHere } from '../forms/rules-in-use';
import styles from './household.module.css';
import { hashOf, STEPS, type Step } from './look-place';
import { LookStart } from './look-start';
import { NoteSheet } from './note-sheet';
import { type StopPicture, StopQuestions } from './stop-questions';
import { useLooks } from './use-looks';

const TITLES: Readonly<Record<Step, string>> = {
  ...(Object.fromEntries(STOPS.map(({ id, title }) => [id, title])) as Record<StopId, string>),
  note: 'Your note',
};

/** The look round: begun or opened again, walked stop by stop, and the note it comes to. */
export function LookRound({
  pictures,
}: {
  readonly pictures: Readonly<Record<string, readonly StopPicture[]>>;
}) {
  const { looks, look, place, keeping, begin, change, remove } = useLooks();
  const system = useLengthsHere();
  const isWalking = look !== undefined && place !== null;
  const heading = useFocusOn(looks === null ? null : isWalking ? place.step : 'start');
  if (looks === null) return <p className={styles.scripted}>One moment …</p>;
  if (!isWalking) {
    const way = window.location.hash === '#wrong' ? 'wrong' : 'finished';
    return <LookStart key={way} {...{ way, looks }} onBegin={begin} onRemove={remove} />;
  }
  const { step } = place;
  const stop = STOPS.find(({ id }) => id === step);
  return (
    <>
      <Steps here={step} look={look} />
      <h2 ref={heading} tabIndex={-1} className={styles.heading}>
        {TITLES[step]}
      </h2>
      <p className={`${styles.keeping} fine`} role="status">
        {keeping === 'kept' && 'Kept on this device.'}
        {keeping === 'keeping' && 'Being kept …'}
        {keeping === 'never' && 'This browser keeps nothing. Print your note before you close the page.'}
      </p>
      {stop === undefined ? (
        <NoteSheet {...{ look, system }} onChange={change} />
      ) : (
        <>
          <div className={styles.screen}>
            <LengthChoice system={system} />
          </div>
          <StopQuestions
            key={stop.id}
            {...{ stop, look, system }}
            pictures={pictures[stop.id] ?? []}
            onChange={change}
          />
        </>
      )}
      <Onward here={step} look={look} />
    </>
  );
}

/** When another step is shown the focus goes to its heading, so that a keyboard and a screen reader begin at its top. */
function useFocusOn(here: Step | 'start' | null) {
  const heading = useRef<HTMLHeadingElement>(null);
  const before = useRef<typeof here>(null);
  useEffect(() => {
    const isFirst = before.current === null;
    const isSame = before.current === here;
    before.current = here;
    if (isFirst || isSame) return;
    const top = heading.current ?? document.getElementById('main');
    top?.focus();
    top?.scrollIntoView();
  }, [here]);
  return heading;
}

function Steps({ here, look }: { readonly here: Step; readonly look: Look }) {
  return (
    <nav aria-label="Steps of the look round" className={styles.steps}>
      <ol>
        {STEPS.map((step) => (
          <li key={step}>
            <a href={hashOf({ id: look.id, step })} aria-current={step === here ? 'step' : undefined}>
              <span>{TITLES[step]}</span>
              {isDone(step, look) && <span className="visually-hidden">, answered</span>}
            </a>
          </li>
        ))}
      </ol>
    </nav>
  );
}

function isDone(step: Step, { answers }: Look): boolean {
  const stop = STOPS.find(({ id }) => id === step);
  return stop?.questions.every((each) => 'most' in each || answers[each.id] !== undefined) ?? false;
}

/** With something that could fall the way leads to the note and no nearer to the wall. */
function Onward({ here, look }: { readonly here: Step; readonly look: Look }) {
  const at = STEPS.indexOf(here);
  const [before, after] = [STEPS[at - 1], STEPS[at + 1]];
  const next = after !== undefined && isAlarm(look) ? 'note' : after;
  return (
    <p className={`${styles.onward} row`}>
      {before !== undefined && (
        <a className="button button-plain" href={hashOf({ id: look.id, step: before })}>
          Back: {TITLES[before]}
        </a>
      )}
      {next !== undefined && (
        <a className="button" href={hashOf({ id: look.id, step: next })}>
          Next: {TITLES[next]}
        </a>
      )}
    </p>
  );
}
