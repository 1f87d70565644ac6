import { dictionary } from '@zxcvbn-ts/language-common';

/** Passwords that people choose most often, in small letters: what lists of guesses begin with. */
const COMMON: ReadonlySet<string> = new Set(dictionary['passwords-common']);
const KEYS_IN_A_ROW = /^(qwerty|asdf|zxcv|abc)/;
const FEWEST_DIFFERENT_SIGNS = 6;
/** What has to be left of a password when its owner's name and e-mail, or the words of the site, are taken out. */
const FEWEST_OTHER_SIGNS = 8;
/** What anybody would try at this site, whoever signs in. */
const SITE_WORDS = [
  'read the wall',
  'read-the-wall',
  'readthewall',
  'masonry',
  'bricklayer',
  'bricklaying',
  'brickwork',
  'stonework',
  'apprentice',
  'instructor',
  'password',
];
/** Shorter pieces of a name are in half of all words. */
const SHORTEST_OWN_WORD = 4;

const RUN = '01234567890';
const BACKWARDS = '09876543210';

/** One common password, also one with numbers about it or said several times; numbers alone, like dates; keys in a row; few signs; words of the site. */
export function isEasilyGuessed(password: string): boolean {
  const whole = password.toLowerCase();
  const letters = whole.replaceAll(/[^a-z]/g, '');
  return (
    new Set(password).size < FEWEST_DIFFERENT_SIGNS ||
    /^\d+$/.test(whole) ||
    KEYS_IN_A_ROW.test(letters) ||
    isMostly(whole, SITE_WORDS) ||
    [whole, letters, saidOnce(whole), saidOnce(letters)].some((text) => COMMON.has(text))
  );
}

/** Digits that others try first: a run such as 1234 or 8765, a part said over again such as 1111 or 1212, and the commonest of the kept list. */
export function isEasyPin(pin: string): boolean {
  return RUN.includes(pin) || BACKWARDS.includes(pin) || saidOnce(pin) !== pin || COMMON.has(pin);
}

/** 'trowel' of 'troweltrowel'. */
function saidOnce(text: string): string {
  for (let length = 1; length <= text.length / 2; length += 1) {
    const part = text.slice(0, length);
    if (part.repeat(text.length / length) === text) return part;
  }
  return text;
}

/** Whether a password is little more than its owner's name or e-mail. */
export function isOwnWords(
  password: string,
  { name, email }: { readonly name: string; readonly email: string },
): boolean {
  const own = [email, name, ...`${name} ${email}`.split(/[\s@.]/)]
    .map((word) => word.toLowerCase())
    .filter((word) => word.length >= SHORTEST_OWN_WORD);
  return isMostly(password.toLowerCase(), own);
}

function isMostly(password: string, words: readonly string[]): boolean {
  const rest = words.reduce((left, word) => left.replaceAll(word, ''), password);
  return rest.length < Math.min(password.length, FEWEST_OTHER_SIGNS);
}
