'use client';

import { type PointerEvent, type RefObject, useEffect, useRef } from 'react';
import { sheetPoint } from './to-screen';
import type { Seen } from './use-seen-box';

/** A finger that moves no further than this still taps, px. */
const TAP_REACH = 8;

export interface Gestures {
  readonly onPointerDown: (event: PointerEvent<SVGSVGElement>) => void;
  readonly onPointerMove: (event: PointerEvent<SVGSVGElement>) => void;
  readonly onPointerUp: (event: PointerEvent<SVGSVGElement>) => void;
  readonly onPointerCancel: (event: PointerEvent<SVGSVGElement>) => void;
  /** What the click that follows is: a tap of a finger, another click, or the end of a drag. */
  readonly clickKind: () => 'touch' | 'other' | 'drag';
}

interface Going {
  readonly fingers: Map<number, { x: number; y: number }>;
  start: { x: number; y: number };
  dragged: boolean;
  type: string;
}

/** Drag to pan, pinch and Ctrl + wheel to zoom. The click itself is left to the drawing. */
export function useGestures(svg: RefObject<SVGSVGElement | null>, seen: Seen): Gestures {
  const going = useRef<Going>({ fingers: new Map(), start: { x: 0, y: 0 }, dragged: false, type: '' });
  const latest = useRef(seen);
  useEffect(() => {
    latest.current = seen;
  });

  useEffect(() => {
    const element = svg.current;
    if (element === null) return;
    // React listens passively to the wheel, and the page would zoom too.
    const turn = (event: WheelEvent) => {
      if (!event.ctrlKey && !event.metaKey) return;
      event.preventDefault();
      const { box, zoom } = latest.current;
      const factor = Math.min(1.6, Math.max(0.625, 1 - event.deltaY / 300));
      zoom(factor, sheetPoint(box, element.getBoundingClientRect(), event.clientX, event.clientY));
    };
    element.addEventListener('wheel', turn, { passive: false });
    return () => element.removeEventListener('wheel', turn);
  }, [svg]);

  const lift = ({ pointerId }: PointerEvent) => {
    going.current.fingers.delete(pointerId);
  };
  return {
    onPointerDown: ({ pointerId, clientX, clientY, pointerType }) => {
      const now = going.current;
      now.fingers.set(pointerId, { x: clientX, y: clientY });
      now.type = pointerType;
      if (now.fingers.size === 1) {
        now.start = { x: clientX, y: clientY };
        now.dragged = false;
      } else {
        now.dragged = true;
      }
    },
    onPointerMove: (event) => {
      const now = going.current;
      const before = now.fingers.get(event.pointerId);
      if (before === undefined) return;
      const after = { x: event.clientX, y: event.clientY };
      const other = [...now.fingers].find(([id]) => id !== event.pointerId)?.[1];
      now.fingers.set(event.pointerId, after);
      const { box, mmPerPx, zoom, pan } = latest.current;
      if (other !== undefined) {
        const grown = apart(after, other) / Math.max(1, apart(before, other));
        const middle = { x: (after.x + other.x) / 2, y: (after.y + other.y) / 2 };
        zoom(grown, sheetPoint(box, event.currentTarget.getBoundingClientRect(), middle.x, middle.y));
        pan(-((after.x - before.x) / 2) * mmPerPx, ((after.y - before.y) / 2) * mmPerPx);
        return;
      }
      if (!now.dragged && apart(now.start, after) <= TAP_REACH) return;
      if (!now.dragged) event.currentTarget.setPointerCapture?.(event.pointerId);
      now.dragged = true;
      pan(-(after.x - before.x) * mmPerPx, (after.y - before.y) * mmPerPx);
    },
    onPointerUp: lift,
    onPointerCancel: (event) => {
      lift(event);
      going.current.dragged = false;
    },
    clickKind: () => {
      const { dragged, type } = going.current;
      // A click from the keyboard or a screen reader comes without a pointer before it.
      going.current.dragged = false;
      going.current.type = '';
      if (dragged) return 'drag';
      return type === 'touch' || type === 'pen' ? 'touch' : 'other';
    },
  };
}

function apart(a: { x: number; y: number }, b: { x: number; y: number }): number {
  return Math.sqrt((a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y));
}
