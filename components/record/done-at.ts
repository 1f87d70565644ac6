import { ATTEMPT_VERSION, type Attempt } from '../../lib/learning/attempt';

export type Done = Pick<Attempt, 'version' | 'id' | 'at' | 'zone' | 'spentMs'>;

/** What every attempt says that is done now, on this device. */
export function doneAt(spentMs: number | null): Done {
  const now = new Date();
  return {
    version: ATTEMPT_VERSION,
    id: newId(),
    at: now.getTime(),
    // Without the sign of nothing: -0 is not what JSON gives back.
    zone: 0 - now.getTimezoneOffset(),
    spentMs,
  };
}

/** 128 bits of chance. Not randomUUID, which a page without HTTPS has not got. */
function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
