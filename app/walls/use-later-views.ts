'use client';

import type { AskedOfSite } from '../../components/asked/asked-of-site';
import type { Drawing } from '../../lib/drawing/shape';
import { type Draw, drawFront } from '../../lib/views/front/draw-front';
import type { View } from '../../lib/views/view';
import { useFirstInteraction } from './use-first-interaction';
import { type Lazy, useLazy } from './use-lazy';

const FRONT: View = { kind: 'front' };

export interface LaterViews {
  readonly draw: Draw | AskedOfSite<Drawing>;
  /** The view on the screen: the front until the one asked for can be drawn. */
  readonly view: View;
  /** What draws the view asked for, while it is on its way; null once it is here. */
  readonly loading: Lazy<Draw> | null;
}

/** What draws every view but the front. */
export const loadViews = () => import('../../lib/views/draw-view').then(({ drawingOf }) => drawingOf);

/**
 * The front is drawn at once. What draws the other views is fetched at the reader's first interaction, or when one is asked for; where the
 * `site` draws, it never is.
 */
export function useLaterViews(asked: View, site: AskedOfSite<Drawing> | null = null): LaterViews {
  const isFront = asked.kind === 'front';
  const isWanted = useFirstInteraction() || !isFront;
  const views = useLazy(loadViews, site === null && isWanted);
  if (site !== null) return { draw: site, view: asked, loading: null };
  const loading = isFront || views.loaded !== null ? null : views;
  // The front goes on being drawn by the same function: with another one the keyboard would lose its place on it.
  const draw = isFront ? drawFront : (views.loaded ?? drawFront);
  return { draw, view: loading ? FRONT : asked, loading };
}
