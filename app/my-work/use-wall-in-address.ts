'use client';

import { useSyncExternalStore } from 'react';

/**
 * Which wall is open: '#wall-3' in the address, so that the browser's own way back works, and nothing is asked of the network.
 * Null for the list. `first` is meant where the address says nothing.
 */
export function useWallInAddress(first: number | null): number | null {
  return useSyncExternalStore(
    subscribe,
    () => placeIn(window.location.hash, first),
    () => first,
  );
}

export const LIST = '#walls';

export function addressOf(place: number): string {
  return `#wall-${place}`;
}

function placeIn(hash: string, first: number | null): number | null {
  if (hash === LIST) return null;
  const place = Number(/^#wall-([1-9]\d?)$/.exec(hash)?.[1]);
  return Number.isInteger(place) ? place : first;
}

function subscribe(changed: () => void): () => void {
  window.addEventListener('hashchange', changed);
  return () => window.removeEventListener('hashchange', changed);
}
