'use client';

import { useDeferredValue, useMemo, useState } from 'react';
import type { Values } from '../../../lib/generate/adjustable/sliders';
import type { RuleSetId } from '../../../lib/limits/limit';
import { useFirstInteraction } from '../../walls/use-first-interaction';
import { useLazy } from '../../walls/use-lazy';
import type { LaidBuild } from '../../../lib/drills/build/laid-build';

const ALL_SOUND: Values = {};

const loadHand = () => import('../../../lib/drills/build/adjuster').then(({ handFor }) => handFor);

/** A wall laid true and what was done to it. The wall shown is the last that stands. */
export function useBuild({ base, measures: atFirst }: LaidBuild, rules: RuleSetId) {
  const [values, setValues] = useState(ALL_SOUND);
  /** The last values with which the wall stood. */
  const [standing, setStanding] = useState(values);
  const fetched = useLazy(loadHand, useFirstInteraction());
  const hand = useMemo(() => fetched.loaded?.(base, rules) ?? null, [fetched.loaded, base, rules]);
  const problem = useMemo(() => hand?.problemOf(values) ?? null, [hand, values]);
  if (hand && problem === null && standing !== values) setStanding(values);
  const shown = useDeferredValue(standing);
  const wall = useMemo(() => hand?.spoil(shown) ?? base, [hand, shown, base]);
  const measures = useMemo(
    () => (hand && wall !== base ? hand.measure(wall) : atFirst),
    [hand, wall, base, atFirst],
  );
  return {
    wall,
    values,
    /** Why the wall does not stand with the values set, or null. */
    problem,
    measures,
    /** What spoils and measures, where it is missed: something is set, or it did not arrive. */
    loading: hand === null && (fetched.failed || values !== standing) ? fetched : null,
    compare: (slider: string) => hand?.compare(wall, slider) ?? null,
    refusalOf: (slider: string) => hand?.refusalOf(slider, values[slider]) ?? null,
    set: (slider: string, value: number) => setValues((old) => ({ ...old, [slider]: value })),
    reset: () => setValues(ALL_SOUND),
  };
}
