'use client';

import { useState } from 'react';
import type { OpenWall } from '../../../lib/wall-page/open-wall';

/** The unit to lift, or the one lifted; the units lifted so far, and how many may be. */
export function useLifting({ firstUnit, nameOf }: OpenWall, opened: readonly string[], most: number) {
  const [unit, aim] = useState(firstUnit);
  return {
    unit,
    name: nameOf(unit),
    isOpen: opened.includes(unit),
    /** Chooses the unit whose back is shown, without lifting it. */
    aim,
    most,
    left: Math.max(0, most - opened.length),
    record: [...opened].reverse().map((each) => ({ unit: each, name: nameOf(each) })),
  };
}
