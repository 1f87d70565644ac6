import type { ColumnType, Generated } from 'kysely';
import type { AttemptState } from '../classes/attempt-state';
import type {
  AccountTable,
  RateLimitTable,
  SessionTable,
  TwoFactorTable,
  UserTable,
  VerificationTable,
} from './sign-in-tables';

/** 0 no, 1 yes: SQLite has no yes or no of its own. */
export type YesNo = 0 | 1;
/** Milliseconds since 1970, by the server's clock. */
export type Ms = number;
/** JSON as text: both databases keep it letter for letter. */
export type Json = string;

type Fixed<T> = ColumnType<T, T, never>;

export interface LearningGroupTable {
  id: Fixed<string>;
  name: string;
  join_code: string;
  /** Whether the code lets in names that are not on the roster. */
  takes_new: Generated<YesNo>;
  closed_at: Ms | null;
  created_at: Ms;
}

export interface GroupInstructorTable {
  group_id: Fixed<string>;
  user_id: Fixed<string>;
  part: 'lead' | 'co';
}

export interface LearnerTable {
  id: Fixed<string>;
  group_id: string;
  name: string;
  pin_hash: string | null;
  /** Of the one-time word without which nobody chooses a PIN for this name. */
  word_hash: ColumnType<string | null, string | null | undefined, string | null>;
  /** Percent of the time others get: 100 is the same. */
  time_factor: number;
  created_at: Ms;
  removed_at: Ms | null;
}

export interface LearnerSessionTable {
  token_hash: Fixed<string>;
  learner_id: string;
  created_at: Ms;
  expires_at: Ms;
  /** In words, such as 'Firefox on Android'; '' when it is not known. */
  device: Generated<string>;
}

/** Wrong tries for a PIN, an owner's code or a password, counted since a time. */
export interface ThrottleTable {
  key: string;
  count: number;
  since: Ms;
  last: Generated<Ms>;
}

export type WorkState = 'draft' | 'set' | 'closed';
export type Release = 'at once' | 'when due' | 'by hand';

export interface SetWorkTable {
  id: Fixed<string>;
  group_id: string;
  title: string;
  spec: Json;
  /** Never leaves the server. */
  secret_seed: string;
  state: WorkState;
  opens_at: Ms | null;
  due_at: Ms | null;
  grace_ms: number;
  release: Release;
  released_at: Ms | null;
  created_by: string;
  created_at: Ms;
}

/** The walls that a learner's first attempt will be given. */
export interface DrawnFormTable {
  set_work_id: Fixed<string>;
  learner_id: Fixed<string>;
  /** A GivenWall each. */
  walls: Fixed<Json>;
}

/** A learner handed this in and then deleted all their data. */
export interface DeletedWorkTable {
  id: Fixed<string>;
  set_work_id: Fixed<string>;
  learner_name: Fixed<string>;
  handed_in_at: Fixed<Ms>;
  deleted_at: Fixed<Ms>;
}

export interface AttemptTable {
  id: Fixed<string>;
  set_work_id: string;
  learner_id: string;
  /** From 1. */
  number: number;
  state: AttemptState;
  started_at: Ms;
  handed_in_at: Ms | null;
  late: YesNo;
  hand_in_key: string | null;
  /** SHA-256 of what was handed in, so that one key cannot stand for two hand-ins. */
  hand_in_hash: string | null;
}

export interface AttemptWallTable {
  attempt_id: Fixed<string>;
  /** From 1. */
  place: Fixed<number>;
  code: string;
  fingerprint: string;
  /** What the learner handed in; '[]' before. */
  marks: Json;
  readings: Json;
  says_sound: YesNo;
  opened: Json;
  spent_ms: number;
}

/** One use of an instrument, or one unit lifted, on a wall that the site draws. Parts by the names of the bare wall. */
export interface InstrumentUseTable {
  id: Fixed<string>;
  attempt_id: Fixed<string>;
  place: Fixed<number>;
  /** 'lift', or the id of an instrument. */
  used: Fixed<string>;
  part: Fixed<string>;
  at: Fixed<Ms>;
}

/** Never changed: a marking again adds the next version. */
export interface ResultVersionTable {
  attempt_id: Fixed<string>;
  /** From 1. */
  version: Fixed<number>;
  engine: Fixed<string>;
  /** One result a place, in order. */
  results: Fixed<Json>;
  /** 0 to 1. */
  score: Fixed<number>;
  reason: Fixed<string>;
  made_by: Fixed<string>;
  made_at: Fixed<Ms>;
}

/** The last one counts. */
export interface OverrideMarkTable {
  id: Fixed<string>;
  attempt_id: Fixed<string>;
  score: Fixed<number>;
  reason: Fixed<string>;
  made_by: Fixed<string>;
  made_at: Fixed<Ms>;
}

export interface CommentTable {
  id: Fixed<string>;
  attempt_id: Fixed<string>;
  text: string;
  made_by: Fixed<string>;
  made_at: Fixed<Ms>;
}

/** Written only by appendAudit. Holds ids and never names, so that a learner can be deleted and the chain still holds. */
export interface AuditTable {
  seq: Fixed<number>;
  at: Fixed<Ms>;
  actor: Fixed<string>;
  action: Fixed<string>;
  subject: Fixed<string>;
  detail: Fixed<Json>;
  previous: Fixed<string>;
  hash: Fixed<string>;
}

export interface CalendarLinkTable {
  token_hash: Fixed<string>;
  group_id: string;
  created_at: Ms;
}

export interface MigrationTable {
  number: Fixed<number>;
  name: Fixed<string>;
  applied_at: Fixed<Ms>;
}

export interface Tables {
  user: UserTable;
  session: SessionTable;
  twoFactor: TwoFactorTable;
  account: AccountTable;
  verification: VerificationTable;
  rateLimit: RateLimitTable;
  learning_group: LearningGroupTable;
  group_instructor: GroupInstructorTable;
  learner: LearnerTable;
  learner_session: LearnerSessionTable;
  throttle: ThrottleTable;
  set_work: SetWorkTable;
  drawn_form: DrawnFormTable;
  deleted_work: DeletedWorkTable;
  attempt: AttemptTable;
  attempt_wall: AttemptWallTable;
  instrument_use: InstrumentUseTable;
  result_version: ResultVersionTable;
  override_mark: OverrideMarkTable;
  comment: CommentTable;
  audit: AuditTable;
  calendar_link: CalendarLinkTable;
  migration: MigrationTable;
}
