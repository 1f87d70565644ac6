import * as z from 'zod';
import type { SetWorkSpec } from '../classes/set-work';
import { marksSchema } from '../exercise/read-marks';
import { TOPICS } from '../generate/topics';
import { readJson } from '../json/read-json';
import { RULE_SETS } from '../limits/limit';
import type { RawMark } from '../marking/mark';
import { WALL_KINDS } from '../wall/model';

/** A column of JSON that cannot be read: the message says which and where. It is left as it is. */
export class StoredJsonError extends Error {
  override name = 'StoredJsonError';
}

/** What is kept of a set work's walls: the spec, and the severity that its faulty walls are matched to (none in older works). */
export interface KeptSpec extends SetWorkSpec {
  readonly severity?: number;
}

const passMark = z.object({ share: z.number(), method: z.string(), person: z.string(), date: z.string() });
const spec = z.object({
  topics: z.array(z.enum(TOPICS)).min(1),
  kinds: z.array(z.enum(WALL_KINDS)).min(1),
  walls: z.number(),
  difficulty: z.number(),
  rules: z.enum(RULE_SETS),
  sameForAll: z.boolean(),
  // Older works gave their walls out whole, and go on doing so.
  offline: z.boolean().default(true),
  openingsUp: z.number().nullable(),
  minutes: z.number().nullable().default(null),
  lessons: z.array(z.string()),
  questionTopics: z.array(z.string()),
  attempts: z.number(),
  passMark: passMark.nullable().default(null),
  severity: z.number().exactOptional(),
});

interface Columns {
  readonly spec: KeptSpec;
  readonly 'spec: walls': Pick<KeptSpec, 'walls' | 'sameForAll' | 'passMark'>;
  readonly 'spec: minutes': Pick<KeptSpec, 'minutes'>;
  readonly 'spec: offline': Pick<KeptSpec, 'offline'>;
  readonly 'spec: openings': Pick<KeptSpec, 'openingsUp'>;
  readonly marks: readonly RawMark[];
  readonly readings: readonly unknown[];
  readonly opened: readonly string[];
  readonly walls: readonly { readonly place: number; readonly code: string; readonly fingerprint: string }[];
}

/** What each column of JSON holds; of a spec also the few fields that the mark book and the clock of a hand-in ask for. */
const COLUMNS: { readonly [C in keyof Columns]: z.ZodType<Columns[C]> } = {
  spec,
  'spec: walls': spec.pick({ walls: true, sameForAll: true, passMark: true }),
  'spec: minutes': spec.pick({ minutes: true }),
  'spec: offline': spec.pick({ offline: true }),
  'spec: openings': spec.pick({ openingsUp: true }),
  marks: marksSchema,
  readings: z.array(z.unknown()),
  opened: z.array(z.string()),
  walls: z.array(z.strictObject({ place: z.number(), code: z.string(), fingerprint: z.string() })),
};

/** Reads such a column, of whatever age. @throws StoredJsonError */
export function readStored<C extends keyof Columns>(column: C, json: string): Columns[C] {
  const read = COLUMNS[column].safeParse(readJson(json));
  if (read.success) return read.data;
  const [first] = read.error.issues;
  throw new StoredJsonError(`${[column, ...(first?.path ?? [])].join('.')}: ${first?.message}`);
}
