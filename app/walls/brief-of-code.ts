import { type Brief, BriefError } from '../../lib/generate/brief';
import { parseCode } from '../../lib/generate/wall-code';

/** The brief of a stored code; null for a code of an engine that this program no longer is. */
export function briefOfCode(code: string): Brief | null {
  try {
    return parseCode(code);
  } catch (error) {
    if (error instanceof BriefError) return null;
    throw error;
  }
}
