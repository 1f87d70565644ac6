import { useCallback, useEffect, useRef, useState, useSyncExternalStore } from 'react';
import { LOOK_VERSION, type Look } from '../../lib/household/look';
import { type KeptLooks, openKeptLooks } from './kept-looks';
import { hashOf, type LookPlace, placeOfHash, STEPS } from './look-place';

/** Whether what is on the page is on the disk, too. `never`: this browser keeps nothing. */
export type Keeping = 'kept' | 'keeping' | 'never';

export type Start = Pick<Look, 'way' | 'name' | 'rules' | 'calls'>;

/** The looks kept on this device and the one that is open. Null until the disk was read. */
export function useLooks() {
  const [looks, setLooks] = useState<readonly Look[] | null>(null);
  const [keeping, setKeeping] = useState<Keeping>('kept');
  const disk = useRef<KeptLooks | null>(null);
  const hash = useSyncExternalStore(subscribeToHash, readHash, () => '');

  useEffect(() => {
    let isGone = false;
    const read = async () => {
      try {
        const opened = await openKeptLooks();
        const kept = await opened.all();
        if (isGone) return opened.close();
        disk.current = opened;
        setLooks(kept);
      } catch {
        // A private window: the look lasts as long as the page.
        setKeeping('never');
        setLooks([]);
      }
    };
    void read();
    return () => {
      isGone = true;
      disk.current?.close();
      disk.current = null;
    };
  }, []);

  const keep = useCallback(async (work: (kept: KeptLooks) => Promise<void>) => {
    if (disk.current === null) return setKeeping('never');
    setKeeping('keeping');
    try {
      await work(disk.current);
      setKeeping('kept');
    } catch {
      setKeeping('never');
    }
  }, []);

  const save = (look: Look) => {
    setLooks((before) => [look, ...(before ?? []).filter(({ id }) => id !== look.id)]);
    void keep((kept) => kept.put(look));
  };

  const place = placeOfHash(hash);
  return {
    looks,
    keeping,
    place,
    look: looks?.find(({ id }) => id === place?.id),
    begin: (start: Start) => {
      const now = Date.now();
      const look: Look = {
        ...start,
        version: LOOK_VERSION,
        id: now.toString(36),
        begun: now,
        changed: now,
        answers: {},
      };
      save(look);
      goTo({ id: look.id, step: STEPS[0] ?? 'note' });
    },
    change: (look: Look) => save({ ...look, changed: Date.now() }),
    remove: (id: string) => {
      setLooks((before) => (before ?? []).filter((each) => each.id !== id));
      void keep((kept) => kept.remove(id));
    },
  };
}

export function goTo(place: LookPlace): void {
  window.location.hash = hashOf(place);
}

function readHash(): string {
  return window.location.hash;
}

function subscribeToHash(onChange: () => void): () => void {
  window.addEventListener('hashchange', onChange);
  return () => window.removeEventListener('hashchange', onChange);
}
