import { createHmac } from 'node:crypto';
import { cookieLine, cookieOf } from '../request/cookies';
import { settings } from '../server/settings';
import { hashOf, makeToken } from './codes';

/** Says who has signed in from this browser before. It opens nothing: it only keeps the wrong tries of others from counting here. */
const DEVICE_COOKIE = 'device';
const YEAR_MS = 365 * 24 * 60 * 60_000;
/** A tablet that goes round a class knows some of them, and the last ones best. */
const MOST_KNOWN = 16;

/** The device's own name in a count, where `of` has signed in from it before; undefined on a strange one. */
export function knownDevice(headers: Headers, of: string): string | undefined {
  const { id, marks } = readDevice(headers);
  return marks.includes(markOf(id, of)) ? hashOf(id).slice(0, 16) : undefined;
}

/** The line that lets this browser be known by all of `known` from now on. */
export function rememberDevice(headers: Headers, known: readonly string[]): string {
  const { id, marks } = readDevice(headers);
  const added = known.map((of) => markOf(id, of));
  const all = [...added, ...marks.filter((mark) => !added.includes(mark))].slice(0, MOST_KNOWN);
  return cookieLine(DEVICE_COOKIE, [id, ...all].join('.'), { maxAgeMs: YEAR_MS });
}

function readDevice(headers: Headers): { readonly id: string; readonly marks: readonly string[] } {
  const [id = '', ...marks] = (cookieOf(headers, DEVICE_COOKIE) ?? '').split('.');
  return id === '' ? { id: makeToken(), marks: [] } : { id: id.slice(0, 100), marks };
}

/** Nobody else can make one: so no device passes for one that it is not. */
function markOf(id: string, of: string): string {
  return createHmac('sha256', settings().secret)
    .update(`device ${id} ${of}`)
    .digest('base64url')
    .slice(0, 22);
}
