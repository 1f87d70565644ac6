import { isRecord } from '../json/read-json';
import { RULE_SETS, type RuleSetId } from '../limits/limit';
import { type Looked, WAYS } from './note';
import { type Answer, SEEN } from './question';
import { type Answers, isQuestion, questionOf } from './stops';

/** Of the records kept on the device. A record of a later version is left alone. */
export const LOOK_VERSION = 1;

/** Whom to call, as the reader wrote it down. */
export const CALLS = ['emergency', 'engineer', 'mason'] as const;
export type Call = (typeof CALLS)[number];
export type Calls = Readonly<Partial<Record<Call, string>>>;

/** A look round as it is kept: dated, and opened again. */
export interface Look extends Looked {
  readonly version: typeof LOOK_VERSION;
  readonly id: string;
  /** Which wall; the reader's own word for it. */
  readonly name: string;
  /** Milliseconds since 1970. */
  readonly begun: number;
  readonly changed: number;
  readonly calls: Calls;
}

const MOST_NAME = 80;
const MOST_CALL = 40;

/** Reads a kept record; null for one that cannot be read. What it holds beyond the questions of today is dropped. */
export function parseLook(kept: unknown): Look | null {
  if (!isRecord(kept) || kept.version !== LOOK_VERSION) return null;
  const { id, name, begun, changed, way, rules, answers, calls } = kept;
  if (typeof id !== 'string' || !isTime(begun) || !isTime(changed)) return null;
  const known = { way: WAYS.find((each) => each === way), rules: ruleSetOf(rules) };
  if (known.way === undefined || known.rules === undefined || !isRecord(answers)) return null;
  return {
    version: LOOK_VERSION,
    id,
    name: typeof name === 'string' ? name.slice(0, MOST_NAME) : '',
    begun,
    changed,
    way: known.way,
    rules: known.rules,
    answers: parseAnswers(answers),
    calls: isRecord(calls) ? parseCalls(calls) : {},
  };
}

/** Whether a question takes an answer: a word, or where a length is asked for one in range or that it was not seen. */
export function takesAnswer(id: string, answer: unknown): answer is Answer {
  if (!isQuestion(id)) return false;
  const { most } = questionOf(id);
  if (most === undefined) return SEEN.some((word) => word === answer);
  if (typeof answer === 'number') return answer >= 0 && answer <= most;
  return answer === 'cannot see' || answer === 'do not know';
}

/** What a telephone can dial of what was typed; undefined when it holds no digit. */
export function dialOf(typed: string): string | undefined {
  const dialled = typed.replace(/[^\d+*#]/g, '');
  return /\d/.test(dialled) ? dialled : undefined;
}

function parseAnswers(kept: Readonly<Record<string, unknown>>): Answers {
  return Object.fromEntries(Object.entries(kept).filter(([id, answer]) => takesAnswer(id, answer)));
}

function parseCalls(kept: Readonly<Record<string, unknown>>): Calls {
  return Object.fromEntries(
    CALLS.flatMap((call) => {
      const typed = kept[call];
      return typeof typed === 'string' ? [[call, typed.slice(0, MOST_CALL)]] : [];
    }),
  );
}

function ruleSetOf(text: unknown): RuleSetId | undefined {
  return RULE_SETS.find((rules) => rules === text);
}

function isTime(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value);
}
