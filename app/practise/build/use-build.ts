'use client';

import { useDeferredValue, useEffect, useMemo, useState } from 'react';
import {
  type Slider,
  slidersOf,
  spoilByHand,
  type Values,
} from '../../../lib/generate/by-hand/spoil-by-hand';
import { layTrue } from '../../../lib/generate/by-hand/true-wall';
import type { RuleSetId } from '../../../lib/limits/limit';
import { type Wall, WallError } from '../../../lib/wall/model';
import { refuseUnstandable } from '../../../lib/wall/stands';
import type { BaseChoice } from './bases';

type KeyPart = typeof import('./build-key');

interface Built {
  readonly values: Values;
  /** The last values with which the wall stood. */
  readonly standing: Values;
  /** Why it does not stand with `values`, or null. */
  readonly problem: string | null;
}

/** A wall laid true and what was done to it. The wall shown is the last that stands. */
export function useBuild({ kind, masonry }: BaseChoice, rules: RuleSetId) {
  const base = useMemo(() => layTrue(kind, masonry, rules), [kind, masonry, rules]);
  const sliders = useMemo(() => slidersOf(base, rules), [base, rules]);
  const [state, setState] = useState<Built>({ values: {}, standing: {}, problem: null });
  const shown = useDeferredValue(state.standing);
  const wall = useMemo(() => spoilByHand(base, sliders, shown), [base, sliders, shown]);
  const [key, setKey] = useState<KeyPart | null>(null);
  const [failed, setFailed] = useState(false);
  const fetchKey = () => {
    setFailed(false);
    import('./build-key').then(setKey, () => setFailed(true));
  };
  useEffect(fetchKey, []);
  const measures = useMemo(() => key?.measuresOf(wall, sliders, rules) ?? null, [key, wall, sliders, rules]);
  return {
    base,
    wall,
    sliders,
    values: state.values,
    problem: state.problem,
    measures,
    failed,
    fetchKey,
    compare: (slider: Slider) => key?.comparedFor(wall, base, slider) ?? [],
    refusalOf: ({ id, fitted }: Slider) => {
      const value = state.values[id];
      return value === undefined ? null : (fitted.refuse?.(value) ?? null);
    },
    set: (id: string, value: number) =>
      setState(({ values, standing }) => {
        const next = { ...values, [id]: value };
        const problem = problemOf(base, sliders, next);
        return { values: next, standing: problem === null ? next : standing, problem };
      }),
    reset: () => setState({ values: {}, standing: {}, problem: null }),
  };
}

function problemOf(base: Wall, sliders: readonly Slider[], values: Values): string | null {
  for (const { id, fitted } of sliders) {
    const value = values[id];
    const refusal = value === undefined ? null : fitted.refuse?.(value);
    if (refusal) return refusal;
  }
  try {
    refuseUnstandable(spoilByHand(base, sliders, values));
    return null;
  } catch (error) {
    if (!(error instanceof WallError)) throw error;
    return 'No such wall can be laid: two units would be in one place, or one would hang outside the wall.';
  }
}
