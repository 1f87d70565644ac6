'use client';

import { useMemo, useState } from 'react';
import type { StreetAct, TodayAct } from '../../../../lib/visit/acts';
import { gradeVisit, type VisitMark } from '../../../../lib/visit/grade-visit';
import type { CauseAnswer } from '../../../../lib/visit/judge-cause';
import type { OpenVisit } from '../../../../lib/visit/open-visit';
import { readingOf } from '../../../../lib/visit/readings';
import type { Condition } from '../../../../lib/visit/shown';
import { parsePartId, type UnitId } from '../../../../lib/wall/part-id';

export type Stage = 'street' | 'face' | 'said';

/** Everything that is done and said on a visit; once said, what it comes to. */
export function useVisit(visit: OpenVisit) {
  const { failing, risk } = visit;
  const [stage, setStage] = useState<Stage>('street');
  const [street, setStreet] = useState<readonly StreetAct[]>([]);
  const [picked, setPicked] = useState<UnitId | null>(null);
  const [touched, setTouched] = useState<readonly UnitId[]>([]);
  const [marks, setMarks] = useState<readonly VisitMark[]>([]);
  const [saidNext, sayNext] = useState<'unit' | 'none' | null>(null);
  const [next, setNext] = useState<UnitId | null>(null);
  const [cause, sayCause] = useState<CauseAnswer | null>(null);
  const [today, setToday] = useState<readonly TodayAct[]>([]);
  const reading = useMemo(() => (picked === null ? null : readingOf(failing, picked)), [failing, picked]);
  const isNextSaid = saidNext === 'none' || (saidNext === 'unit' && next !== null);
  const result = useMemo(
    () =>
      stage !== 'said' || cause === null
        ? null
        : gradeVisit(
            { street, touched, marks, next: saidNext === 'unit' ? next : null, cause, today },
            visit,
          ),
    [stage, street, touched, marks, saidNext, next, cause, today, visit],
  );
  const isMarked = (condition: Condition, part: UnitId) => (each: VisitMark) =>
    each.condition === condition && each.part === part;
  return {
    stage,
    street,
    setStreet,
    picked,
    reading,
    marks,
    saidNext,
    sayNext,
    next,
    cause,
    sayCause,
    today,
    setToday,
    result,
    goTo: setStage,
    pick: (part: string) => {
      if (parsePartId(part)?.kind === 'unit') setPicked(part as UnitId);
    },
    /** Marks the unit picked, or takes the mark off it. */
    mark: (condition: Condition) => {
      if (picked === null) return;
      const same = isMarked(condition, picked);
      setMarks(
        marks.some(same) ? marks.filter((each) => !same(each)) : [...marks, { condition, part: picked }],
      );
    },
    touch: () => {
      if (picked !== null && !touched.includes(picked)) setTouched([...touched, picked]);
    },
    touchOf: (part: UnitId) =>
      !touched.includes(part) ? null : risk.untouchable.has(part) ? ('never' as const) : ('firm' as const),
    takeNext: () => setNext(picked),
    /** What is still to be said before the visit is told; null when all is. */
    lacking: !isNextSaid
      ? 'Say which unit may come down next, or that none hangs loose.'
      : cause === null
        ? 'Say what the evidence allows as the cause, or that it cannot be told yet.'
        : null,
  };
}
