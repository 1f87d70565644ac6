'use client';

import { useEffect, useState } from 'react';
import { keepWork, nameOfWall } from '../../components/hand-in/kept-answers';
import type { NotedReading } from '../../components/practice/notebook';
import type { Mark } from '../../components/practice/practice-state';
import type { ResultRows } from '../../components/result/result-rows';
import type { AttemptWall } from '../../lib/store/attempts';
import { Practice } from '../walls/[code]/practice';

/** A wall that was handed in, with the marks the site has and its key. */
export function ResultRoom(props: {
  readonly attempt: string;
  readonly wall: AttemptWall;
  readonly label: string;
  readonly openingsUp: number | null;
  readonly rows: ResultRows;
}) {
  const { attempt, wall, label, openingsUp, rows } = props;
  const [ready, setReady] = useState(false);
  useEffect(() => {
    keepWork(attempt, wall.place, {
      // The site read them when it took them in.
      marks: wall.marks as readonly Mark[],
      readings: wall.readings as readonly NotedReading[],
      saysSound: wall.saysSound,
      opened: wall.opened,
      phase: 'handed in',
      half: null,
    });
    setReady(true);
  }, [attempt, wall]);
  if (!ready) return <p role="status">One moment …</p>;
  return (
    <Practice
      code={wall.code}
      label={label}
      setWork={{ keptAs: nameOfWall(attempt, wall.place), openingsUp, onHandIn: () => undefined, rows }}
    />
  );
}
