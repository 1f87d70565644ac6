import * as z from 'zod';
import { TOPICS } from '../../../lib/generate/topics';
import { CHECKS, HAZARDS } from '../../../lib/inspect/finding';
import { ATTEMPT_VERSION, FAULT_OUTCOMES, WALL_WAYS } from '../../../lib/learning/attempt';
import { RECORD_SCHEMA_PATH, RECORD_VERSION } from '../../../lib/learning/record';
import { ACTS } from '../../../lib/marking/act';
import { LIMIT_KINDS } from '../../../lib/marking/five-marks';

const check = z.enum(CHECKS);
const sure = z
  .union([z.literal(1), z.literal(2), z.literal(3)])
  .describe('1 unsure, 2 fairly sure, 3 certain.');
const done = {
  version: z.literal(ATTEMPT_VERSION),
  id: z.string().min(1).describe('The same for one attempt on every device.'),
  at: z.int().min(0).describe('When it was done: ms since 1970 in UTC, by the clock of the device.'),
  zone: z.int().min(-720).max(840).describe('Minutes by which the time of day there was ahead of UTC.'),
  spentMs: z.int().min(0).nullable(),
};

const wall = z.strictObject({
  ...done,
  kind: z.enum(WALL_WAYS),
  wall: z.string().describe('The wall code: opens the very same wall on any copy of the site.'),
  topic: z.enum(TOPICS),
  difficulty: z.int().min(1).max(5),
  marks: z.array(
    z.strictObject({
      part: z.string(),
      fault: check,
      sure: sure.optional(),
      reading: z.number().optional(),
      kind: z.enum(LIMIT_KINDS).optional(),
      act: z.enum(ACTS).optional(),
    }),
  ),
  faults: z
    .array(
      z.strictObject({
        fault: check,
        hazard: z.enum(HAZARDS),
        outcome: z.enum(FAULT_OUTCOMES),
        named: check.nullable().describe('What it was called; null when it was not found.'),
        sure: sure.nullable(),
        readRight: z
          .boolean()
          .nullable()
          .describe('Whether the measure given was near enough; null without one.'),
      }),
    )
    .describe('What was wrong with the wall. Empty on a sound one.'),
  falseCalls: z.array(z.strictObject({ fault: check, sure: sure.nullable() })),
});

const looks = z.strictObject({
  ...done,
  kind: z.literal('quick look'),
  rules: z.string(),
  round: z.int().min(0),
  look: z.string(),
  level: z.int().min(1).max(5),
  time: z.int().min(1).nullable().describe('Seconds for each wall; null without a clock.'),
  walls: z.array(z.strictObject({ code: z.string(), faulty: z.boolean(), saidFaulty: z.boolean() })),
});

const questions = z.strictObject({
  ...done,
  kind: z.literal('questions'),
  topic: z.string(),
  rules: z.string(),
  answers: z.array(z.strictObject({ family: z.string(), right: z.boolean() })),
});

const build = z.strictObject({
  ...done,
  kind: z.literal('build'),
  rules: z.string(),
  spoiled: z.array(check).describe('Faults the reader put on the wall.'),
});

const record = z.strictObject({
  $schema: z.string(),
  recordVersion: z.literal(RECORD_VERSION),
  attempts: z.array(z.union([wall, looks, questions, build])),
});

export const RECORD_SCHEMA = {
  ...z.toJSONSchema(record, { target: 'draft-2020-12' }),
  $id: RECORD_SCHEMA_PATH,
  title: 'Practice record of one learner',
};
