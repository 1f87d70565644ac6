'use client';

import { useContext, useMemo, useState } from 'react';
import type { Drawing } from '../../../lib/drawing/shape';
import type { LengthSystem } from '../../../lib/units';
import { viewText } from '../../../lib/views/parse-view';
import type { View } from '../../../lib/views/view';
import type { ViewingConditions } from '../../../lib/views/viewing-conditions';
import type { SurveyedWall } from '../../../lib/wall/surveyed';
import { type Asked, useAsked } from '../../asked/use-asked';
import { useSame } from '../use-same';
import { DrawContext } from './draw-context';

/** A drawing with what it is of. */
interface Seen {
  readonly drawing: Drawing;
  readonly view: View;
  readonly viewing: ViewingConditions;
}

export interface Look {
  /** What was asked for; while the site draws that, the look before it; null before the first. */
  readonly seen: Seen | null;
  /** Whether its parts have measures to be told. Of a wall that the site draws they have none. */
  readonly tells: boolean;
  /** What the site was asked for, while it is not here. */
  readonly missing: Asked<Drawing> | null;
}

/** How the site is asked for a look. */
export function lookQuestion(view: View, system: LengthSystem, { distance, sun }: ViewingConditions): string {
  return new URLSearchParams({
    view: viewText(view),
    system,
    distance,
    ...(sun === null ? {} : { sun: String(sun) }),
  }).toString();
}

/** The look at a wall, drawn here or by the site. */
export function useLook(
  surveyed: SurveyedWall,
  asked: View,
  system: LengthSystem,
  { distance, sun }: ViewingConditions,
): Look {
  const source = useContext(DrawContext);
  const view = useSame(asked);
  const viewing = useMemo(() => ({ distance, sun }), [distance, sun]);
  const isHere = typeof source === 'function';
  const drawn = useMemo(
    () => (isHere ? source(surveyed, view, system, viewing) : null),
    [isHere, source, surveyed, view, system, viewing],
  );
  const sent = useAsked(isHere ? null : source, isHere ? null : lookQuestion(view, system, viewing));
  const [last, keep] = useState<Seen | null>(null);
  const drawing = drawn ?? sent.answer;
  const seen = useMemo(() => drawing && { drawing, view, viewing }, [drawing, view, viewing]);
  if (!isHere && seen !== null && seen !== last) keep(seen);
  return { seen: seen ?? last, tells: isHere, missing: drawing === null ? sent : null };
}
