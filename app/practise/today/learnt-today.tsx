import Link from 'next/link';
import { useEffect, useRef } from 'react';
import { TOPIC_TITLES } from '../../../lib/generate/topics';
import { CATALOGUE } from '../../../lib/inspect/catalogue';
import type { CheckId } from '../../../lib/inspect/finding';
import type { Family } from '../../../lib/learning/family';
import type { Learnt } from '../../../lib/learning/ten-minutes';

/** After ten minutes: what was done, what was learnt by it, and what comes next. */
export function LearntToday({ learnt, comesNext }: { readonly learnt: Learnt; readonly comesNext: string }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const { exercises, faulty, sound } = learnt;
  return (
    <>
      <h2 ref={heading} tabIndex={-1}>
        Ten minutes are over
      </h2>
      <p>
        {exercises === 1 ? 'You did one exercise.' : `You did ${exercises} exercises.`}
        {faulty.walls > 0 && ` Faulty walls read without a miss: ${faulty.right} of ${faulty.walls}.`}
        {sound.walls > 0 && ` Sound walls left alone: ${sound.right} of ${sound.walls}.`}
      </p>
      <Told title="Mastered" names={learnt.newlyMastered.map(titleOf)} />
      <Told title="Found this time, and missed the time before" names={learnt.nowFound.map(nameOf)} />
      <Told title="New to you" names={learnt.newFamilies.map(titleOf)} />
      <Told title="Missed this time: these will come back" names={learnt.missed.map(nameOf)} />
      <h3>What comes next</h3>
      <p>{comesNext}</p>
      <p className="row">
        <Link className="button" href="/practise/today" prefetch={false}>
          Ten more minutes
        </Link>
        <Link className="button button-plain" href="/practise/where-you-stand" prefetch={false}>
          Where you stand
        </Link>
      </p>
    </>
  );
}

function Told({ title, names }: { readonly title: string; readonly names: readonly string[] }) {
  if (names.length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      <ul>
        {names.map((name) => (
          <li key={name}>{name}</li>
        ))}
      </ul>
    </>
  );
}

function titleOf(family: Family): string {
  return TOPIC_TITLES[family];
}

function nameOf(fault: CheckId): string {
  return CATALOGUE[fault].name;
}
