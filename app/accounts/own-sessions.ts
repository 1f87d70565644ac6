import { accounts, LONGEST_SESSION_MS } from './accounts';
import type { Staff } from './people';

export interface OwnSession {
  readonly id: string;
  readonly device: string;
  readonly begun: number;
  /** To the hour. */
  readonly used: number;
  readonly isThis: boolean;
}

/** Where somebody is signed in: here first, then by when it was last used. */
export async function ownSessions({ userId, session }: Staff): Promise<readonly OwnSession[]> {
  const { internalAdapter } = await (await accounts()).$context;
  const rows = await internalAdapter.listSessions(userId);
  return rows
    .map(({ id, userAgent, createdAt, updatedAt }) => ({
      id,
      device: userAgent || 'A browser',
      begun: createdAt.getTime(),
      used: updatedAt.getTime(),
      isThis: id === session.id,
    }))
    .filter(({ begun }) => Date.now() - begun <= LONGEST_SESSION_MS)
    .sort((a, b) => Number(b.isThis) - Number(a.isThis) || b.used - a.used);
}
