import { getMigrations } from 'better-auth/db/migration';
import { twoFactor } from 'better-auth/plugins/two-factor';
import { expect, test } from 'vitest';
import { KINDS, ownDatabase, readyStore } from './databases';

test.each(KINDS)('%s: the sign-in library finds all its tables and columns there', async (kind) => {
  const { db } = await readyStore(await ownDatabase(kind));
  const { toBeCreated, toBeAdded } = await getMigrations({
    database: { db, type: kind },
    secret: 'a-secret-of-thirty-two-signs-000',
    emailAndPassword: { enabled: true },
    plugins: [twoFactor()],
    rateLimit: { enabled: true, storage: 'database' },
    user: { additionalFields: { role: { type: 'string', input: false, required: true } } },
  });
  expect({ toBeCreated, toBeAdded }).toEqual({ toBeCreated: [], toBeAdded: [] });
});
