import { CATALOGUE } from './catalogue';
import { CHECKS, type CheckId } from './finding';

/**
 * Faults that answer to plain or trade words, the best first: those with most of the words in their name, then in their other names, then
 * catalogue order. Every word has to begin some word of the name, the other names or the looks. Capitals, punctuation and a plural s do not
 * count. No words: all faults in catalogue order. Words that nothing answers to: none.
 */
export function findFaults(words: string): readonly CheckId[] {
  const asked = wordsOf(words).map(singular);
  return CHECKS.map((check) => ({ check, ...hitsOf(check, asked) }))
    .filter(({ all }) => all)
    .sort((a, b) => b.inName - a.inName || b.inOtherNames - a.inOtherNames)
    .map(({ check }) => check);
}

function hitsOf(check: CheckId, asked: readonly string[]) {
  const { name, alsoCalled, looksLike } = CATALOGUE[check];
  const names = wordsOf(name);
  const otherNames = wordsOf(alsoCalled);
  const looks = wordsOf(looksLike);
  return {
    inName: asked.filter((word) => begins(word, names)).length,
    inOtherNames: asked.filter((word) => begins(word, otherNames)).length,
    all: asked.every((word) => begins(word, [...names, ...otherNames, ...looks])),
  };
}

function wordsOf(text: string): readonly string[] {
  return text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
}

/** `ties` finds `tie`. The s of a short word such as `is` stays. */
function singular(word: string): string {
  return word.length > 3 && word.endsWith('s') ? word.slice(0, -1) : word;
}

function begins(start: string, words: readonly string[]): boolean {
  return words.some((word) => word.startsWith(start));
}
