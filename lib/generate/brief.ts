import { RULE_SETS, type RuleSetId } from '../limits/limit';
import { WALL_KINDS, type WallKind } from '../wall/model';
import { TOPICS, type Topic } from './topics';

/** What is asked of the generator. Everything else about a wall follows from it. */
export interface Brief {
  readonly topic: Topic;
  readonly kind: WallKind;
  /** 1 (easy) to 5 (hard). */
  readonly difficulty: number;
  readonly rules: RuleSetId;
  /** Whole number from 0 to MAX_SEED. */
  readonly seed: number;
  /** The engine that lays it, where that is an earlier one: only a wall code names one. */
  readonly engine?: number;
}

/** Moves when the same brief would lay another wall: codes of the engine before then open the wall they always opened (lib/engines). */
export const ENGINE = 6;
export const MAX_SEED = 134_217_727;
export const DIFFICULTIES = [1, 2, 3, 4, 5] as const;

/** A brief or a wall code that cannot be used: the message says which part and what is allowed. */
export class BriefError extends Error {
  override name = 'BriefError';
}

/** Checks a brief made of loose values. @throws BriefError naming the field. */
export function parseBrief(loose: Readonly<Record<Exclude<keyof Brief, 'engine'>, unknown>>): Brief {
  return {
    topic: oneOf('topic', loose.topic, TOPICS),
    kind: oneOf('kind', loose.kind, WALL_KINDS),
    difficulty: whole('difficulty', loose.difficulty, 1, 5),
    rules: oneOf('rules', loose.rules, RULE_SETS),
    seed: whole('seed', loose.seed, 0, MAX_SEED),
  };
}

function oneOf<T extends string>(field: string, value: unknown, allowed: readonly T[]): T {
  const known = allowed.find((each) => each === value);
  if (known === undefined) {
    throw new BriefError(`${field}: "${shown(value)}" is not one of ${allowed.join(', ')}`);
  }
  return known;
}

function whole(field: string, value: unknown, least: number, most: number): number {
  const number = typeof value === 'string' && /^-?\d{1,12}$/.test(value) ? Number(value) : value;
  if (typeof number !== 'number' || !Number.isInteger(number) || number < least || number > most) {
    throw new BriefError(`${field}: "${shown(value)}" is not a whole number from ${least} to ${most}`);
  }
  return number;
}

function shown(value: unknown): string {
  const text = String(value);
  return text.length > 40 ? `${text.slice(0, 40)}…` : text;
}
