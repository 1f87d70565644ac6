'use client';

import { type RefObject, useCallback, useEffect, useState } from 'react';
import type { Box, Point } from '../../lib/views/shape';
import { brought, closeUp, panned, zoomed } from './seen-box';
import { useSeenTogether } from './seen-together';
import { mmPerPixel } from './to-screen';

export interface Seen {
  /** What part of the sheet is seen. */
  readonly box: Box;
  readonly mmPerPx: number;
  /** False until the size on the screen is known: on the server, and before the page's script runs. */
  readonly measured: boolean;
  readonly zoom: (factor: number, about: Point) => void;
  readonly pan: (x: number, y: number) => void;
  readonly bring: (target: Box) => void;
  readonly showWhole: () => void;
  /** Comes close to a place: it fills a good part of what is seen. */
  readonly closeTo: (target: Box) => void;
}

type Places = Readonly<Record<string, { readonly whole: Box; readonly box: Box } | undefined>>;

/**
 * What part of the drawing is seen, and how large a pixel is. Each sheet starts with the whole, and keeps its place while another
 * is looked at; views on the same sheet share it.
 */
export function useSeenBox(sheet: string, whole: Box, svg: RefObject<SVGSVGElement | null>): Seen {
  const [places, setPlaces] = useState<Places>({});
  const own = keptIn(places, sheet, whole);
  const together = useSeenTogether(whole);
  const box = together?.box ?? own;
  const changeAll = together?.change;
  const [screen, setScreen] = useState({ width: 0, height: 0 });

  useEffect(() => {
    const element = svg.current;
    if (element === null || typeof ResizeObserver === 'undefined') return;
    const observer = new ResizeObserver(() => {
      const { width, height } = element.getBoundingClientRect();
      setScreen({ width, height });
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, [svg]);

  const change = useCallback(
    (next: (box: Box) => Box) =>
      changeAll
        ? changeAll(whole, next)
        : setPlaces((old) => ({ ...old, [sheet]: { whole, box: next(keptIn(old, sheet, whole)) } })),
    [changeAll, sheet, whole],
  );
  return {
    box,
    mmPerPx: mmPerPixel(box, screen),
    measured: screen.width > 0,
    zoom: useCallback((factor, about) => change((old) => zoomed(whole, old, factor, about)), [change, whole]),
    pan: useCallback((x, y) => change((old) => panned(whole, old, x, y)), [change, whole]),
    bring: useCallback((target) => change((old) => brought(whole, old, target)), [change, whole]),
    showWhole: useCallback(() => change(() => whole), [change, whole]),
    closeTo: useCallback((target) => change(() => closeUp(whole, target)), [change, whole]),
  };
}

/** What was last seen of a sheet; the whole, if nothing was or if it is another drawing now. */
function keptIn(places: Places, sheet: string, whole: Box): Box {
  const kept = places[sheet];
  return kept && sameBox(kept.whole, whole) ? kept.box : whole;
}

function sameBox(a: Box, b: Box): boolean {
  return a.x === b.x && a.y === b.y && a.width === b.width && a.height === b.height;
}
