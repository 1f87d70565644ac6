'use client';

import { useMemo, useState } from 'react';
import { useRecorded } from '../../../../components/record/use-recorded';
import { placesFor } from '../../../../components/wall-page/faults-at';
import type { GuidedRow } from '../../../../lib/drills/guided/guided-rows';
import type { Topic } from '../../../../lib/generate/topics';
import { CHECKS, type CheckId } from '../../../../lib/inspect/finding';
import type { FaultMet } from '../../../../lib/learning/attempt';
import type { RuleSetId } from '../../../../lib/limits/limit';
import type { Aim } from '../../../../lib/views/pointing/pick';
import { pickedPart } from '../../../../lib/wall-page/nearby-parts';
import type { OpenWall } from '../../../../lib/wall-page/open-wall';
import { useLazy } from '../../../walls/use-lazy';

const loadFoundBy = () => import('../../../../lib/drills/guided/found-by').then(({ foundBy }) => foundBy);

/** What a guided wall is, by its code. */
export interface GuidedWall {
  readonly code: string;
  readonly topic: Topic;
  readonly difficulty: number;
  readonly rules: RuleSetId;
}

/** What a guided wall shows, what the reader answered, and which answers are right. */
export function useGuided(
  open: OpenWall,
  { code, topic, difficulty, rules }: GuidedWall,
  rows: readonly GuidedRow[],
  step: 1 | 2,
) {
  const [named, checkNames] = useState<readonly (string | null)[] | null>(null);
  const [places, setPlaces] = useState<readonly (string | null)[]>(rows.map(() => null));
  const [pointed, setPointed] = useState(false);
  const [active, setActive] = useState(1);
  const foundBy = useLazy(loadFoundBy, pointed);
  const right = useMemo(() => {
    if (named) return rows.map(({ finding }, index) => named[index] === finding.check);
    return pointed && foundBy.loaded ? foundBy.loaded(open, rules, rows, places) : null;
  }, [named, pointed, foundBy.loaded, open, rules, rows, places]);

  useRecorded(
    right && {
      kind: 'guided wall',
      ...{ wall: code, topic, difficulty, marks: [], falseCalls: [] },
      faults: rows.map(({ finding: { check, hazard } }, index) => ({
        ...{ fault: check, hazard, sure: null, readRight: null },
        ...outcomeOf(check, right[index] === true, named?.[index] ?? null),
      })),
    },
  );

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

function outcomeOf(
  fault: CheckId,
  isRight: boolean,
  named: string | null,
): Pick<FaultMet, 'outcome' | 'named'> {
  if (isRight) return { outcome: 'found', named: fault };
  const other = CHECKS.find((check) => check === named);
  return other ? { outcome: 'wrong name', named: other } : { outcome: 'missed', named: null };
}
