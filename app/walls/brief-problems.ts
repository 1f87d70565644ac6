import type { BriefError } from '../../lib/generate/brief';

/** 'wall code "3K7": has 3 signs' -> 'Has 3 signs': the page says where, so the sentence need not. */
export function codeProblem(error: BriefError): string {
  return sentence(error.message.replace(/^wall code( ".*?")?: /s, ''));
}

/** The field a brief's problem belongs to, and the problem as a sentence. */
export function fieldProblem(error: BriefError): { readonly field: string; readonly problem: string } {
  const at = error.message.indexOf(': ');
  return { field: error.message.slice(0, at), problem: sentence(error.message.slice(at + 2)) };
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}
