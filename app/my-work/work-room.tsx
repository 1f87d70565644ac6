'use client';

import { useRouter } from 'next/navigation';
import { type ReactNode, useEffect, useMemo, useRef, useState, useSyncExternalStore } from 'react';
import { AttemptWalls } from '../../components/hand-in/attempt-walls';
import { HandInStatus } from '../../components/hand-in/hand-in-status';
import { answerNow, keepAnswer, nameOfWall, reopenWall } from '../../components/hand-in/kept-answers';
import { useOutbox } from '../../components/hand-in/use-outbox';
import { When } from '../../components/time/when';
import { fingerprintOf } from '../../lib/wall/print';
import type { HandedWork } from '../walls/[code]/set-work';
import { siteAnswers } from '../walls/[code]/site-answers';
import { fetchForReading } from '../walls/[code]/use-wall-room';
import { WallRoom } from '../walls/[code]/wall-room';
import styles from './my-work.module.css';
import { type RoomWall, useWalls } from './use-walls';

/**
 * The walls of an open attempt: list and wall in one page, so that it goes on without a network once all walls are on the device.
 * No key comes here.
 */
export function WorkRoom(props: {
  readonly attempt: string;
  readonly learner: string;
  readonly walls: readonly RoomWall[];
  /** The walls come to the device whole, all of them. */
  readonly offline: boolean;
  readonly openingsUp: number | null;
  /** When the time limit is over, ms; null without one. */
  readonly endsAt: number | null;
  /** The wall the page was asked for. */
  readonly first: number | null;
  /** What the work is, above the list. */
  readonly children: ReactNode;
}) {
  const { attempt, learner, walls, offline, openingsUp, endsAt, first, children } = props;
  const outbox = useOutbox(attempt, learner);
  const router = useRouter();
  const top = useRef<HTMLHeadingElement>(null);
  const [announcement, announce] = useState('');
  const place = useWallInAddress(first);
  const { handIn } = outbox;
  const isOpen = handIn === null || handIn?.state === 'refused';
  const wall = (isOpen && walls.find((each) => each.place === place)) || null;
  const fetched = useWalls(attempt, walls, wall?.place ?? null, offline);
  const laid = wall && fetched.get(wall.place);
  const look = laid?.look;
  const site = useMemo(
    () => (look && place !== null ? siteAnswers(`/api/attempts/${attempt}/walls/${place}`, look) : undefined),
    [attempt, place, look],
  );
  const fingerprintFor = ({ place, fingerprint }: RoomWall) => {
    const shown = fetched.get(place);
    // A wall that the site draws is not here to be printed.
    return shown && !shown.look ? fingerprintOf(shown.wall) : fingerprint;
  };

  // So that a wall opened later without a network has all it needs.
  useEffect(() => {
    void fetchForReading(offline).catch(() => undefined);
  }, [offline]);
  const isReceived = handIn?.state === 'received';
  useEffect(() => {
    // The page then shows what the site says of it, such as results that show at once.
    if (isReceived && navigator.onLine) router.refresh();
  }, [isReceived, router]);
  const before = useRef(place);
  useEffect(() => {
    if (before.current === place) return;
    before.current = place;
    window.scrollTo(0, 0);
    top.current?.focus();
  }, [place]);

  const finish = (of: RoomWall, work: HandedWork) => {
    const { place: at } = of;
    keepAnswer(attempt, { ...work, place: at, fingerprint: fingerprintFor(of) });
    announce(`Wall ${at} is done, and saved on this device.`);
    window.location.hash = LIST;
  };
  const change = (at: number) => {
    reopenWall(attempt, at);
    window.location.hash = addressOf(at);
  };
  const handAllIn = () => {
    window.location.hash = LIST;
    void outbox.put(walls.map((each) => answerNow(attempt, each.place, fingerprintFor(each))));
  };

  return (
    <div>
      {!wall && children}
      <h2 ref={top} tabIndex={-1} className={styles.top}>
        {wall ? `Wall ${wall.place} of ${walls.length}` : 'Your walls'}
      </h2>
      {endsAt !== null && isOpen && (
        <p>
          Your time is up at <When at={endsAt} />. Work handed in later is accepted, and flagged as late.
        </p>
      )}
      {handIn && <HandInStatus handIn={handIn} sending={outbox.sending} onSend={outbox.sendNow} />}
      {outbox.problem && <p role="alert">{outbox.problem}</p>}
      {handIn === undefined && <p role="status">One moment …</p>}
      {isOpen && !wall && (
        <AttemptWalls
          attempt={attempt}
          walls={walls}
          addressOf={addressOf}
          onChange={change}
          onHandIn={handAllIn}
          onDevice={offline ? fetched.size : null}
        />
      )}
      {wall && (
        <>
          <p>
            <a className="link" href={LIST}>
              All walls
            </a>
          </p>
          {laid ? (
            <WallRoom
              key={wall.place}
              laid={laid}
              label={`Wall ${wall.place} of ${walls.length}: ${wall.kind}`}
              setWork={{
                keptAs: nameOfWall(attempt, wall.place),
                openingsUp,
                site,
                onHandIn: (work) => finish(wall, work),
                rows: null,
              }}
            />
          ) : (
            <p role="status">
              Wall {wall.place} is being fetched. Without a network it comes as soon as there is one again.
            </p>
          )}
        </>
      )}
      <p role="status" className="visually-hidden">
        {announcement}
      </p>
    </div>
  );
}

/**
 * Which wall is open: '#wall-3' in the address, so that the browser's own way back works, and nothing is asked of the network.
 * Null for the list. `first` is meant where the address says nothing.
 */
function useWallInAddress(first: number | null): number | null {
  return useSyncExternalStore(
    subscribe,
    () => placeIn(window.location.hash, first),
    () => first,
  );
}

const LIST = '#walls';

function addressOf(place: number): string {
  return `#wall-${place}`;
}

function placeIn(hash: string, first: number | null): number | null {
  if (hash === LIST) return null;
  const place = Number(/^#wall-([1-9]\d?)$/.exec(hash)?.[1]);
  return Number.isInteger(place) ? place : first;
}

function subscribe(changed: () => void): () => void {
  window.addEventListener('hashchange', changed);
  return () => window.removeEventListener('hashchange', changed);
}
