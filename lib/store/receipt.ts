import { createHash } from 'node:crypto';
import type { AttemptTable } from './schema';

export interface Receipt {
  /** Short enough to read out: the same for the same hand-in, for ever. */
  readonly receipt: string;
  readonly attempt: string;
  readonly handedInAt: number;
  readonly late: boolean;
  /** This very hand-in had arrived before. */
  readonly replay: boolean;
}

/** No I, O, 0 or 1: they are taken for each other. 32 signs, so that five bits are one sign. */
const SIGNS = '23456789ABCDEFGHJKLMNPQRSTUVWXYZ';

export function sha256Of(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}

/** Twelve signs in threes of four (60 bits), from who handed in what under which key. */
export function receiptOf(attempt: string, key: string, handInHash: string): string {
  const bits = createHash('sha256').update(`${attempt} ${key} ${handInHash}`).digest();
  const signs = [...bits.subarray(0, 12)].map((byte) => SIGNS.charAt(byte % 32)).join('');
  return `${signs.slice(0, 4)}-${signs.slice(4, 8)}-${signs.slice(8)}`;
}

/** The receipt of an attempt that was handed in before. */
export function receiptAgain(
  attempt: Pick<AttemptTable, 'handed_in_at' | 'late' | 'hand_in_key' | 'hand_in_hash'> & {
    readonly id: string;
  },
): Receipt {
  return {
    receipt: receiptOf(attempt.id, attempt.hand_in_key ?? '', attempt.hand_in_hash ?? ''),
    attempt: attempt.id,
    handedInAt: attempt.handed_in_at ?? 0,
    late: attempt.late === 1,
    replay: true,
  };
}
