'use client';

import { type MouseEvent, type RefObject, useMemo, useRef, useState } from 'react';
import type { Drawing } from '../../../lib/drawing/shape';
import type { Point } from '../../../lib/geometry/polygon';
import type { Picked } from '../../../lib/views/pointing/pick';
import type { Wall } from '../../../lib/wall/model';
import type { Part } from '../../../lib/wall/parts';
import { mmPerPixel, sheetPoint } from '../to-screen';
import { tapAt, touchOf } from './tap';
import type { Gestures } from './use-gestures';
import type { Seen } from './use-seen-box';

/** Two taps make a double tap when they come within this time and of this distance, ms and px. */
const DOUBLE = { ms: 300, px: 30 };
/** A double tap comes nearer by this factor. */
const DOUBLE_NEARER = 2;

/** Clicks on a drawing: a part is picked, or a finger comes nearer first where it could not tell parts apart. Two taps at once come nearer and pick nothing. */
export function useTaps(
  svg: RefObject<SVGSVGElement | null>,
  {
    wall,
    parts: all,
    unitsAlone,
    drawing,
    seen,
    gestures,
  }: {
    readonly wall: Wall;
    readonly parts: ReadonlyMap<string, Part>;
    /** A tap means a unit, whatever lies nearer. */
    readonly unitsAlone: boolean;
    readonly drawing: Drawing;
    readonly seen: Seen;
    readonly gestures: Gestures;
  },
  canPick: boolean,
  onPart: (picked: Picked, at: Point) => void,
) {
  const parts = useMemo(
    () => (unitsAlone ? new Map([...all].filter(([, { kind }]) => kind === 'unit')) : all),
    [unitsAlone, all],
  );
  const [notice, say] = useState('');
  const last = useRef({ at: Number.NEGATIVE_INFINITY, x: 0, y: 0 });
  const click = ({ clientX, clientY, timeStamp }: MouseEvent) => {
    const kind = gestures.clickKind();
    const screen = svg.current?.getBoundingClientRect();
    if (kind === 'drag' || screen === undefined) return;
    const [x, y] = sheetPoint(seen.drawn, screen, clientX, clientY);
    const before = last.current;
    const isSecond =
      timeStamp - before.at <= DOUBLE.ms &&
      Math.abs(clientX - before.x) <= DOUBLE.px &&
      Math.abs(clientY - before.y) <= DOUBLE.px;
    last.current = { at: isSecond ? Number.NEGATIVE_INFINITY : timeStamp, x: clientX, y: clientY };
    if (isSecond) {
      say('');
      seen.zoom(DOUBLE_NEARER, [x, y]);
      return;
    }
    const at = { x, y, mmPerPx: mmPerPixel(seen.drawn, screen), courseHigh: wall.gauge };
    const tap = tapAt(drawing, parts, at, canPick && kind === 'touch' ? touchOf() : 'mouse');
    if (tap?.kind === 'nearer') {
      say('Closer. Tap again to pick.');
      seen.zoom(tap.by, [x, y]);
    } else if (tap?.kind === 'part') {
      say('');
      onPart(tap.picked, [x, y]);
    } else {
      say(canPick ? 'There is nothing to mark there. Tap a brick or a joint.' : '');
    }
  };
  return {
    click,
    /** What the last tap did, if it picked nothing. */
    notice,
    hush: () => say(''),
  };
}
