import type { ColumnType } from 'kysely';

type Fixed<T> = ColumnType<T, T, never>;

/** Kept by the sign-in library. Its own times and yes/no differ between the databases: read them through the library. */
type LibraryTime = ColumnType<unknown, Date | string, Date | string>;
type LibraryYesNo = ColumnType<unknown, boolean | number, boolean | number>;

export interface UserTable {
  id: Fixed<string>;
  name: string;
  email: string;
  emailVerified: LibraryYesNo;
  image: string | null;
  createdAt: LibraryTime;
  updatedAt: LibraryTime;
  role: 'owner' | 'instructor';
  twoFactorEnabled: LibraryYesNo | null;
}

/** The second step of signing in. Secret and recovery codes are encrypted with the secret of the site. */
export interface TwoFactorTable {
  id: Fixed<string>;
  secret: string;
  backupCodes: string;
  userId: string;
  /** Not until the first code was right. */
  verified: LibraryYesNo | null;
  failedVerificationCount: number | null;
  lockedUntil: LibraryTime | null;
}

export interface SessionTable {
  id: Fixed<string>;
  expiresAt: LibraryTime;
  token: string;
  createdAt: LibraryTime;
  updatedAt: LibraryTime;
  ipAddress: string | null;
  userAgent: string | null;
  userId: string;
}

export interface AccountTable {
  id: Fixed<string>;
  accountId: string;
  providerId: string;
  userId: string;
  accessToken: string | null;
  refreshToken: string | null;
  idToken: string | null;
  accessTokenExpiresAt: LibraryTime | null;
  refreshTokenExpiresAt: LibraryTime | null;
  scope: string | null;
  password: string | null;
  createdAt: LibraryTime;
  updatedAt: LibraryTime;
}

export interface VerificationTable {
  id: Fixed<string>;
  identifier: string;
  value: string;
  expiresAt: LibraryTime;
  createdAt: LibraryTime;
  updatedAt: LibraryTime;
}

export interface RateLimitTable {
  id: Fixed<string>;
  key: string;
  count: number;
  lastRequest: number;
}
