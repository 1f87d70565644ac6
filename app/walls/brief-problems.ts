import type { FieldProblem, WallFormField } from '../../components/forms/wall-form';
import { type BriefError, MAX_SEED } from '../../lib/generate/brief';
import { capital } from '../../lib/limits/format-amount';

/** 'wall code "3K7": has 3 signs' -> 'Has 3 signs': the page says where, so the sentence need not. */
export function codeProblem(error: BriefError): string {
  return sentence(error.message.replace(/^wall code( ".*?")?: /s, ''));
}

/** Every field of a brief that is wrong, each with a sentence in the words of the form. */
export function fieldProblems(
  typed: Readonly<Record<string, string | number>>,
  fields: readonly WallFormField[],
): readonly FieldProblem[] {
  const wrong = fields.flatMap(({ name, label, choices }): FieldProblem[] =>
    choices.some(({ value }) => value === String(typed[name]))
      ? []
      : [{ field: name, problem: `${label}: “${short(typed[name])}” is not in the list. Choose from it.` }],
  );
  const seed = String(typed.seed);
  if (/^\d{1,12}$/.test(seed) && Number(seed) <= MAX_SEED) return wrong;
  const problem = `“${short(seed)}” is not a whole number from 0 to ${MAX_SEED.toLocaleString('en')}.`;
  return [...wrong, { field: 'seed', problem }];
}

function short(value: string | number | undefined): string {
  const text = String(value);
  return text.length > 40 ? `${text.slice(0, 40)}…` : text;
}

function sentence(text: string): string {
  return `${capital(text)}.`;
}
