'use client';

import { type PointerEvent, type RefObject, useEffect, useLayoutEffect, useRef } from 'react';
import { mmPerPixel, sheetPoint } from '../to-screen';
import type { Seen } from './use-seen-box';

/** A finger that moves no further than this still taps, px. */
const TAP_REACH = 8;

export interface Gestures {
  readonly onPointerDown: (event: PointerEvent<HTMLElement>) => void;
  readonly onPointerMove: (event: PointerEvent<HTMLElement>) => void;
  readonly onPointerUp: (event: PointerEvent<HTMLElement>) => void;
  readonly onPointerCancel: (event: PointerEvent<HTMLElement>) => void;
  /** What the click that follows is: a tap of a finger, another click, or the end of a drag. */
  readonly clickKind: () => 'touch' | 'other' | 'drag';
}

interface Going {
  readonly fingers: Map<number, { x: number; y: number }>;
  start: { x: number; y: number };
  dragged: boolean;
  type: string;
}

/** Drag to pan, pinch or turn the wheel to zoom. The click itself is left to the drawing. */
export function useGestures(svg: RefObject<SVGSVGElement | null>, seen: Seen): Gestures {
  const going = useRef<Going>({ fingers: new Map(), start: { x: 0, y: 0 }, dragged: false, type: '' });
  const latest = useRef(seen);
  // Before the next event: it is placed by what is drawn, which has to be what is on the screen.
  useLayoutEffect(() => {
    latest.current = seen;
  });

  useEffect(() => {
    // What is round the drawing: a gesture may leave the pointer beside the drawing itself.
    const frame = svg.current?.parentElement;
    if (!frame) return;
    // React listens passively to the wheel, and the page would zoom too.
    const turn = (event: WheelEvent) => {
      const isPinch = event.ctrlKey || event.metaKey;
      // Further out than the whole wall the wheel moves the page on.
      if (!isPinch && event.deltaY > 0 && latest.current.isWhole) return;
      event.preventDefault();
      const screen = svg.current?.getBoundingClientRect();
      if (screen === undefined) return;
      const { drawn, zoom, glide } = latest.current;
      const factor = Math.min(1.6, Math.max(0.625, 1 - event.deltaY / 300));
      glide();
      zoom(factor, sheetPoint(drawn, screen, event.clientX, event.clientY));
    };
    frame.addEventListener('wheel', turn, { passive: false });
    return () => frame.removeEventListener('wheel', turn);
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
      const screen = svg.current?.getBoundingClientRect();
      if (before === undefined || screen === undefined) return;
      const after = { x: event.clientX, y: event.clientY };
      const other = [...now.fingers].find(([id]) => id !== event.pointerId)?.[1];
      now.fingers.set(event.pointerId, after);
      const { drawn, zoom, pan, glide } = latest.current;
      const scale = mmPerPixel(drawn, screen);
      if (other !== undefined) {
        const grown = apart(after, other) / Math.max(1, apart(before, other));
        const middle = { x: (after.x + other.x) / 2, y: (after.y + other.y) / 2 };
        glide();
        zoom(grown, sheetPoint(drawn, screen, middle.x, middle.y));
        pan(-((after.x - before.x) / 2) * scale, ((after.y - before.y) / 2) * scale);
        return;
      }
      if (!now.dragged && apart(now.start, after) <= TAP_REACH) return;
      if (!now.dragged) event.currentTarget.setPointerCapture?.(event.pointerId);
      now.dragged = true;
      glide();
      pan(-(after.x - before.x) * scale, (after.y - before.y) * scale);
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
