'use client';

import { type Draw, drawFront } from '../../lib/views/front/draw-front';
import type { View } from '../../lib/views/view';
import { useFirstInteraction } from './use-first-interaction';
import { type Lazy, useLazy } from './use-lazy';

const FRONT: View = { kind: 'front' };

export interface LaterViews {
  readonly draw: Draw;
  /** The view on the screen: the front until the one asked for can be drawn. */
  readonly view: View;
  /** What draws the view asked for, while it is on its way; null once it is here. */
  readonly loading: Lazy<Draw> | null;
}

/** What draws every view but the front. */
export const loadViews = () => import('../../lib/views/draw-view').then(({ drawingOf }) => drawingOf);

/** The front is drawn at once. What draws the other views is fetched at the reader's first interaction, or when one is asked for. */
export function useLaterViews(asked: View): LaterViews {
  const isFront = asked.kind === 'front';
  const views = useLazy(loadViews, useFirstInteraction() || !isFront);
  const loading = isFront || views.loaded !== null ? null : views;
  // The front goes on being drawn by the same function: with another one the keyboard would lose its place on it.
  const draw = isFront ? drawFront : (views.loaded ?? drawFront);
  return { draw, view: loading ? FRONT : asked, loading };
}
