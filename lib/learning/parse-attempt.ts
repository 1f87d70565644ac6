import { TOPICS } from '../generate/topics';
import { CHECKS, type CheckId, HAZARDS } from '../inspect/finding';
import { hasFields, isRecord } from '../json/read-json';
import { ACTS } from '../marking/act';
import { LIMIT_KINDS } from '../marking/five-marks';
import { MOST_MARKS, type RawMark, type Sure } from '../marking/mark';
import {
  ATTEMPT_VERSION,
  type Attempt,
  FAULT_OUTCOMES,
  type FalseCall,
  type FaultMet,
  WALL_WAYS,
} from './attempt';

const LONGEST_TEXT = 100;
const MOST_FAULTS = 100;
/** The clocks of the world are set from 12 hours behind UTC to 14 ahead. */
const ZONES = { least: -720, most: 840 };
/** 1 January 10000: no clock is set later. */
const LATEST = 253_402_300_800_000;

/** One reader for every version ever written. */
const READERS: Readonly<Record<number, (loose: Loose) => Attempt | null>> = { 1: version1 };

type Loose = Readonly<Record<string, unknown>>;

/** Reads one attempt of any version; null for what this program cannot read, such as one that a later version wrote. */
export function parseAttempt(loose: unknown): Attempt | null {
  if (!isRecord(loose) || typeof loose.version !== 'number') return null;
  return READERS[loose.version]?.(loose) ?? null;
}

function version1(loose: Loose): Attempt | null {
  const { id, at, zone, spentMs } = loose;
  if (!isText(id) || id === '' || !isWhole(at, 0, LATEST) || !isWhole(zone, ZONES.least, ZONES.most))
    return null;
  if (spentMs !== null && !isWhole(spentMs, 0, LATEST)) return null;
  const done = { version: ATTEMPT_VERSION, id, at, zone, spentMs } as const;
  switch (loose.kind) {
    case 'quick look':
      return lookOf(loose, done);
    case 'questions':
      return questionsOf(loose, done);
    case 'build':
      return buildOf(loose, done);
    default:
      return wallOf(loose, done);
  }
}

type Done = Pick<Attempt, 'version' | 'id' | 'at' | 'zone' | 'spentMs'>;

function wallOf(loose: Loose, done: Done): Attempt | null {
  const { wall, difficulty } = loose;
  const kind = WALL_WAYS.find((way) => way === loose.kind);
  const topic = TOPICS.find((each) => each === loose.topic);
  if (kind === undefined || topic === undefined || !isText(wall) || !isWhole(difficulty, 1, 5)) return null;
  const marks = allOf(loose.marks, MOST_MARKS, markOf);
  const faults = allOf(loose.faults, MOST_FAULTS, faultOf);
  const falseCalls = allOf(loose.falseCalls, MOST_MARKS, falseCallOf);
  if (marks === null || faults === null || falseCalls === null) return null;
  return { ...done, kind, wall, topic, difficulty, marks, faults, falseCalls };
}

function lookOf(loose: Loose, done: Done): Attempt | null {
  const { rules, round, look, level, time } = loose;
  if (!isText(rules) || !isText(look) || !isWhole(round, 0, 999_999) || !isWhole(level, 1, 5)) return null;
  if (time !== null && !isWhole(time, 1, 3600)) return null;
  const walls = allOf(loose.walls, MOST_FAULTS, (wall) =>
    hasFields(wall, { code: 'string', faulty: 'boolean', saidFaulty: 'boolean' }) && isText(wall.code)
      ? { code: wall.code, faulty: wall.faulty, saidFaulty: wall.saidFaulty }
      : null,
  );
  return walls && { ...done, kind: 'quick look', rules, round, look, level, time, walls };
}

function questionsOf(loose: Loose, done: Done): Attempt | null {
  const { topic, rules } = loose;
  if (!isText(topic) || !isText(rules)) return null;
  const answers = allOf(loose.answers, MOST_FAULTS, (answer) =>
    hasFields(answer, { family: 'string', right: 'boolean' }) && isText(answer.family)
      ? { family: answer.family, right: answer.right }
      : null,
  );
  return answers && { ...done, kind: 'questions', topic, rules, answers };
}

function buildOf(loose: Loose, done: Done): Attempt | null {
  const { rules } = loose;
  const spoiled = allOf(loose.spoiled, MOST_FAULTS, checkOf);
  return spoiled && isText(rules) ? { ...done, kind: 'build', rules, spoiled } : null;
}

function markOf(loose: unknown): RawMark | null {
  if (!isRecord(loose) || !isText(loose.part)) return null;
  const fault = checkOf(loose.fault);
  const { part, sure, reading } = loose;
  const kind = LIMIT_KINDS.find((each) => each === loose.kind);
  const act = ACTS.find((each) => each === loose.act);
  if (fault === null || kind !== loose.kind || act !== loose.act) return null;
  if ((sure !== undefined && !isSure(sure)) || (reading !== undefined && !Number.isFinite(reading)))
    return null;
  return {
    part,
    fault,
    ...(isSure(sure) ? { sure } : {}),
    ...(typeof reading === 'number' ? { reading } : {}),
    ...(kind ? { kind } : {}),
    ...(act ? { act } : {}),
  };
}

function faultOf(loose: unknown): FaultMet | null {
  if (!isRecord(loose)) return null;
  const fault = checkOf(loose.fault);
  const hazard = HAZARDS.find((each) => each === loose.hazard);
  const outcome = FAULT_OUTCOMES.find((each) => each === loose.outcome);
  const named = loose.named === null ? null : (checkOf(loose.named) ?? undefined);
  const { sure, readRight } = loose;
  if (fault === null || hazard === undefined || outcome === undefined || named === undefined) return null;
  if ((sure !== null && !isSure(sure)) || (readRight !== null && typeof readRight !== 'boolean')) return null;
  return { fault, hazard, outcome, named, sure, readRight };
}

function falseCallOf(loose: unknown): FalseCall | null {
  if (!isRecord(loose)) return null;
  const fault = checkOf(loose.fault);
  const { sure } = loose;
  return fault !== null && (sure === null || isSure(sure)) ? { fault, sure } : null;
}

function checkOf(loose: unknown): CheckId | null {
  return CHECKS.find((check) => check === loose) ?? null;
}

function isSure(loose: unknown): loose is Sure {
  return loose === 1 || loose === 2 || loose === 3;
}

function isText(loose: unknown): loose is string {
  return typeof loose === 'string' && loose.length <= LONGEST_TEXT;
}

function isWhole(loose: unknown, least: number, most: number): loose is number {
  return typeof loose === 'number' && Number.isInteger(loose) && loose >= least && loose <= most;
}

/** Every entry read; null when one cannot be, or when there are too many. */
function allOf<T>(loose: unknown, most: number, parse: (entry: unknown) => T | null): readonly T[] | null {
  if (!Array.isArray(loose) || loose.length > most) return null;
  const read: T[] = [];
  for (const entry of loose) {
    const each = parse(entry);
    if (each === null) return null;
    read.push(each);
  }
  return read;
}
