'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import type { Box } from '../../../lib/geometry/box';
import { mmPerPixel } from '../to-screen';

/** A gesture is over when no step of it has come for so long, ms. */
const REST_MS = 150;
/** A picture that is moved as it was drawn may be magnified or shrunk so far before it is drawn anew. */
const FURTHEST = 2;

export interface Gliding {
  /** Whether a gesture is under way. */
  readonly gliding: boolean;
  /** Called with every step of a gesture. */
  readonly glide: () => void;
}

export function useGliding(): Gliding {
  const [gliding, setGliding] = useState(false);
  const rest = useRef<ReturnType<typeof setTimeout>>(undefined);
  useEffect(() => () => clearTimeout(rest.current), []);
  const glide = useCallback(() => {
    clearTimeout(rest.current);
    rest.current = setTimeout(() => setGliding(false), REST_MS);
    setGliding(true);
  }, []);
  return { gliding, glide };
}

/**
 * What part of the sheet is drawn: what is seen or, in the middle of a gesture, what was seen at its start. Drawing a wall anew
 * takes longer than a frame; moving it as it was drawn does not.
 */
export function useDrawnBox(whole: Box, seen: Box, gliding: boolean): Box {
  const [kept, keep] = useState({ whole, box: seen });
  const grown = kept.box.width / seen.width;
  const stays = gliding && kept.whole === whole && grown <= FURTHEST && grown >= 1 / FURTHEST;
  if (stays || (kept.whole === whole && kept.box === seen)) return kept.box;
  keep({ whole, box: seen });
  return seen;
}

/** The CSS transform that brings what is drawn to where it is seen, about the middle of the screen box. */
export function glideOf(
  drawn: Box,
  seen: Box,
  screen: { readonly width: number; readonly height: number },
): string {
  const scale = mmPerPixel(seen, screen);
  const right = (drawn.x + drawn.width / 2 - seen.x - seen.width / 2) / scale;
  const up = (drawn.y + drawn.height / 2 - seen.y - seen.height / 2) / scale;
  return `translate(${right}px, ${-up}px) scale(${mmPerPixel(drawn, screen) / scale})`;
}
