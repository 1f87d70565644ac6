import { inches } from '../units';
import type { Answer, NumberQuestion, Option, OrderQuestion, PickQuestion, Question } from './question';

/** Told after an answer: what was wrong, as far as it can be told, then how the answer comes about, then its source. */
export interface Verdict {
  readonly right: boolean;
  readonly explanation: string;
}

/**
 * Marks an answer. A number is right within the question's tolerance, ends included. Picks are right when all that apply are
 * picked and nothing else; an order when every step is in its place. An answer of the wrong sort is wrong.
 */
export function checkAnswer(question: Question, answer: Answer): Verdict {
  const { right, told } = judge(question, answer);
  const parts = [told, question.explanation, `Source: ${question.source}`];
  return { right, explanation: parts.filter((part) => part !== '').join(' ') };
}

function judge(question: Question, answer: Answer): { readonly right: boolean; readonly told: string } {
  switch (question.kind) {
    case 'number':
      return typeof answer === 'number' ? judgeNumber(question, answer) : unread('This asks for a number.');
    case 'choose':
    case 'limit-kind': {
      const chosen = question.options.find(({ id }) => id === answer);
      if (chosen === undefined) return unread('This asks for one of the answers.');
      return { right: chosen.id === question.answer, told: chosen.why };
    }
    case 'pick':
      return Array.isArray(answer) ? judgePicks(question, answer) : unread('This asks for all that apply.');
    case 'order':
      return Array.isArray(answer) ? judgeOrder(question, answer) : unread('This asks for an order.');
  }
}

function unread(told: string) {
  return { right: false, told };
}

function judgeNumber(question: NumberQuestion, value: number) {
  const within = (other: number, tolerance: number) => Math.abs(value - other) <= tolerance * (1 + 1e-9);
  if (within(question.answer, question.tolerance)) return { right: true, told: '' };
  const known = question.mistakes.find((mistake) => within(mistake.value, question.tolerance));
  if (known !== undefined) return { right: false, told: known.why };
  return { right: false, told: unitMistake(question, within) };
}

/** Inches for mm or the other way about: told only where the question asks for a length. */
function unitMistake(
  question: NumberQuestion,
  within: (other: number, tolerance: number) => boolean,
): string {
  const inch = inches(1);
  const { unit, answer, tolerance } = question;
  if (unit === 'mm' && within(answer / inch, Math.max(tolerance / inch, 0.1))) {
    return 'That is the right length in inches. This asks for millimetres.';
  }
  if (unit === 'in' && within(answer * inch, tolerance * inch)) {
    return 'That is the right length in millimetres. This asks for inches.';
  }
  return '';
}

function judgePicks(question: PickQuestion, picked: readonly string[]) {
  const whysOf = (options: readonly Option[]) =>
    options.map(({ text, why }) => `“${text}”: ${why}`).join(' ');
  const wanted = (id: string) => question.answer.includes(id);
  const tooMany = question.options.filter(({ id }) => picked.includes(id) && !wanted(id));
  const missed = question.options.filter(({ id }) => !picked.includes(id) && wanted(id));
  const known = picked.every((id) => question.options.some((option) => option.id === id));
  if (known && tooMany.length === 0 && missed.length === 0) return { right: true, told: '' };
  const told = [
    tooMany.length === 0 ? '' : `You picked what does not apply. ${whysOf(tooMany)}`,
    missed.length === 0 ? '' : `You left out what applies. ${whysOf(missed)}`,
  ];
  return { right: false, told: told.filter((part) => part !== '').join(' ') };
}

function judgeOrder(question: OrderQuestion, given: readonly string[]) {
  const place = question.answer.findIndex((id, index) => given[index] !== id);
  if (place === -1 && given.length === question.answer.length) return { right: true, told: '' };
  const due = question.options.find(({ id }) => id === question.answer[place]);
  const steps = question.answer.flatMap(
    (id) => question.options.find((option) => option.id === id)?.text ?? [],
  );
  const inOrder = `In order: ${steps.map((text, index) => `${index + 1}. ${text}.`).join(' ')}`;
  const told = due === undefined ? '' : `Step ${place + 1} is “${due.text}”. ${due.why} `;
  return { right: false, told: told + inOrder };
}
