import { expect, test } from 'vitest';
import { killSite } from '../kills/kill-site';

/** Three hundred of them: npm run bench -- kills. */
test.each([
  ['sqlite', { site: 4, database: 0 }],
  ['postgres', { site: 2, database: 2 }],
] as const)(
  'on %s the built site is killed in the middle of hand-ins: none acknowledged is lost, none half written',
  async (kind, kills) => {
    const { acknowledged, ...rest } = await killSite(kind, kills);
    expect(acknowledged).toBeGreaterThanOrEqual(4 * 5);
    expect(rest).toEqual({ lost: [], halfWritten: [], trailIsWhole: true });
  },
);
