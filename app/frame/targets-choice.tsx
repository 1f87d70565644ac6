'use client';

import { useSyncExternalStore } from 'react';
import { TARGETS_KEY } from './theme';

/** For work gloves: larger buttons, and the wall comes closer before a tap picks. The choice stays in this browser. */
export function TargetsChoice() {
  const gloves = useSyncExternalStore(subscribe, chosen, () => false);
  return (
    <label className="theme-choice">
      <input type="checkbox" checked={gloves} onChange={(event) => choose(event.target.checked)} /> Large
      buttons, for gloves
    </label>
  );
}

// As with the colours: the attribute on <html> is the one truth.
function chosen(): boolean {
  return document.documentElement.dataset.targets === 'gloves';
}

function subscribe(onChange: () => void): () => void {
  const observer = new MutationObserver(onChange);
  observer.observe(document.documentElement, { attributeFilter: ['data-targets'] });
  return () => observer.disconnect();
}

function choose(gloves: boolean): void {
  if (gloves) document.documentElement.dataset.targets = 'gloves';
  else delete document.documentElement.dataset.targets;
  try {
    if (gloves) localStorage.setItem(TARGETS_KEY, 'gloves');
    else localStorage.removeItem(TARGETS_KEY);
  } catch {
    // Storage is forbidden here: the choice holds for this visit.
  }
}
