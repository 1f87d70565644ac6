import type { Topic } from '../generate/topics';
import type { CheckId, Hazard } from '../inspect/finding';
import type { RawMark, Sure } from '../marking/mark';

/** Of every attempt written today. An attempt says its own version: devices of different age may share a record. */
export const ATTEMPT_VERSION = 1;

/** What every attempt says, whatever was done. It is written once and stays as it is. */
interface Done {
  readonly version: typeof ATTEMPT_VERSION;
  /** The same for one attempt on every device: records are merged by it. */
  readonly id: string;
  /** When it was done: ms since 1970 in UTC, by the clock of the device. */
  readonly at: number;
  /** Minutes by which the time of day there was ahead of UTC. */
  readonly zone: number;
  /** For how long the page was on the screen, ms; null where nobody took the time. */
  readonly spentMs: number | null;
}

/** The ways to practise on which places are marked and faults named. */
export const WALL_WAYS = ['full wall', 'set work', 'pair', 'guided wall'] as const;
export type WallWay = (typeof WALL_WAYS)[number];

export const FAULT_OUTCOMES = ['found', 'wrong name', 'one joint off', 'missed'] as const;
export type FaultOutcome = (typeof FAULT_OUTCOMES)[number];

/** One fault of the wall, and what became of it. */
export interface FaultMet {
  readonly fault: CheckId;
  readonly hazard: Hazard;
  readonly outcome: FaultOutcome;
  /** What the reader called it; null where it was not found. */
  readonly named: CheckId | null;
  /** How sure the reader was; null where it was not found or not asked. */
  readonly sure: Sure | null;
  /** Whether the measure given was near enough; null where none was. */
  readonly readRight: boolean | null;
}

/** A mark where nothing is wrong. */
export interface FalseCall {
  readonly fault: CheckId;
  readonly sure: Sure | null;
}

export interface WallAttempt extends Done {
  readonly kind: WallWay;
  /** Opens the wall again. */
  readonly wall: string;
  readonly topic: Topic;
  /** 1 (easy) to 5 (hard). */
  readonly difficulty: number;
  readonly marks: readonly RawMark[];
  /** None on a sound wall. */
  readonly faults: readonly FaultMet[];
  readonly falseCalls: readonly FalseCall[];
}

/** A round of quick looks: sound, or is something wrong? */
export interface LookAttempt extends Done {
  readonly kind: 'quick look';
  readonly rules: string;
  readonly round: number;
  readonly look: string;
  /** Difficulty of its walls. */
  readonly level: number;
  /** Seconds for each wall; null without a clock. */
  readonly time: number | null;
  readonly walls: readonly {
    readonly code: string;
    readonly faulty: boolean;
    readonly saidFaulty: boolean;
  }[];
}

export interface QuestionAttempt extends Done {
  readonly kind: 'questions';
  readonly topic: string;
  readonly rules: string;
  readonly answers: readonly { readonly family: string; readonly right: boolean }[];
}

/** A wall that the reader spoiled: which limits were crossed on it. */
export interface BuildAttempt extends Done {
  readonly kind: 'build';
  readonly rules: string;
  readonly spoiled: readonly CheckId[];
}

export type Attempt = WallAttempt | LookAttempt | QuestionAttempt | BuildAttempt;
export type AttemptKind = Attempt['kind'];

export function isOfWall(attempt: Attempt): attempt is WallAttempt {
  return WALL_WAYS.some((way) => way === attempt.kind);
}

const MINUTE = 60_000;
const DAY = 86_400_000;

/** The day of the calendar on which it was done, where it was done: a whole number, one more for each day. */
export function dayOf({ at, zone }: Pick<Attempt, 'at' | 'zone'>): number {
  return Math.floor((at + zone * MINUTE) / DAY);
}
