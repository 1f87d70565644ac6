'use client';

import { useEffect, useState } from 'react';
import { parseLaid } from '../../lib/wall-page/read-laid';
import type { WallToRead } from '../../lib/wall-page/wall-to-read';

export interface RoomWall {
  readonly place: number;
  /** A WallToRead as JSON, in gzip and base64, in the page for one wall at most; null where it is fetched. */
  readonly packed: string | null;
  /** Hash of the wall that was given. */
  readonly fingerprint: string;
  /** What kind of wall it is, in words. */
  readonly kind: string;
}

/** Between two walls that nobody waits for: a whole college begins in the same minute. */
const PAUSE_MS = 3_000;
/** Before another try, when the network gave nothing. */
const RETRY_MS = 5_000;

/**
 * The walls of an attempt that are on this device, by place. The page may bring one of them; the others are fetched one
 * by one, first the one that is `wanted`; `all`, so that the work goes on without a network.
 */
export function useWalls(
  attempt: string,
  walls: readonly RoomWall[],
  wanted: number | null,
  /** Whether every wall is to be on this device; else only those that were opened. */
  all: boolean,
): ReadonlyMap<number, WallToRead> {
  const [fetched, setFetched] = useState<ReadonlyMap<number, WallToRead>>(new Map());
  const [tries, setTries] = useState(0);
  const missing = walls.map(({ place }) => place).filter((place) => !fetched.has(place));
  const isWanted = wanted !== null && missing.includes(wanted);
  const next = isWanted ? wanted : all ? missing[0] : undefined;
  const brought = walls.find(({ place }) => place === next)?.packed ?? null;
  // A browser that cannot unpack it asks for it.
  const packed = 'DecompressionStream' in globalThis ? brought : null;

  // biome-ignore lint/correctness/useExhaustiveDependencies: another try is what `tries` is for
  useEffect(() => {
    if (next === undefined) return;
    const aborted = new AbortController();
    const again = () => setTries((count) => count + 1);
    let timer: ReturnType<typeof setTimeout>;
    const fetchNext = async () => {
      try {
        const text = packed === null ? asked(attempt, next, aborted.signal) : unpacked(packed);
        const laid = parseLaid(await text);
        setFetched((before) => new Map([...before, [next, laid]]));
      } catch {
        if (!aborted.signal.aborted) timer = setTimeout(again, RETRY_MS);
      }
    };
    timer = setTimeout(fetchNext, isWanted || packed !== null ? 0 : PAUSE_MS);
    window.addEventListener('online', again);
    return () => {
      aborted.abort();
      clearTimeout(timer);
      window.removeEventListener('online', again);
    };
  }, [attempt, next, packed, isWanted, tries]);
  return fetched;
}

async function asked(attempt: string, place: number, signal: AbortSignal): Promise<string> {
  const answer = await fetch(`/api/attempts/${attempt}/walls/${place}`, { signal });
  if (!answer.ok) throw new Error(`answered ${answer.status}`);
  return answer.text();
}

/** The text of a base64 of a gzip. */
async function unpacked(packed: string): Promise<string> {
  const bytes = Uint8Array.from(atob(packed), (sign) => sign.charCodeAt(0));
  return new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'))).text();
}
