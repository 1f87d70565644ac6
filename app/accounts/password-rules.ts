import * as z from 'zod';
import { FEWEST_PASSWORD_SIGNS, MOST_PASSWORD_SIGNS } from './accounts';

/** Words that lists of guesses begin with, of two that begin alike the longer first. A password of them and numbers is as good as none. */
const GUESSED_FIRST =
  'password passw0rd passwort motdepasse contrasena welcome letmein iloveyou administrator admin instructor teacher master dragon monkey sunshine princess football baseball bricklayer brickwork bricks brick masonry mason readthewall changeme secret'.split(
    ' ',
  );
const KEYS_IN_A_ROW = /^(qwerty|asdf|zxcv|abc)/;
const FEWEST_DIFFERENT_SIGNS = 6;

/** At least twelve signs of any kind; nothing that is tried first. */
export const newPassword = z
  .string({ error: 'Choose a password.' })
  .min(
    FEWEST_PASSWORD_SIGNS,
    `Choose a password of at least ${FEWEST_PASSWORD_SIGNS} signs. A few words in a row are easy to keep in mind.`,
  )
  .max(MOST_PASSWORD_SIGNS, `Choose a password of at most ${MOST_PASSWORD_SIGNS} signs.`)
  .refine(
    (text) => !isEasilyGuessed(text),
    'This password is one of the first that people try. Choose another.',
  );

function isEasilyGuessed(password: string): boolean {
  const letters = password.toLowerCase().replaceAll(/[^a-z]/g, '');
  const rest = afterGuessedWords(letters);
  return new Set(password).size < FEWEST_DIFFERENT_SIGNS || rest === '' || KEYS_IN_A_ROW.test(rest);
}

function afterGuessedWords(letters: string): string {
  const word = GUESSED_FIRST.find((each) => letters.startsWith(each));
  return word === undefined ? letters : afterGuessedWords(letters.slice(word.length));
}

/** The name of a person as they write it: no control signs, single spaces. */
export const personName = z
  .string({ error: 'Type a name.' })
  .transform((text) =>
    text
      .normalize('NFC')
      .replaceAll(/[\p{C}\s]+/gu, ' ')
      .trim(),
  )
  .pipe(z.string().min(1, 'Type a name.').max(60, 'Type a shorter name: 60 signs at most.'));

export const emailAddress = z
  .string({ error: 'Type an e-mail address.' })
  .trim()
  .max(200, 'Type a shorter e-mail address.')
  .pipe(z.email('Type an e-mail address, like name@example.org.'));
