import { type DBSchema, openDB } from 'idb';
import { type Look, parseLook } from '../../lib/household/look';

interface HouseholdSchema extends DBSchema {
  looks: { key: string; value: unknown };
}

/** The looks of this device, on its own disk. They are never sent anywhere. */
export interface KeptLooks {
  /** The latest first. A record that cannot be read, such as a later version's, stays on the disk and is not shown. */
  readonly all: () => Promise<readonly Look[]>;
  readonly put: (look: Look) => Promise<void>;
  readonly remove: (id: string) => Promise<void>;
  readonly close: () => void;
}

export async function openKeptLooks(name = 'read-the-wall household'): Promise<KeptLooks> {
  const db = await openDB<HouseholdSchema>(name, 1, {
    upgrade: (made) => {
      made.createObjectStore('looks', { keyPath: 'id' });
    },
  });
  return {
    all: async () => {
      const kept = await db.getAll('looks');
      return kept.flatMap((each) => parseLook(each) ?? []).sort((a, b) => b.changed - a.changed);
    },
    put: async (look) => {
      await db.put('looks', look);
    },
    remove: (id) => db.delete('looks', id),
    close: () => db.close(),
  };
}
