import { isRecord, readJson } from '../../json/read-json';
import { type BegunRound, LOOKING_TIMES, WALLS_A_ROUND } from './quick-round';

const VERSION = 1;

/** A round under way as text for the browser to keep. */
export function formatBegun({ time, answers }: BegunRound): string {
  return JSON.stringify({ version: VERSION, time, answers });
}

/** Reads it back. Null for anything else, for a round not begun and for one that is over. */
export function parseBegun(text: string | null): BegunRound | null {
  const loose = readJson(text);
  if (!isRecord(loose)) return null;
  const { version, time, answers } = loose;
  const known = LOOKING_TIMES.find((each) => each === time);
  if (version !== VERSION || known === undefined || !Array.isArray(answers)) return null;
  const given = answers.filter((each) => typeof each === 'boolean');
  const isUnderWay = given.length === answers.length && given.length > 0 && given.length < WALLS_A_ROUND;
  return isUnderWay ? { time: known, answers: given } : null;
}
