import { CHECKS } from '../../lib/inspect/finding';
import { INSTRUMENTS, READING_UNITS } from '../../lib/instruments/instrument';
import type { Reading } from '../../lib/instruments/reading';
import { isRecord, readJson } from '../../lib/json/read-json';
import { ACTS } from '../../lib/marking/act';
import { LIMIT_KINDS } from '../../lib/marking/five-marks';
import type { LengthSystem } from '../../lib/units';
import type { HalfMade, Mark, Phase, Work } from './work-state';

/** 1 had marks only, without openings-up and notebook; 2 had no mark half made. Both are still read. */
const VERSION = 3;
const READ_VERSIONS: readonly unknown[] = [1, 2, VERSION];
const SYSTEMS: readonly LengthSystem[] = ['mm', 'inches'];
const PHASES: readonly Phase[] = ['looking', 'review', 'handed in'];

/** The work on a wall as text for the browser to keep. */
export function formatWork({ marks, saysSound, phase, opened, readings, half }: Work): string {
  return JSON.stringify({
    version: VERSION,
    marks,
    saysSound,
    phase,
    opened,
    readings,
    half: half && keptHalf(half),
  });
}

/** Reads kept work back. Null, and left alone, if it is not work on a wall with these parts. */
export function parseWork(text: string | null, isPart: (id: string) => boolean): Work | null {
  const loose = readJson(text);
  if (!isRecord(loose) || !READ_VERSIONS.includes(loose.version)) return null;
  const marked = parseMarked(loose, isPart);
  const phase = PHASES.find((each) => each === loose.phase);
  if (marked === null || phase === undefined) return null;
  const begun = loose.half ?? null;
  const half = begun === null ? null : parseHalf(begun, isPart, marked.marks);
  return begun !== null && half === null ? null : { ...marked, phase, half };
}

/** What kept work and a kept answer have in common. */
export function parseMarked(
  loose: Readonly<Record<string, unknown>>,
  isPart: (id: string) => boolean,
): Pick<Work, 'marks' | 'saysSound' | 'opened' | 'readings'> | null {
  const marks = allOf(loose.marks, (mark) => parseMark(mark, isPart));
  const opened = allOf(loose.opened ?? [], (unit) =>
    typeof unit === 'string' && isPart(unit) ? unit : null,
  );
  const readings = allOf(loose.readings ?? [], (reading) => parseKeptReading(reading, isPart));
  if (marks === null || opened === null || readings === null) return null;
  return { marks, saysSound: loose.saysSound === true && marks.length === 0, opened, readings };
}

/** Every entry read; null when one cannot be. */
function allOf<T>(loose: unknown, parse: (entry: unknown) => T | null): readonly T[] | null {
  if (!Array.isArray(loose)) return null;
  const read = loose.flatMap((entry: unknown) => parse(entry) ?? []);
  return read.length === loose.length ? read : null;
}

function parseMark(loose: unknown, isPart: (id: string) => boolean): Mark | null {
  if (!isRecord(loose) || typeof loose.part !== 'string' || !isPart(loose.part)) return null;
  const fault = CHECKS.find((check) => check === loose.fault);
  const { sure, reading } = loose;
  if (fault === undefined || (sure !== 1 && sure !== 2 && sure !== 3)) return null;
  const kind = LIMIT_KINDS.find((each) => each === loose.kind);
  const act = ACTS.find((each) => each === loose.act);
  if (kind !== loose.kind || act !== loose.act) return null;
  if (reading !== undefined && !Number.isFinite(reading)) return null;
  return {
    part: loose.part,
    fault,
    sure,
    ...(typeof reading === 'number' ? { reading } : {}),
    ...(kind ? { kind } : {}),
    ...(act ? { act } : {}),
  };
}

/** Reads one entry of the notebook; null for anything that is none, or of other parts. */
export function parseKeptReading(loose: unknown, isPart: (id: string) => boolean): Reading | null {
  if (!isRecord(loose)) return null;
  const { part, what, value, words, error } = loose;
  const instrument = INSTRUMENTS.find((each) => each === loose.instrument);
  const unit = READING_UNITS.find((each) => each === loose.unit);
  if (instrument === undefined || unit === undefined) return null;
  if (typeof part !== 'string' || !isPart(part) || typeof what !== 'string') return null;
  if (typeof error !== 'number' || (value !== null && typeof value !== 'number')) return null;
  if (words !== null && typeof words !== 'string') return null;
  return {
    ...{ instrument, part, what, value, unit, words, error },
    fine: loose.fine === true,
    turned: loose.turned === true,
  };
}

/** As it has always been stored: its details under the name `said`. */
function keptHalf({ details, ...half }: HalfMade) {
  return { ...half, said: details };
}

function parseHalf(loose: unknown, isPart: (id: string) => boolean, marks: readonly Mark[]): HalfMade | null {
  if (!isRecord(loose) || !isRecord(loose.said)) return null;
  const { part, changing, words, place, sure } = loose;
  const { reading } = loose.said;
  if (typeof part !== 'string' || !isPart(part) || typeof words !== 'string') return null;
  if (changing !== null && (typeof changing !== 'number' || marks[changing]?.part !== part)) return null;
  if (place !== null && (typeof place !== 'string' || !isPart(place))) return null;
  if ((sure !== 1 && sure !== 2 && sure !== 3) || typeof reading !== 'string') return null;
  const fault = orNone(CHECKS, loose.fault);
  const kind = orNone(LIMIT_KINDS, loose.said.kind);
  const act = orNone(ACTS, loose.said.act);
  const system = SYSTEMS.find((each) => each === loose.system);
  if (fault === undefined || kind === undefined || act === undefined || system === undefined) return null;
  return { part, changing, words, fault, place, sure, details: { reading, kind, act }, system };
}

/** One of these, or null for none; undefined for anything else. */
function orNone<T>(known: readonly T[], loose: unknown): T | null | undefined {
  return loose === null ? null : known.find((each) => each === loose);
}
