import { useSyncExternalStore } from 'react';

interface KeptChoice<T extends string> {
  /** What was chosen in this browser; `usual` until then, and while the server writes the page. */
  readonly useChosen: (usual: T) => T;
  readonly choose: (value: T) => void;
}

/** A reader's choice that this browser keeps under `key`, the same in all open pages. */
export function keptChoice<T extends string>(
  key: string,
  isOne: (kept: unknown) => kept is T,
): KeptChoice<T> {
  const changed = `${key}-changed`;
  // Holds the choice where storage is forbidden; the stored one is read afresh, since another tab may have changed it.
  let chosen: T | undefined;

  function readChosen(): T | undefined {
    try {
      const kept = localStorage.getItem(key);
      return isOne(kept) ? kept : undefined;
    } catch {
      return undefined;
    }
  }

  function subscribe(onChange: () => void): () => void {
    window.addEventListener(changed, onChange);
    window.addEventListener('storage', onChange);
    return () => {
      window.removeEventListener(changed, onChange);
      window.removeEventListener('storage', onChange);
    };
  }

  return {
    useChosen: (usual) =>
      useSyncExternalStore(
        subscribe,
        () => chosen ?? readChosen() ?? usual,
        () => usual,
      ),
    choose(value) {
      try {
        localStorage.setItem(key, value);
      } catch {
        chosen = value;
      }
      window.dispatchEvent(new Event(changed));
    },
  };
}
