'use client';

import { useDeferredValue, useMemo, useState } from 'react';
import type { LaidBuild } from '../../../lib/drills/build/laid-build';
import type { Values } from '../../../lib/generate/adjustable/sliders';
import type { RuleSetId } from '../../../lib/limits/limit';
import { useFirstInteraction } from '../../walls/use-first-interaction';
import { useLazy } from '../../walls/use-lazy';

const ALL_SOUND: Values = {};

const loadAdjuster = () => import('../../../lib/drills/build/adjuster').then(({ adjusterOf }) => adjusterOf);

/** A wall laid true and what was done to it. The wall shown is the last one that stood. */
export function useBuild({ base, measures: atFirst }: LaidBuild, rules: RuleSetId) {
  const [values, setValues] = useState(ALL_SOUND);
  /** The last values with which the wall stood. */
  const [lastStood, setLastStood] = useState(values);
  const fetched = useLazy(loadAdjuster, useFirstInteraction());
  const adjuster = useMemo(() => fetched.loaded?.(base, rules) ?? null, [fetched.loaded, base, rules]);
  const problem = useMemo(() => adjuster?.problemOf(values) ?? null, [adjuster, values]);
  if (adjuster && problem === null && lastStood !== values) setLastStood(values);
  const shown = useDeferredValue(lastStood);
  const wall = useMemo(() => adjuster?.spoil(shown) ?? base, [adjuster, shown, base]);
  const measures = useMemo(
    () => (adjuster && wall !== base ? adjuster.measure(wall) : atFirst),
    [adjuster, wall, base, atFirst],
  );
  return {
    wall,
    values,
    /** Why the wall does not stand with the values set, or null. */
    problem,
    measures,
    /** The adjuster, while a slider waits for it or after it failed to arrive. */
    loading: adjuster === null && (fetched.failed || values !== lastStood) ? fetched : null,
    compare: (slider: string) => adjuster?.compare(wall, slider) ?? null,
    refusalOf: (slider: string) => adjuster?.refusalOf(slider, values[slider]) ?? null,
    set: (slider: string, value: number) => setValues((old) => ({ ...old, [slider]: value })),
    reset: () => setValues(ALL_SOUND),
  };
}
