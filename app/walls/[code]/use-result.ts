'use client';

import { useMemo } from 'react';
import type { ResultRows } from '../../../components/result/result-rows';
import type { Work } from '../../../components/wall-page/practice-state';
import type { RuleSetId } from '../../../lib/limits/limit';
import type { OpenWall } from '../open-wall';
import type { MarkerPart } from './marker-part';

/** The result once the work is handed in and what marks it is here, or the sentence that says why it cannot be marked; null before. */
export function useResult(
  { phase, marks }: Work,
  { wall, survey, parts }: OpenWall,
  rules: RuleSetId,
  marker: MarkerPart | null,
): { readonly rows: ResultRows | null; readonly problem: string | null } | null {
  return useMemo(() => {
    if (phase !== 'handed in' || marker === null) return null;
    try {
      const result = marker.grade(marker.keyOf({ wall, survey, parts }, rules), marks);
      return { rows: marker.rowsOf(result, wall, rules, parts), problem: null };
    } catch (error) {
      if (!(error instanceof marker.GradingError)) throw error;
      return { rows: null, problem: `This cannot be marked: ${error.message}.` };
    }
  }, [phase, marks, wall, survey, parts, rules, marker]);
}
