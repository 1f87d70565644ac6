'use client';

import { createContext, type ReactNode, useCallback, useContext, useMemo, useState } from 'react';
import type { Box } from '../../lib/geometry/box';
import { type Gliding, useGliding } from './gestures/use-gliding';

/** What is seen of a drawing as shares of the whole: 0 to 1 from its left and from its foot. */
interface Share {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

interface Together {
  readonly share: Share;
  readonly moves: Gliding;
  readonly change: (whole: Box, next: (box: Box) => Box) => void;
}

const ALL: Share = { x: 0, y: 0, width: 1, height: 1 };
const Shared = createContext<Together | null>(null);

/** Drawings inside show the same part of their walls: one is zoomed, all are. A new key shows the whole again. */
export function SeenTogether({ children }: { readonly children: ReactNode }) {
  const [share, setShare] = useState(ALL);
  const change = useCallback<Together['change']>(
    (whole, next) => setShare((old) => shareOf(whole, next(boxOf(whole, old)))),
    [],
  );
  const { gliding, glide } = useGliding();
  const together = useMemo(
    () => ({ share, change, moves: { gliding, glide } }),
    [share, change, gliding, glide],
  );
  return <Shared value={together}>{children}</Shared>;
}

/** The part of a drawing seen together with others, and how to change it; null for a drawing by itself. */
export function useSeenTogether(
  whole: Box,
): { readonly box: Box; readonly change: Together['change']; readonly moves: Gliding } | null {
  const together = useContext(Shared);
  return useMemo(() => together && { ...together, box: boxOf(whole, together.share) }, [together, whole]);
}

function boxOf({ x, y, width, height }: Box, share: Share): Box {
  return {
    x: x + share.x * width,
    y: y + share.y * height,
    width: share.width * width,
    height: share.height * height,
  };
}

function shareOf(whole: Box, box: Box): Share {
  return {
    x: (box.x - whole.x) / whole.width,
    y: (box.y - whole.y) / whole.height,
    width: box.width / whole.width,
    height: box.height / whole.height,
  };
}
