import type { Mm } from '../units';
import type { Wall } from '../wall/model';
import type { Part } from '../wall/parts';
import type { PanelSurvey, Survey } from '../wall/survey';
import type { InstrumentId, ReadingUnit } from './instrument';
import type { Reading } from './reading';

/** What an instrument reads off: the place it is held to, the panel that is on, and the whole wall. */
export interface Place {
  readonly part: Part;
  readonly panel: PanelSurvey;
  readonly survey: Survey;
  readonly lifted: boolean;
}

/** Where and how an instrument is held: all readings of one go share this. */
export interface ReadingContext {
  readonly instrument: InstrumentId;
  readonly part: string;
  /** A number out of the wall's own data: the same wall always reads the same. */
  readonly seed: number;
  readonly turned: boolean;
}

/** A reading's size: the true value, the step shown, and the most it may be off. */
export interface TrueValue {
  readonly value: number;
  readonly unit: ReadingUnit;
  readonly resolution: number;
  readonly error: number;
  readonly words?: string | null;
  readonly fine?: boolean;
}

/** A length as the tape shows it. */
export type ReadMm = (what: string, value: Mm) => Reading;

/**
 * A number as an instrument shows it: off by a share of the error that the place and the quantity alone decide, then to the nearest step.
 * Never off by more than the error: the draw keeps to three quarters of it, less half a step (so that sixteenths of an inch fit too).
 */
export function readOff(context: ReadingContext, what: string, truth: TrueValue): Reading {
  const { value, unit, resolution, error, words = null, fine = false } = truth;
  const reach = Math.max(0, error * 0.75 - resolution / 2);
  const off =
    (2 * shareOf(`${context.instrument} ${context.part} ${what} ${context.turned}`, context.seed) - 1) *
    reach;
  return {
    instrument: context.instrument,
    part: context.part,
    what,
    value: error === 0 ? value : toStep(value + off, resolution),
    unit,
    words,
    error,
    fine,
    turned: context.turned,
  };
}

/** Words for a size of nothing, of one way (+) and of the other (−). */
export type SignWords = readonly [none: string, over: string, under: string];

/** A size without its sign: the sign is in the words, by what was read and not by what is true. */
export function sized(reading: Reading, ways: SignWords): Reading {
  const value = reading.value ?? 0;
  return { ...reading, value: Math.abs(value), words: value === 0 ? ways[0] : value > 0 ? ways[1] : ways[2] };
}

/** A gap or a length cannot be less than nothing, whatever the hand does. */
export function notNegative(reading: Reading): Reading {
  return { ...reading, value: Math.max(0, reading.value ?? 0) };
}

/** A reading that two others or a quotient give: no draw of its own, only the step. Its error is theirs, gathered. */
export function worked(context: ReadingContext, what: string, truth: TrueValue): Reading {
  const { value, resolution } = truth;
  return {
    ...readOff(context, what, { ...truth, error: 0 }),
    value: toStep(value, resolution),
    error: truth.error,
  };
}

/** A reading in words. */
export function inWords(context: ReadingContext, what: string, words: string): Reading {
  return { ...readOff(context, what, { value: 0, unit: '', resolution: 0, error: 0, words }), value: null };
}

/** To the nearest step, halves up. A step of a tenth is not exact in binary, so whole steps are divided, not multiplied, where that is exact. */
export function toStep(value: number, step: number): number {
  if (step === 0) return value;
  const steps = Math.floor(value / step + 0.5);
  const perOne = Math.round(1 / step);
  const rounded = step < 1 ? steps / perOne : steps * step;
  return rounded === 0 ? 0 : rounded;
}

/** A share from 0 up to (not with) 1 out of a name and a number, by integers only: every engine gives the same. */
export function shareOf(name: string, seed: number): number {
  let hash = 2166136261 ^ seed;
  for (let index = 0; index < name.length; index++) {
    hash = Math.imul(hash ^ name.charCodeAt(index), 16777619);
  }
  hash = Math.imul(hash ^ (hash >>> 15), 0x2c1b3c6d);
  hash = Math.imul(hash ^ (hash >>> 12), 0x297a2d39);
  return ((hash ^ (hash >>> 15)) >>> 0) / 4294967296;
}

/** A whole number out of where and how the units lie, in eighths of a millimetre. */
export function seedOf({ units }: Wall): number {
  let hash = units.length;
  for (const { x, y, length, set } of units) {
    for (const size of [x, y, length, set]) hash = Math.imul(hash ^ Math.round(size * 8), 16777619);
  }
  return hash;
}
