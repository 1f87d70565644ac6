'use client';

import { type RefObject, useCallback, useEffect, useMemo, useState } from 'react';
import type { Box } from '../../../lib/geometry/box';
import type { Point } from '../../../lib/geometry/polygon';
import { useSeenTogether } from '../seen-together';
import { mmPerPixel } from '../to-screen';
import { usePrinting } from '../use-printing';
import { useSame } from '../use-same';
import { brought, closeUp, firstSeen, fitted, isAllHigh, isWhole, panned, zoomed } from './seen-box';
import { glideOf, useDrawnBox, useGliding } from './use-gliding';

export interface Seen {
  /** What part of the sheet is seen. */
  readonly box: Box;
  /** What part of it is drawn: another than is seen while a gesture lasts. */
  readonly drawn: Box;
  /** Brings what is drawn to where it is seen; undefined at rest. */
  readonly shift: string | undefined;
  readonly mmPerPx: number;
  /** The whole sheet is seen. */
  readonly isWhole: boolean;
  /** Nothing of it lies above or below: a finger that moves up or down moves the page. */
  readonly isAllHigh: boolean;
  /** False until the size on the screen is known: on the server, and before the page's script runs. */
  readonly measured: boolean;
  readonly zoom: (factor: number, about: Point) => void;
  readonly pan: (x: number, y: number) => void;
  /** Called with every step of a gesture. */
  readonly glide: () => void;
  readonly bring: (target: Box) => void;
  readonly showWhole: () => void;
  /** Comes close to a place: it fills a good part of what is seen. */
  readonly closeTo: (target: Box) => void;
}

type Places = Readonly<Record<string, { readonly whole: Box; readonly box: Box } | undefined>>;

/**
 * What part of the drawing is seen, and how large a pixel is. Each sheet starts with `core`, where there is one, so that it fills the
 * screen, else with the whole; it keeps its place while another is looked at. Views on the same sheet share it.
 */
export function useSeenBox(
  sheet: string,
  sheetBox: Box,
  coreBox: Box | null,
  svg: RefObject<SVGSVGElement | null>,
): Seen {
  // Another light is another drawing on the same sheet.
  const whole = useSame(sheetBox);
  const core = useSame(coreBox);
  const [places, setPlaces] = useState<Places>({});
  const [screen, setScreen] = useState({ width: 0, height: 0 });
  const ownIn = useCallback(
    (all: Places) => {
      const place = keptIn(all, sheet, whole);
      if (place === null && core !== null) return firstSeen(whole, core, screen);
      return fitted(whole, place ?? whole, screen);
    },
    [sheet, whole, core, screen],
  );
  const own = useMemo(() => ownIn(places), [ownIn, places]);
  const together = useSeenTogether(whole);
  // Nobody can zoom out on paper.
  const printing = usePrinting();
  const box = printing ? whole : (together?.box ?? own);
  const changeAll = together?.change;
  const alone = useGliding();
  const { gliding, glide } = together?.moves ?? alone;
  const drawn = useDrawnBox(whole, box, gliding);

  useEffect(() => {
    const element = svg.current;
    if (element === null || typeof ResizeObserver === 'undefined') return;
    // Not its bounding box, which a gesture moves.
    const observer = new ResizeObserver(([entry]) => entry && setScreen(entry.contentRect));
    observer.observe(element);
    return () => observer.disconnect();
  }, [svg]);

  const change = useCallback(
    (next: (box: Box) => Box) =>
      changeAll
        ? changeAll(whole, next)
        : setPlaces((old) => ({ ...old, [sheet]: { whole, box: next(ownIn(old)) } })),
    [changeAll, sheet, whole, ownIn],
  );
  return {
    box,
    drawn,
    shift: gliding ? glideOf(drawn, box, screen) : undefined,
    mmPerPx: mmPerPixel(drawn, screen),
    isWhole: isWhole(whole, box),
    isAllHigh: isAllHigh(whole, box),
    measured: screen.width > 0,
    zoom: useCallback((factor, about) => change((old) => zoomed(whole, old, factor, about)), [change, whole]),
    pan: useCallback((x, y) => change((old) => panned(whole, old, x, y)), [change, whole]),
    glide,
    bring: useCallback((target) => change((old) => brought(whole, old, target)), [change, whole]),
    showWhole: useCallback(() => change(() => whole), [change, whole]),
    closeTo: useCallback((target) => change(() => closeUp(whole, target)), [change, whole]),
  };
}

/** What was last seen of a sheet; null if nothing was or if it is another drawing now. */
function keptIn(places: Places, sheet: string, whole: Box): Box | null {
  const kept = places[sheet];
  return kept && sameBox(kept.whole, whole) ? kept.box : null;
}

function sameBox(a: Box, b: Box): boolean {
  return a.x === b.x && a.y === b.y && a.width === b.width && a.height === b.height;
}
