'use client';

import type { ReactNode } from 'react';
import { drawingOf } from '../../lib/views/draw-view';
import { DrawContext } from './draw-context';

/** Walls inside it can be seen in every look. */
export function AllViews({ children }: { readonly children: ReactNode }) {
  return <DrawContext value={drawingOf}>{children}</DrawContext>;
}
