'use client';

import { usePathname, useRouter } from 'next/navigation';
import { useEffect, useRef, useState } from 'react';
import { HandInStatus } from '../../components/handin/hand-in-status';
import { answerNow, keepAnswer, nameOfWall, reopenWall } from '../../components/handin/kept-answers';
import { useOutbox } from '../../components/handin/use-outbox';
import { WallList } from '../../components/handin/wall-list';
import { When } from '../../components/time/when';
import { layWall } from '../../lib/generate/generate';
import { parseCode } from '../../lib/generate/wall-code';
import { fingerprintOf } from '../../lib/wall/print';
import { Practice } from '../walls/[code]/practice';
import type { HandedWork } from '../walls/[code]/set-work';
import styles from './my-work.module.css';

export interface RoomWall {
  readonly place: number;
  readonly code: string;
  /** What kind of wall it is, in words. */
  readonly kind: string;
}

/**
 * The walls of an open attempt: list and wall in one page, so that it goes on without a network once it is open. No key comes here.
 */
export function WorkRoom(props: {
  readonly work: string;
  readonly attempt: string;
  readonly learner: string;
  readonly walls: readonly RoomWall[];
  readonly openingsUp: number | null;
  /** When the time limit is over, ms; null without one. */
  readonly endsAt: number | null;
}) {
  const { work, attempt, learner, walls, openingsUp, endsAt } = props;
  const outbox = useOutbox(attempt, learner);
  const router = useRouter();
  const top = useRef<HTMLHeadingElement>(null);
  const [said, setSaid] = useState('');
  const place = placeIn(usePathname());
  const wall = walls.find((each) => each.place === place) ?? null;
  const { handIn } = outbox;

  // So that a wall opened later without a network has all it needs.
  useEffect(() => {
    void import('../walls/[code]/second-part').catch(() => undefined);
  }, []);
  const isReceived = handIn?.state === 'received';
  useEffect(() => {
    // The page then shows what the site says of it, such as results that show at once.
    if (isReceived && navigator.onLine) router.refresh();
  }, [isReceived, router]);

  const go = (to: number | null) => {
    window.history.pushState(null, '', to === null ? `/my-work/${work}` : `/my-work/${work}/${to}`);
    window.scrollTo(0, 0);
    top.current?.focus();
  };
  const finish = ({ place: at, code }: RoomWall, done: HandedWork) => {
    keepAnswer(attempt, { ...done, place: at, fingerprint: printOf(code) });
    setSaid(`Wall ${at} is done, and saved on this device.`);
    go(null);
  };
  const handAllIn = () =>
    outbox.put(walls.map(({ place: at, code }) => answerNow(attempt, at, printOf(code))));

  const title = wall && !handIn ? `Wall ${wall.place} of ${walls.length}` : 'Your walls';
  return (
    <div>
      <h2 ref={top} tabIndex={-1} className={styles.top}>
        {title}
      </h2>
      {endsAt !== null && !handIn && (
        <p>
          Your time is over at <When at={endsAt} />. What comes later is taken, and flagged as late.
        </p>
      )}
      {handIn && (
        <HandInStatus
          handIn={handIn}
          sending={outbox.sending}
          onSend={outbox.sendNow}
          onChange={() => go(null)}
        />
      )}
      {outbox.problem && <p role="alert">{outbox.problem}</p>}
      {handIn === undefined && <p role="status">One moment …</p>}
      {handIn !== undefined && (!handIn || handIn.state === 'refused') && wall === null && (
        <WallList
          attempt={attempt}
          walls={walls}
          addressOf={(at) => `/my-work/${work}/${at}`}
          onOpen={go}
          onReopen={(at) => {
            reopenWall(attempt, at);
            go(at);
          }}
          onHandIn={handAllIn}
        />
      )}
      {handIn !== undefined && (!handIn || handIn.state === 'refused') && wall !== null && (
        <>
          <p>
            <button type="button" className="button button-plain" onClick={() => go(null)}>
              All walls
            </button>
          </p>
          <Practice
            key={wall.place}
            code={wall.code}
            label={`Wall ${wall.place} of ${walls.length}: ${wall.kind}`}
            setWork={{
              keptAs: nameOfWall(attempt, wall.place),
              openingsUp,
              onHandIn: (done) => finish(wall, done),
              rows: null,
            }}
          />
        </>
      )}
      <p role="status" className="visually-hidden">
        {said}
      </p>
    </div>
  );
}

/** '/my-work/ID/3' -> 3; null for the list. */
function placeIn(path: string): number | null {
  const place = Number(path.split('/')[3]);
  return Number.isInteger(place) && place > 0 ? place : null;
}

/** Of the wall as this device lays it: the site compares. */
function printOf(code: string): string {
  return fingerprintOf(layWall(parseCode(code)));
}
