import { isRecord, readJson } from '../../lib/json/read-json';
import { keepText, readKept, SET_WORK_NAME } from '../wall-page/kept-text';
import { formatWork, parseMarked, parseWork } from '../wall-page/kept-work';
import type { Work } from '../wall-page/work-state';
import type { WallAnswer } from './hand-in';

export type Progress = 'not begun' | 'begun' | 'done';

/** Name under which the work on one wall of an attempt is kept. */
export function nameOfWall(attempt: string, place: number): string {
  return `${SET_WORK_NAME}${attempt} ${place}`;
}

/** A wall is done when its answer is kept; what is marked before that is kept as well, at every step. */
export function progressOf(attempt: string, place: number): Progress {
  if (answerOf(attempt, place) !== null) return 'done';
  const {
    marks = [],
    opened = [],
    readings = [],
    saysSound = false,
    half = null,
  } = workOn(attempt, place) ?? {};
  return saysSound || half !== null || marks.length + opened.length + readings.length > 0
    ? 'begun'
    : 'not begun';
}

/** Whether there is an answer to hand in: something marked, or said to be sound. Without one a wall scores nothing. */
export function isAnswered(attempt: string, place: number): boolean {
  const { marks, saysSound } = answerNow(attempt, place, '');
  return marks.length > 0 || saysSound;
}

export function keepAnswer(attempt: string, answer: WallAnswer): void {
  keepText(answerKey(attempt, answer.place), JSON.stringify(answer));
}

/** Lets a wall that is done be changed: its marks stay. */
export function reopenWall(attempt: string, place: number): void {
  keepText(answerKey(attempt, place), '');
  const work = workOn(attempt, place);
  if (work) keepWork(attempt, place, { ...work, phase: 'looking' });
}

/** Puts work in place of what the device has, such as what was handed in on another one. */
export function keepWork(attempt: string, place: number, work: Work): void {
  keepText(workKey(attempt, place), formatWork(work));
}

/** What there is to hand in of a wall: the answer, or what was marked so far. */
export function answerNow(attempt: string, place: number, fingerprint: string): WallAnswer {
  const answer = answerOf(attempt, place);
  if (answer) return answer;
  const { marks = [], readings = [], opened = [], saysSound = false } = workOn(attempt, place) ?? {};
  const spent = Number(readKept(`wall-time:${nameOfWall(attempt, place)}`));
  return {
    ...{ place, fingerprint, marks, readings, saysSound, opened },
    spentMs: Number.isFinite(spent) ? spent : 0,
  };
}

/** Null for one that cannot be read: then the work on the wall, which is kept beside it, counts. Parts are for the server to check. */
function answerOf(attempt: string, place: number): WallAnswer | null {
  const loose = readJson(readKept(answerKey(attempt, place)));
  const marked = isRecord(loose) ? parseMarked(loose, () => true) : null;
  if (!isRecord(loose) || marked === null) return null;
  const { fingerprint, spentMs } = loose;
  if (loose.place !== place || typeof fingerprint !== 'string' || typeof spentMs !== 'number') return null;
  return { ...marked, place, fingerprint, spentMs };
}

/** Parts are not checked here: the wall is not laid, and the server does it. */
function workOn(attempt: string, place: number): Work | null {
  return parseWork(readKept(workKey(attempt, place)), () => true);
}

function workKey(attempt: string, place: number): string {
  return `wall-work:${nameOfWall(attempt, place)}`;
}

function answerKey(attempt: string, place: number): string {
  return `wall-answer:${nameOfWall(attempt, place)}`;
}
