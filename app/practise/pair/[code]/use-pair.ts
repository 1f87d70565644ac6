'use client';

import { useEffect, useMemo, useState } from 'react';
import { useRecorded } from '../../../../components/record/use-recorded';
import { keepText, readKept } from '../../../../components/wall-page/kept-text';
import { formatPair, parsePair } from '../../../../lib/drills/pair/kept-pair';
import type { Pair } from '../../../../lib/drills/pair/measured-pair';
import type { PairMark } from '../../../../lib/drills/pair/pair-rows';
import type { Aim } from '../../../../lib/views/pointing/pick';
import { pickedPart } from '../../../../lib/wall-page/nearby-parts';
import { openWallOf } from '../../../../lib/wall-page/open-wall';
import { useLazy } from '../../../walls/use-lazy';

const loadFaults = () =>
  import('../../../../lib/wall-page/fault-choices').then(({ FAULT_CHOICES }) => FAULT_CHOICES);
const loadKey = () =>
  Promise.all([
    import('../../../../lib/drills/pair/pair-rows'),
    import('../../../../components/drills/pair/pair-result'),
  ]).then(([{ pairRows }, { PairResult }]) => ({ pairRows, PairResult }));

/** Everything that happens on a pair: which wall is pointed to, what is marked on it, and the key once asked for. */
export function usePair(code: string, pair: Pair) {
  const opened = useMemo(
    () => ({ sound: openWallOf(pair.sound), spoiled: openWallOf(pair.spoiled) }),
    [pair],
  );
  const [side, setSide] = useState<1 | 2 | null>(null);
  const [selection, setSelection] = useState<{ readonly part: string; readonly aim: Aim | null } | null>(
    null,
  );
  const [marks, setMarks] = useState<readonly PairMark[]>([]);
  const [isDone, setIsDone] = useState(false);
  const openOf = (number: 1 | 2) => (pair.spoiledIs === number ? opened.spoiled : opened.sound);
  const pointed = side === null ? null : openOf(side);
  const [ready, setReady] = useState(false);
  const keptAs = `pair-work:${code}`;

  useEffect(() => {
    const { sound, spoiled } = opened;
    const partsOn = (number: 1 | 2) => (number === pair.spoiledIs ? spoiled : sound).parts;
    const work = parsePair(readKept(keptAs), (number, id) => partsOn(number).has(id));
    if (work) {
      setSide(work.side);
      setMarks(work.marks);
    }
    setReady(true);
  }, [keptAs, opened, pair]);

  useEffect(() => {
    if (ready && side !== null) keepText(keptAs, formatPair({ side, marks }));
  }, [ready, keptAs, side, marks]);

  const faults = useLazy(loadFaults, side !== null);
  const key = useLazy(loadKey, isDone);
  const rows = useMemo(
    () => (isDone && key.loaded ? key.loaded.pairRows(pair, marks, side === pair.spoiledIs) : null),
    [isDone, key.loaded, pair, marks, side],
  );
  useRecorded(
    rows && {
      kind: 'pair',
      wall: code,
      topic: pair.brief.topic,
      difficulty: pair.brief.difficulty,
      marks,
      ...rows.met,
    },
  );
  return {
    pair,
    opened,
    side,
    picked: selection?.part ?? null,
    marks,
    rows,
    faults,
    /** The key, while it is being fetched. */
    loading: isDone && rows === null ? key : null,
    Result: key.loaded?.PairResult ?? null,
    openOf,
    pointed,
    pickedPart:
      pointed === null || selection === null ? null : pickedPart(pointed, selection.part, selection.aim),
    tell: () => {
      setSelection(null);
      setIsDone(true);
    },
    pick: (part: string, aim: Aim | null) => setSelection({ part, aim }),
    /** Points to a wall. Marks belong to the wall they were made on. */
    pointTo: (number: 1 | 2) => {
      if (number !== side) setMarks([]);
      setSide(number);
      setSelection(null);
    },
    mark: (part: string, fault: PairMark['fault']) => {
      setMarks([...marks.filter((each) => each.part !== part || each.fault !== fault), { part, fault }]);
      setSelection(null);
    },
    remove: (index: number) => setMarks(marks.filter((_, at) => at !== index)),
    again: () => {
      setIsDone(false);
      setMarks([]);
      setSide(null);
    },
  };
}
