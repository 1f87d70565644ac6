'use client';

import { useMemo, useState } from 'react';
import { placesFor } from '../../../../components/wall-page/faults-at';
import type { GuidedRow } from '../../../../lib/drills/guided/guided-rows';
import type { RuleSetId } from '../../../../lib/limits/limit';
import type { Aim } from '../../../../lib/views/pointing/pick';
import { pickedPart } from '../../../../lib/wall-page/nearby-parts';
import type { OpenWall } from '../../../../lib/wall-page/open-wall';
import { useLazy } from '../../../walls/use-lazy';

const loadFoundBy = () => import('../../../../lib/drills/guided/found-by').then(({ foundBy }) => foundBy);

/** What a guided wall shows, what the reader answered, and which answers are right. */
export function useGuided(open: OpenWall, rules: RuleSetId, rows: readonly GuidedRow[], step: 1 | 2) {
  const [named, checkNames] = useState<readonly (string | null)[] | null>(null);
  const [places, setPlaces] = useState<readonly (string | null)[]>(rows.map(() => null));
  const [pointed, setPointed] = useState(false);
  const [active, setActive] = useState(1);
  const foundBy = useLazy(loadFoundBy, pointed);
  const right = useMemo(() => {
    if (named) return rows.map(({ finding }, index) => named[index] === finding.check);
    return pointed && foundBy.loaded ? foundBy.loaded(open, rules, rows, places) : null;
  }, [named, pointed, foundBy.loaded, open, rules, rows, places]);

  const pick = (id: string, aim: Aim | null) => {
    const fault = rows[active - 1]?.choice;
    const picked = pickedPart(open, id, aim);
    if (!picked || !fault) return;
    const at = placesFor(fault, picked)[0]?.id ?? id;
    setPlaces(places.map((each, index) => (index === active - 1 ? at : each)));
  };
  return {
    rows,
    isTold: step === 1 || right !== null,
    right,
    places,
    active,
    setActive,
    pick,
    checkNames,
    checkPlaces: () => setPointed(true),
    /** What checks the places, while it is being fetched. */
    loading: pointed && right === null ? foundBy : null,
  };
}
