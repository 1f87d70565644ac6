import * as z from 'zod';
import { STEPS } from '../../../lib/classes/statistics/wall-answer';

/** Under this path on every site, for good. */
export const BOOK_SCHEMA_PATH = '/api/export/schema/mark-book-1.json';
export const BOOK_SCHEMA_VERSION = 1;

const share = z.number().min(0).max(1);
const moment = z.string().regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/);
const sure = z.union([z.literal(1), z.literal(2), z.literal(3)]);
const tally = z.strictObject({ got: z.int().min(0), of: z.int().min(1) });

const wall = z.strictObject({
  place: z.int().min(1),
  code: z.string().describe('Opens the very same wall on any copy of the site.'),
  score: share,
  saysSound: z.boolean(),
  faults: z.array(
    z.strictObject({
      fault: z.string(),
      found: z.boolean(),
      named: z.string().nullable().describe('What the learner called it; null when it was not found.'),
      sure: sure.nullable().describe('1 unsure, 2 fairly sure, 3 certain.'),
    }),
  ),
  falseMarks: z.array(z.strictObject({ fault: z.string(), part: z.string(), sure })),
  steps: z
    .partialRecord(z.enum(STEPS), tally)
    .describe('A step that was not asked for is absent, which is not the same as 0.'),
});

const handIn = z.strictObject({
  work: z.string(),
  number: z.int().min(1).describe('Which try.'),
  handedInAt: moment,
  late: z.boolean(),
  state: z.enum(['handed in', 'marked', 'released']),
  score: share
    .nullable()
    .describe('Null while it is not marked. An instructor’s own mark goes before the marking.'),
  standardError: share.nullable(),
  overridden: z.boolean(),
  markings: z.int().min(0).describe('How often it was marked; over 1: marked again.'),
  walls: z.array(wall),
});

export const learnerRecord = z.strictObject({ id: z.string(), name: z.string(), handIns: z.array(handIn) });
export type LearnerRecord = z.infer<typeof learnerRecord>;

const book = z.strictObject({
  $schema: z.string(),
  schemaVersion: z.literal(BOOK_SCHEMA_VERSION),
  exportedAt: moment,
  group: z.strictObject({ id: z.string(), name: z.string() }),
  works: z.array(
    z.strictObject({
      id: z.string(),
      title: z.string(),
      walls: z.int().min(1),
      sameForAll: z.boolean(),
      dueAt: moment.nullable(),
    }),
  ),
  learners: z.array(learnerRecord),
});
export type Book = z.infer<typeof book>;

export const BOOK_SCHEMA = {
  ...z.toJSONSchema(book, { target: 'draft-2020-12' }),
  $id: BOOK_SCHEMA_PATH,
  title: 'Mark book of one group',
};
