import * as z from 'zod';
import { CATALOGUE } from '../inspect/catalogue';
import type { Explanation } from '../inspect/explain';
import { CHECKS, type Finding, HAZARDS } from '../inspect/finding';
import { LOOK_ALIKE_IDS } from '../inspect/look-alikes';
import { toleranceOf } from '../instruments/tolerance';
import { HOW_SURE, RULE_SETS } from '../limits/limit';
import { ACTS, rightActOf } from '../marking/act';
import {
  type Answer,
  type AnswerVerdicts,
  countFiveMarks,
  type FiveMarks,
  LIMIT_KINDS,
  MISSED,
  VERDICTS,
} from '../marking/five-marks';
import { type PartId, parsePartId } from '../wall/part-id';
import type { GradedFinding, GradedMark, Result } from './result';

/** Results that cannot be read: the message says where. They are left as they are. */
export class StoredResultsError extends Error {
  override name = 'StoredResultsError';
}

/** Of the text below. Version 1 was the bare list, and grew a field at a time without saying so. */
const VERSION = 2;

/** The results of an attempt, one a wall in order of place, as the store keeps them. */
export function formatResults(results: readonly Result[]): string {
  return JSON.stringify({ version: VERSION, results });
}

/** Reads results of any version. @throws StoredResultsError with the place, also for a version that is newer than this program. */
export function parseResults(json: string): readonly Result[] {
  const loose: unknown = JSON.parse(json);
  const read = Array.isArray(loose) ? version1.safeParse(loose) : version2.safeParse(loose);
  if (read.success) return Array.isArray(read.data) ? read.data.map(completed) : read.data.results;
  const [first] = read.error.issues;
  throw new StoredResultsError(`results.${first?.path.join('.')}: ${first?.message}`);
}

const partId = z.custom<PartId>((id) => typeof id === 'string' && parsePartId(id) !== null, {
  error: 'is not the name of a part',
});
const sure = z.union([z.literal(1), z.literal(2), z.literal(3)]);
const count = z.object({ got: z.number(), of: z.number() });
const verdict = z.enum(VERDICTS);

const finding: z.ZodType<Finding> = z.object({
  check: z.enum(CHECKS),
  parts: z.array(partId),
  region: z.object({
    panel: z.string(),
    x: z.number(),
    y: z.number(),
    width: z.number(),
    height: z.number(),
  }),
  measured: z.number(),
  unit: z.string(),
  limit: z.number(),
  margin: z.number(),
  kind: z.enum(LIMIT_KINDS),
  hazard: z.enum(HAZARDS),
  source: z.object({
    limit: z.string(),
    rules: z.enum(RULE_SETS),
    title: z.string(),
    edition: z.string(),
    clause: z.string(),
    howSure: z.enum(HOW_SURE),
  }),
});

const answer: z.ZodType<Answer> = z.object({
  reading: z.number().exactOptional(),
  kind: z.enum(LIMIT_KINDS).exactOptional(),
  act: z.enum(ACTS).exactOptional(),
});

const verdicts: z.ZodType<AnswerVerdicts> = z.object({
  found: z.boolean(),
  named: z.boolean(),
  measured: verdict,
  judged: verdict,
  acted: verdict,
});

const fiveMarks: z.ZodType<FiveMarks> = z.object({
  found: count,
  named: count,
  measured: count,
  judged: count,
  acted: count,
});

const explanation: z.ZodType<Explanation> = z.object({
  measured: z
    .object({
      value: z.number(),
      limit: z.number(),
      end: z.enum(['at most', 'at least']),
      unit: z.string(),
      limitId: z.string(),
      title: z.string(),
      clause: z.string(),
      rules: z.enum(RULE_SETS),
    })
    .nullable(),
  lookAlike: z.enum(LOOK_ALIKE_IDS).nullable(),
});

const gradedFinding = z.object({
  finding,
  outcome: z.enum(['found', 'wrong name', 'one joint off', 'missed']),
  mark: z.number().nullable(),
  answer,
  verdicts,
  within: z.number(),
  rightAct: z.enum(ACTS),
});

const gradedMark = z.object({
  mark: z.object({
    part: partId,
    panel: z.string(),
    x: z.number(),
    y: z.number(),
    fault: z.enum(CHECKS),
    sure,
  }),
  answer,
  outcome: z.enum(['found', 'wrong name', 'one joint off', 'repeat', 'false', 'left']),
  explanation: explanation.nullable(),
});

const result = z.object({
  score: z.number().min(0).max(1),
  capped: z.string().nullable(),
  findings: z.array(gradedFinding),
  marks: z.array(gradedMark),
  parts: fiveMarks,
  answered: z.boolean(),
});
const version2 = z.strictObject({ version: z.literal(VERSION), results: z.array(result) });

// What the first markings did not say yet: an answer, how it stands, how near a reading had to come, the five marks; then, whether the wall
// was answered.
const earlier = result.partial({ capped: true, parts: true, answered: true }).extend({
  findings: z.array(gradedFinding.partial({ answer: true, verdicts: true, within: true, rightAct: true })),
  marks: z.array(gradedMark.partial({ answer: true, explanation: true })),
});
const version1 = z.array(earlier);
type Earlier = z.infer<typeof earlier>;

/** A result of version 1 with what it did not say: nothing was asked beyond place and name, and every wall was taken as answered. */
function completed({ score, capped = null, findings, marks, parts, answered = true }: Earlier): Result {
  const graded = findings.map(completedFinding);
  const gradedMarks = marks.map(
    ({ answer: said = {}, explanation: told = null, ...mark }): GradedMark => ({
      ...mark,
      answer: said,
      explanation: told,
    }),
  );
  return {
    score,
    capped,
    findings: graded,
    marks: gradedMarks,
    parts:
      parts ??
      countFiveMarks(
        graded.map((each) => each.verdicts),
        marks.filter(({ outcome }) => outcome === 'left').length,
      ),
    answered,
  };
}

function completedFinding(each: Earlier['findings'][number]): GradedFinding {
  const { check } = each.finding;
  const { hazard, reach } = CATALOGUE[check];
  const isFound = each.outcome === 'found' || each.outcome === 'wrong name';
  return {
    finding: each.finding,
    outcome: each.outcome,
    mark: each.mark,
    answer: each.answer ?? {},
    verdicts: each.verdicts ?? { ...MISSED, found: isFound, named: each.outcome === 'found' },
    within: each.within ?? toleranceOf(check, each.finding).within,
    rightAct: each.rightAct ?? rightActOf(hazard, reach),
  };
}
