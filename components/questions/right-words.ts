import type { Question } from '../../lib/questions/question';

/** The right answer in words. Steps in their order. */
export function rightWords(question: Question): string {
  if (question.kind === 'number') {
    const places = question.tolerance < 0.1 ? 1000 : 100;
    return `${Math.round(question.answer * places) / places} ${question.unit === 'times' ? '' : question.unit}`.trim();
  }
  const ids: readonly string[] = typeof question.answer === 'string' ? [question.answer] : question.answer;
  return ids.flatMap((id) => question.options.find((option) => option.id === id)?.text ?? []).join('; ');
}
