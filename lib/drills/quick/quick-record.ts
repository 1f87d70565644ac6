import { hasFields, isRecord, readJson } from '../../json/read-json';
import { isSort, QUICK_LEVELS, QUICK_LOOKS, type QuickSort } from './quick-look';
import { LOOKING_TIMES, type LookingTime, MOST_ROUND, WALLS_A_ROUND } from './quick-round';

/** Version 1 knew one sort only: from in front, easy. */
export const QUICK_RECORD_VERSION = 2;

export interface QuickWall {
  readonly code: string;
  readonly faulty: boolean;
  readonly saidFaulty: boolean;
}

export interface QuickRound extends QuickSort {
  /** Name of the rule set its walls were judged by: another one asks for other walls. */
  readonly rules: string;
  readonly round: number;
  readonly time: LookingTime;
  readonly walls: readonly QuickWall[];
}

/** All rounds looked through on one device, the oldest first. */
export type QuickRecord = readonly QuickRound[];

/** What is kept on the device. What cannot be read is said to be so, and never written over. */
export type KeptRecord =
  | { readonly kind: 'read'; readonly rounds: QuickRecord }
  | { readonly kind: 'unknown'; readonly why: string };

export function formatRecord(rounds: QuickRecord): string {
  return JSON.stringify({ version: QUICK_RECORD_VERSION, rounds });
}

/** Reads a kept record of any version. `null` (nothing kept) reads as no rounds. */
export function parseRecord(text: string | null): KeptRecord {
  if (text === null) return { kind: 'read', rounds: [] };
  const loose = readJson(text);
  if (loose === undefined) return unknown('it is not in a form this page can read');
  if (!isRecord(loose)) return unknown('it is not a record of quick looks');
  const { version } = loose;
  if (version !== 1 && version !== QUICK_RECORD_VERSION) {
    return unknown(
      `it says version ${shown(version)}, and this page reads versions 1 to ${QUICK_RECORD_VERSION}`,
    );
  }
  if (!Array.isArray(loose.rounds)) return unknown('rounds: missing');
  const rounds: QuickRound[] = [];
  for (const [index, each] of loose.rounds.entries()) {
    const read = parseRound(version === 1 && isRecord(each) ? { ...each, look: 'face', level: 1 } : each);
    if (read === null) return unknown(`rounds.${index}: is not a round of ${WALLS_A_ROUND} walls`);
    rounds.push(read);
  }
  return { kind: 'read', rounds };
}

/** Adds a round. One looked through before on this device is not counted again: its walls are known. */
export function withRound(rounds: QuickRecord, added: QuickRound): QuickRecord {
  return isCounted(rounds, added) ? rounds : [...rounds, added];
}

export function isCounted(rounds: QuickRecord, asked: Omit<QuickRound, 'time' | 'walls'>): boolean {
  return rounds.some(
    (each) => each.rules === asked.rules && each.round === asked.round && isSort(each, asked),
  );
}

function parseRound(loose: unknown): QuickRound | null {
  if (!isRecord(loose) || !Array.isArray(loose.walls)) return null;
  const { rules, round } = loose;
  const look = QUICK_LOOKS.find((each) => each === loose.look);
  const level = QUICK_LEVELS.find((each) => each === loose.level);
  const time = LOOKING_TIMES.find((each) => each === loose.time);
  if (
    typeof rules !== 'string' ||
    typeof round !== 'number' ||
    !Number.isInteger(round) ||
    round < 0 ||
    round > MOST_ROUND
  )
    return null;
  if (look === undefined || level === undefined) return null;
  if (time === undefined || loose.walls.length !== WALLS_A_ROUND) return null;
  const walls = loose.walls.flatMap((wall: unknown) => parseWall(wall) ?? []);
  return walls.length === WALLS_A_ROUND ? { rules, round, look, level, time, walls } : null;
}

function parseWall(loose: unknown): QuickWall | null {
  if (!hasFields(loose, { code: 'string', faulty: 'boolean', saidFaulty: 'boolean' })) return null;
  const { code, faulty, saidFaulty } = loose;
  return { code, faulty, saidFaulty };
}

function unknown(why: string): KeptRecord {
  return { kind: 'unknown', why };
}

function shown(value: unknown): string {
  return String(value).slice(0, 20);
}
