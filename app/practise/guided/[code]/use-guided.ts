'use client';

import { useCallback, useEffect, useState } from 'react';
import { placesFor } from '../../../../components/practice/part-facts';
import type { Brief } from '../../../../lib/generate/brief';
import type { OpenWall } from '../../../walls/open-wall';
import { pickedPart } from '../../picked-part';
import type { GuidedRow } from './guided-key';

/** What a guided wall shows, what the reader has said of it, and how that stands. */
export function useGuided(open: OpenWall, brief: Brief, step: 1 | 2) {
  const { wall } = open;
  const [rows, setRows] = useState<readonly GuidedRow[] | null>(null);
  const [failed, setFailed] = useState(false);
  const [right, setRight] = useState<readonly boolean[] | null>(null);
  const [places, setPlaces] = useState<readonly (string | null)[]>([]);
  const [active, setActive] = useState(1);

  const fetchKey = useCallback(() => {
    setFailed(false);
    import('./guided-key').then(
      ({ guidedRows }) => {
        const found = guidedRows(wall, brief);
        setRows(found);
        setPlaces(found.map(() => null));
      },
      () => setFailed(true),
    );
  }, [wall, brief]);
  useEffect(fetchKey, [fetchKey]);

  const pick = (id: string) => {
    const fault = rows?.[active - 1]?.choice;
    const picked = pickedPart(open, id);
    if (!picked || !fault) return;
    const at = placesFor(fault, picked)[0]?.id ?? id;
    setPlaces(places.map((each, index) => (index === active - 1 ? at : each)));
  };
  return {
    rows,
    failed,
    fetchKey,
    isTold: rows !== null && (step === 1 || right !== null),
    right,
    places,
    active,
    setActive,
    pick,
    checkNames: (named: readonly (string | null)[]) =>
      setRight((rows ?? []).map(({ finding }, index) => named[index] === finding.check)),
    checkPlaces: () => {
      import('./guided-key').then(
        ({ foundBy }) => setRight(foundBy(wall, brief, rows ?? [], places)),
        () => setFailed(true),
      );
    },
  };
}
