import * as z from 'zod';
import { oneLine } from '../request/one-line';
import { wrongField } from '../request/refusal';
import { FEWEST_PASSWORD_SIGNS, MOST_PASSWORD_SIGNS } from './accounts';
import { isEasilyGuessed, isOwnWords } from './guessed-password';

/** At least twelve signs of any kind; nothing that is tried first. */
export const newPassword = z
  .string({ error: 'Choose a password.' })
  .min(
    FEWEST_PASSWORD_SIGNS,
    `Choose a password of at least ${FEWEST_PASSWORD_SIGNS} characters. A few words in a row are easy to remember.`,
  )
  .max(MOST_PASSWORD_SIGNS, `Choose a password of at most ${MOST_PASSWORD_SIGNS} characters.`)
  .refine(
    (text) => !isEasilyGuessed(text),
    'This password is one of the first that people try. Choose another.',
  );

/** A password that somebody has. */
export const typedPassword = z
  .string({ error: 'Type your password.' })
  .min(1, 'Type your password.')
  .max(MOST_PASSWORD_SIGNS, `A password has at most ${MOST_PASSWORD_SIGNS} characters.`);

/** @throws Refusal where somebody's new password is their own name or e-mail. */
export function refuseOwnWords(
  password: string,
  person: { readonly name: string; readonly email: string },
  field = 'password',
): void {
  if (isOwnWords(password, person)) {
    throw wrongField(field, 'This password is mostly your own name or e-mail. Choose another.');
  }
}

/** The name of a person as they write it. */
export const personName = z
  .string({ error: 'Type a name.' })
  .transform(oneLine)
  .pipe(z.string().min(1, 'Type a name.').max(60, 'Type a shorter name: 60 characters at most.'));

export const emailAddress = z
  .string({ error: 'Type an e-mail address.' })
  .trim()
  .max(200, 'Type a shorter e-mail address.')
  .pipe(z.email('Type an e-mail address, like name@example.org.'));

/** Six digits from the phone, or a recovery code. */
export const typedCode = z
  .string({ error: 'Type the code.' })
  .min(1, 'Type the code.')
  .max(40, 'The code is shorter.');
