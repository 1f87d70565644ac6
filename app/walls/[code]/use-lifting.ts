'use client';

import { useState } from 'react';
import type { Step } from '../../../components/practice/lifted-bar';
import type { OpenWall } from '../open-wall';

/** The unit that is lifted, and the units lifted so far with what their backs showed, the latest first. */
export function useLifting({ firstUnit, unitFrom, courseFrom, backOf, nameOf }: OpenWall) {
  const [lifted, setLifted] = useState(firstUnit);
  const [seen, setSeen] = useState<readonly string[]>([]);
  const lift = (unit: string) => {
    setLifted(unit);
    setSeen((before) => [unit, ...before.filter((each) => each !== unit)]);
  };
  return {
    lifted,
    /** Takes a unit as the one to lift, without lifting it. */
    aim: setLifted,
    lift,
    forget: () => setSeen([]),
    step: ({ along, by }: Step) => lift(along === 'course' ? unitFrom(lifted, by) : courseFrom(lifted, by)),
    record: seen.map((unit) => ({ unit, name: nameOf(unit), back: backOf(unit) })),
  };
}
