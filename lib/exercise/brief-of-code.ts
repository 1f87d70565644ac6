import { type Brief, BriefError } from '../generate/brief';
import { parseCode } from '../generate/wall-code';

/** The brief of a stored code; null for one that a newer version of the site gave out. */
export function briefOfCode(code: string): Brief | null {
  try {
    return parseCode(code);
  } catch (error) {
    if (error instanceof BriefError) return null;
    throw error;
  }
}
