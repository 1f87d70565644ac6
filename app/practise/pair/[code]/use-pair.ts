'use client';

import { useCallback, useEffect, useMemo, useState } from 'react';
import { keepText, readKept } from '../../../../components/practice/kept-text';
import type { FaultChoice } from '../../../../components/practice/part-facts';
import type { PairRows } from '../../../../components/practise/pair-rows';
import { parseCode } from '../../../../lib/generate/wall-code';
import { openWallOf } from '../../../walls/open-wall';
import { pairOf } from '../../faulty-brief';
import { pickedPart } from '../../picked-part';
import type { PairMark } from '../pair-key';
import { formatPair, parsePair } from './kept-pair';

/** Everything that happens on a pair: which wall is pointed to, what is marked on it, and the key once asked for. */
export function usePair(code: string) {
  const brief = useMemo(() => parseCode(code), [code]);
  const pair = useMemo(() => pairOf(brief), [brief]);
  const opened = useMemo(
    () => ({ sound: openWallOf(pair.sound), spoiled: openWallOf(pair.spoiled) }),
    [pair],
  );
  const [side, setSide] = useState<1 | 2 | null>(null);
  const [picked, setPicked] = useState<string | null>(null);
  const [marks, setMarks] = useState<readonly PairMark[]>([]);
  const [rows, setRows] = useState<PairRows | null>(null);
  const [failed, setFailed] = useState(false);
  const [faults, setFaults] = useState<readonly FaultChoice[] | null>(null);
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

  const isPointed = side !== null;
  const fetchNames = useCallback(() => {
    setFailed(false);
    import('../../../walls/fault-choices').then(
      ({ FAULT_CHOICES }) => setFaults(FAULT_CHOICES),
      () => setFailed(true),
    );
  }, []);
  useEffect(() => {
    if (isPointed) fetchNames();
  }, [isPointed, fetchNames]);
  const tell = () => {
    if (side === null) return;
    setFailed(false);
    import('../pair-key').then(
      ({ pairRows }) => {
        setPicked(null);
        setRows(pairRows(pair, brief.rules, marks, side === pair.spoiledIs));
      },
      () => setFailed(true),
    );
  };
  return {
    brief,
    pair,
    opened,
    side,
    picked,
    marks,
    rows,
    failed,
    faults,
    fetchNames,
    openOf,
    pointed,
    pickedPart: pointed === null || picked === null ? null : pickedPart(pointed, picked),
    tell,
    pick: setPicked,
    /** Points to a wall. Marks belong to the wall they were made on. */
    pointTo: (number: 1 | 2) => {
      if (number !== side) setMarks([]);
      setSide(number);
      setPicked(null);
    },
    mark: (part: string, fault: PairMark['fault']) => {
      setMarks([...marks.filter((each) => each.part !== part || each.fault !== fault), { part, fault }]);
      setPicked(null);
    },
    remove: (index: number) => setMarks(marks.filter((_, at) => at !== index)),
    again: () => {
      setRows(null);
      setMarks([]);
      setSide(null);
    },
  };
}
