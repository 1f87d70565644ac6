import { type Brief, BriefError } from '../../lib/generate/brief';
import { parseCode } from '../../lib/generate/wall-code';
import { codeProblem } from './brief-problems';

/** The brief of a code, or what is wrong with the code in one sentence. */
export function readCode(code: string): Brief | string {
  try {
    return parseCode(plainCode(code));
  } catch (error) {
    if (!(error instanceof BriefError)) throw error;
    return codeProblem(error);
  }
}

/** A code as typed: the address may carry it with escapes, also broken ones. */
export function plainCode(code: string): string {
  try {
    return decodeURIComponent(code);
  } catch {
    return code;
  }
}
