'use client';

import { type MouseEvent, type RefObject, useMemo, useState } from 'react';
import type { Drawing } from '../../../lib/drawing/shape';
import type { Point } from '../../../lib/geometry/polygon';
import type { Picked } from '../../../lib/views/pointing/pick';
import type { Wall } from '../../../lib/wall/model';
import { partsOf } from '../../../lib/wall/parts';
import { mmPerPixel, sheetPoint } from '../to-screen';
import { tapAt, touchOf } from './tap';
import type { Gestures } from './use-gestures';
import type { Seen } from './use-seen-box';

/** Clicks on a drawing: a part is picked, or a finger comes nearer first where it could not tell parts apart. */
export function useTaps(
  svg: RefObject<SVGSVGElement | null>,
  {
    wall,
    drawing,
    seen,
    gestures,
  }: {
    readonly wall: Wall;
    readonly drawing: Drawing;
    readonly seen: Seen;
    readonly gestures: Gestures;
  },
  canPick: boolean,
  onPart: (picked: Picked, at: Point) => void,
) {
  const parts = useMemo(() => partsOf(wall), [wall]);
  const [closer, setCloser] = useState(false);
  const click = ({ clientX, clientY }: MouseEvent) => {
    const kind = gestures.clickKind();
    const screen = svg.current?.getBoundingClientRect();
    if (kind === 'drag' || screen === undefined) return;
    const [x, y] = sheetPoint(seen.drawn, screen, clientX, clientY);
    const at = { x, y, mmPerPx: mmPerPixel(seen.drawn, screen), courseHigh: wall.gauge };
    const tap = tapAt(drawing, parts, at, canPick && kind === 'touch' ? touchOf() : 'mouse');
    setCloser(tap?.kind === 'nearer');
    if (tap?.kind === 'nearer') seen.zoom(tap.by, [x, y]);
    if (tap?.kind === 'part') onPart(tap.picked, [x, y]);
  };
  return {
    click,
    /** The last tap brought the drawing nearer, and picked nothing. */
    closer,
    forget: () => setCloser(false),
  };
}
