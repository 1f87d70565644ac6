'use client';

import { type Draw, drawFront } from '../../lib/views/front/draw-front';
import type { View } from '../../lib/views/view';
import { useFirstInteraction } from './use-first-interaction';
import { type Fetched, usePart } from './use-part';
import type { ViewsPart } from './views-part';

const FRONT: View = { kind: 'front' };

export interface LaterViews {
  readonly draw: Draw;
  /** What stands on the screen: the front until the look asked for can be drawn. */
  readonly view: View;
  /** What is still on its way for the look asked for; null when it is drawn. */
  readonly awaited: Fetched<ViewsPart> | null;
}

export const loadViews = () => import('./views-part').then(({ VIEWS_PART }) => VIEWS_PART);

/** The front is drawn at once. What draws every other look is fetched at the reader's first interaction, or when such a look is asked for. */
export function useLaterViews(asked: View): LaterViews {
  const isFront = asked.kind === 'front';
  const fetched = usePart(loadViews, useFirstInteraction() || !isFront);
  const awaited = isFront || fetched.part !== null ? null : fetched;
  // The front goes on being drawn by the same function: drawn anew, it would lose the keyboard's place on it.
  const draw = isFront ? drawFront : (fetched.part?.drawingOf ?? drawFront);
  return { draw, view: awaited ? FRONT : asked, awaited };
}
