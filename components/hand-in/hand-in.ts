import { hasFields } from '../../lib/json/read-json';

/** One wall as it is handed in, spelt as app/api/hand-in reads it. */
export interface WallAnswer {
  /** From 1. */
  readonly place: number;
  /** Of the wall as this device laid it. */
  readonly fingerprint: string;
  readonly marks: readonly object[];
  readonly readings: readonly object[];
  readonly saysSound: boolean;
  readonly opened: readonly string[];
  readonly spentMs: number;
}

/** What the server answers when a hand-in is on its disk. */
export interface Receipt {
  readonly receipt: string;
  /** By the server's clock, ms. */
  readonly handedInAt: number;
  readonly late: boolean;
}

/**
 * A hand-in in the outbox. `waiting`: on this device only. `received`: the server has it. `refused`: the server will not take it; the
 * answers stay on the device.
 */
export interface HandIn {
  readonly attempt: string;
  /** Whose it is: on a shared phone only their own hand-ins are sent. */
  readonly learner: string;
  /** Sent with every try, so that the server takes the hand-in once. */
  readonly key: string;
  readonly walls: readonly WallAnswer[];
  readonly state: 'waiting' | 'received' | 'refused';
  readonly receipt: Receipt | null;
  /** Why it still waits or was refused, in a sentence; null when nothing is known. */
  readonly problem: string | null;
}

/** What one try to send gave. `after`: ms the server asks to wait, null when it does not say. */
export type Sent =
  | { readonly kind: 'received'; readonly receipt: Receipt }
  | { readonly kind: 'waiting'; readonly problem: string; readonly after: number | null }
  | { readonly kind: 'refused'; readonly problem: string };

const OFFLINE = 'No connection just now.';
const SIGNED_OUT = 'You are signed out. Join your group again with your PIN, and it is sent.';
const SOMEBODY_ELSE =
  'The site does not know this work for who is signed in now. Join your group again as yourself.';

/** Whether it waits for the right person to sign in, and not for the network. */
export function needsSignIn({ problem }: Pick<HandIn, 'problem'>): boolean {
  return problem === SIGNED_OUT || problem === SOMEBODY_ELSE;
}

/** Sends a hand-in once. Never throws. */
export async function sendHandIn({ attempt, key, walls }: HandIn): Promise<Sent> {
  let response: Response;
  let body: unknown;
  try {
    response = await fetch('/api/hand-in', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ attempt, key, walls }),
    });
    body = await response.json();
  } catch {
    return { kind: 'waiting', problem: OFFLINE, after: null };
  }
  return sentOf(response, body);
}

/** A receipt settles it, also that of an earlier hand-in of the same attempt from another device. */
function sentOf(response: Response, body: unknown): Sent {
  const receipt = receiptIn(body);
  if (receipt && (response.ok || response.status === 409)) return { kind: 'received', receipt };
  if (response.status === 401 || response.status === 403) {
    return { kind: 'waiting', problem: SIGNED_OUT, after: null };
  }
  if (response.status === 404) return { kind: 'waiting', problem: SOMEBODY_ELSE, after: null };
  if (response.ok || response.status === 408 || response.status === 429 || response.status >= 500) {
    return { kind: 'waiting', problem: 'The site is busy.', after: secondsIn(response) };
  }
  const problem = hasFields(body, { problem: 'string' }) ? body.problem : `Answer ${response.status}.`;
  return { kind: 'refused', problem };
}

function receiptIn(body: unknown): Receipt | null {
  if (!hasFields(body, { receipt: 'string', handedInAt: 'number', late: 'boolean' })) return null;
  const { receipt, handedInAt, late } = body;
  return { receipt, handedInAt, late };
}

function secondsIn(response: Response): number | null {
  const seconds = Number(response.headers.get('retry-after') ?? Number.NaN);
  return Number.isFinite(seconds) && seconds > 0 ? Math.min(seconds, 3600) * 1000 : null;
}
