import { useCallback, useEffect, useRef, useState } from 'react';
import type { Joints } from '../../lib/photo/joint';
import type { Known, Measured } from '../../lib/photo/measure';
import type { Picture } from '../../lib/photo/picture';
import type { Reference } from '../../lib/photo/reference';

/** What the page asks the worker; `turn` tells a late answer from the one that is waited for. */
export type Asked =
  | { readonly kind: 'picture'; readonly picture: Picture }
  | { readonly kind: 'find'; readonly turn: number; readonly reference: Reference; readonly known: Known }
  | {
      readonly kind: 'measure';
      readonly turn: number;
      readonly reference: Reference;
      readonly joints: Joints;
      readonly known: Known;
    };

export type Answer =
  | { readonly turn: number; readonly measured: Measured }
  | { readonly turn: number; readonly problem: string };

export type Outcome =
  | { readonly state: 'nothing' }
  | { readonly state: 'busy'; readonly before: Measured | null }
  | { readonly state: 'measured'; readonly measured: Measured }
  | { readonly state: 'refused'; readonly problem: string };

/** The worker that measures, fetched when a picture is there, and what it said last. */
export function useMeasuring(picture: Picture | null) {
  const [outcome, setOutcome] = useState<Outcome>({ state: 'nothing' });
  const worker = useRef<Worker | null>(null);
  const turn = useRef(0);

  useEffect(() => {
    setOutcome({ state: 'nothing' });
    if (picture === null) return;
    const begun = new Worker(new URL('./photo-worker.ts', import.meta.url), { type: 'module' });
    begun.onmessage = ({ data }: MessageEvent<Answer>) => {
      if (data.turn !== turn.current) return;
      setOutcome(
        'measured' in data
          ? { state: 'measured', measured: data.measured }
          : { state: 'refused', problem: data.problem },
      );
    };
    begun.onerror = () =>
      setOutcome({ state: 'refused', problem: 'this browser cannot measure the picture' });
    begun.postMessage({ kind: 'picture', picture } satisfies Asked);
    worker.current = begun;
    return () => {
      begun.terminate();
      worker.current = null;
    };
  }, [picture]);

  const ask = useCallback((next: (turn: number) => Asked) => {
    turn.current += 1;
    setOutcome((before) => ({ state: 'busy', before: before.state === 'measured' ? before.measured : null }));
    worker.current?.postMessage(next(turn.current));
  }, []);

  const find = useCallback(
    (reference: Reference, known: Known) => ask((now) => ({ kind: 'find', turn: now, reference, known })),
    [ask],
  );
  const measure = useCallback(
    (reference: Reference, joints: Joints, known: Known) =>
      ask((now) => ({ kind: 'measure', turn: now, reference, joints, known })),
    [ask],
  );
  return { outcome, find, measure };
}
