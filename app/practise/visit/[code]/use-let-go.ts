'use client';

import { useMemo, useState } from 'react';
import { loadsOn, massOf } from '../../../../lib/failing/margins/loads';
import { marginsOf } from '../../../../lib/failing/margins/margins';
import { letGo, turnsOf } from '../../../../lib/failing/margins/next';
import { fallEnergy } from '../../../../lib/trade/falling';
import type { OpenVisit } from '../../../../lib/visit/open-visit';

/** The wall after so many more units have gone, and the one that is held least then. */
export function useLetGo({ failing: called }: OpenVisit, isTold: boolean) {
  const [losses, setLosses] = useState(0);
  return useMemo(() => {
    if (!isTold) return null;
    const { failing, lost } = letGo(called, losses);
    const margins = marginsOf(failing);
    const part = turnsOf(failing, margins)[0]?.parts[0];
    const next = margins.find((each) => each.part === part) ?? null;
    const unit = failing.survey.wall.units.find(({ id }) => id === part);
    const height = Math.max(0, unit?.y ?? 0);
    return {
      ...{ failing, lost, next, height, onGo: setLosses },
      load: (part && loadsOn(failing).get(part)) ?? 0,
      energy: unit === undefined ? 0 : fallEnergy(massOf(unit), height),
    };
  }, [called, isTold, losses]);
}
