'use client';

import { useEffect, useState } from 'react';
import { keepWork, nameOfWall } from '../../components/hand-in/kept-answers';
import { useRecorded } from '../../components/record/use-recorded';
import { parseKeptReading } from '../../components/wall-page/kept-work';
import type { MetOnWall } from '../../lib/exercise/met-on-wall';
import type { AttemptWall } from '../../lib/store/attempts';
import type { ResultRows } from '../../lib/wall-page/result-rows';
import type { WallToRead } from '../../lib/wall-page/wall-to-read';
import { WallRoom } from '../walls/[code]/wall-room';

/** A wall that was handed in, with the marks the site has and its key. */
export function ResultRoom(props: {
  readonly attempt: string;
  readonly handedIn: AttemptWall;
  readonly laid: WallToRead;
  readonly label: string;
  readonly openingsUp: number | null;
  readonly rows: ResultRows;
  /** Where the pictures of the faults' places lie. */
  readonly places: string;
  readonly met: MetOnWall;
  /** ms since 1970. */
  readonly handedInAt: number | null;
}) {
  const { attempt, handedIn, laid, label, openingsUp, rows, places, met, handedInAt } = props;
  const [ready, setReady] = useState(false);
  useEffect(() => {
    keepWork(attempt, handedIn.place, {
      marks: handedIn.marks.map((mark) => ({ ...mark, sure: mark.sure ?? 2 })),
      readings: handedIn.readings.flatMap((reading) => parseKeptReading(reading, () => true) ?? []),
      saysSound: handedIn.saysSound,
      opened: handedIn.opened,
      phase: 'handed in',
      half: null,
    });
    setReady(true);
  }, [attempt, handedIn]);
  const { topic, difficulty } = laid;
  useRecorded(
    { kind: 'set work', wall: handedIn.code, topic, difficulty, marks: handedIn.marks, ...met },
    { id: nameOfWall(attempt, handedIn.place), ...(handedInAt === null ? {} : { at: handedInAt }) },
  );
  if (!ready) return <p role="status">One moment …</p>;
  return (
    <WallRoom
      laid={laid}
      label={label}
      setWork={{
        keptAs: nameOfWall(attempt, handedIn.place),
        openingsUp,
        onHandIn: () => undefined,
        rows,
        places,
      }}
    />
  );
}
