import { symmetricDecrypt } from 'better-auth/crypto';
import * as z from 'zod';
import { makeCode, tidyCode } from './codes';
import { hashSecret, isSecretOf } from './passwords';

const COUNT = 10;

/**
 * How the sign-in library is to keep recovery codes: scrambled one by one, like passwords, since 40 bits can be searched. An earlier
 * release kept them encrypted; those go on working, and are scrambled as soon as one of them is used.
 */
export function recoveryCodesKept(secret: string) {
  return {
    customBackupCodesGenerate: () => Array.from({ length: COUNT }, () => makeCode(2)),
    storeBackupCodes: {
      encrypt: async (list: string) => {
        const codes = z.array(z.string()).parse(JSON.parse(list));
        return JSON.stringify(
          await Promise.all(codes.map((code) => (isScrambled(code) ? code : hashSecret(code)))),
        );
      },
      decrypt: async (kept: string) =>
        kept.startsWith('[') ? kept : symmetricDecrypt({ key: secret, data: kept }),
    },
  };
}

function isScrambled(code: string): boolean {
  return code.startsWith('$');
}

/** The one of these that was typed, as it is kept; undefined when none was. */
export async function keptCodeOf(kept: readonly string[], typed: string): Promise<string | undefined> {
  const code = tidyCode(typed);
  const fits = await Promise.all(
    kept.map((each) => (isScrambled(each) ? isSecretOf(each, code) : each === code)),
  );
  return kept.find((_, place) => fits[place]);
}
