'use client';

import { useSyncExternalStore } from 'react';
import type { LengthSystem } from '../../lib/units';
import { ChoiceBar } from './choice-bar';

const KEY = 'lengths';
const CHANGED = 'lengths-changed';

const OPTIONS = [
  { value: 'mm', label: 'mm' },
  { value: 'inches', label: 'inches' },
] as const;

/** The system of lengths the reader has chosen in this browser; `usual` until then. */
export function useLengthSystem(usual: LengthSystem): LengthSystem {
  return useSyncExternalStore(
    subscribe,
    () => chosen ?? readChosen() ?? usual,
    () => usual,
  );
}

export function LengthChoice({ system }: { readonly system: LengthSystem }) {
  return <ChoiceBar legend="Measure in" options={OPTIONS} value={system} onChoose={choose} />;
}

// Holds the choice where storage is forbidden; the stored one is read afresh, since another tab may have changed it.
let chosen: LengthSystem | undefined;

function choose(system: LengthSystem): void {
  try {
    localStorage.setItem(KEY, system);
  } catch {
    chosen = system;
  }
  window.dispatchEvent(new Event(CHANGED));
}

function readChosen(): LengthSystem | undefined {
  try {
    const kept = localStorage.getItem(KEY);
    return kept === 'mm' || kept === 'inches' ? kept : undefined;
  } catch {
    return undefined;
  }
}

function subscribe(onChange: () => void): () => void {
  window.addEventListener(CHANGED, onChange);
  window.addEventListener('storage', onChange);
  return () => {
    window.removeEventListener(CHANGED, onChange);
    window.removeEventListener('storage', onChange);
  };
}
