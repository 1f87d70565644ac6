import type { Answer, Question } from './question';
import { STOPS_OUTSIDE } from './stops-outside';
import { STOPS_ROUND } from './stops-round';

/** The look round, in the order it is walked. */
export const STOPS = [...STOPS_OUTSIDE, ...STOPS_ROUND] as const;

export type LookStop = (typeof STOPS)[number];
export type StopId = LookStop['id'];
export type QuestionId = LookStop['questions'][number]['id'];
export type MeasureId = Extract<LookStop['questions'][number], { readonly most: number }>['id'];

export type Answers = Readonly<Partial<Record<QuestionId, Answer>>>;

export const QUESTIONS: readonly (Question & { readonly id: QuestionId; readonly stop: StopId })[] =
  STOPS.flatMap(({ id, questions }) => questions.map((question) => ({ ...question, stop: id })));

const BY_ID = new Map<string, (typeof QUESTIONS)[number]>(QUESTIONS.map((each) => [each.id, each]));

/** @throws RangeError for an id that no stop asks. */
export function questionOf(id: string): (typeof QUESTIONS)[number] {
  const question = BY_ID.get(id);
  if (question === undefined) throw new RangeError(`no question ${id}`);
  return question;
}

export function isQuestion(id: string): id is QuestionId {
  return BY_ID.has(id);
}

export function isMeasure(id: QuestionId): id is MeasureId {
  return questionOf(id).most !== undefined;
}
