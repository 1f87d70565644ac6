import * as z from 'zod';
import { STEPS, type Step, type Tally, type WallAnswer } from '../classes/statistics/wall-answer';

/** Results that cannot be read: the message says where. They are left as they are. */
export class StoredResultsError extends Error {
  override name = 'StoredResultsError';
}

const sure = z.union([z.literal(1), z.literal(2), z.literal(3)]);
const tally = z.object({ got: z.number(), of: z.number() });

// Read loosely: a later marking adds fields, and what this room does not use it does not ask for.
const finding = z.object({
  finding: z.object({
    check: z.string(),
    hazard: z.enum(['could fall', 'lets water in', 'looks']),
    parts: z.array(z.string()),
    measured: z.number(),
    unit: z.string(),
    limit: z.number(),
    region: z.object({
      panel: z.string(),
      x: z.number(),
      y: z.number(),
      width: z.number(),
      height: z.number(),
    }),
  }),
  outcome: z.enum(['found', 'wrong name', 'one joint off', 'missed']),
  mark: z.number().nullable(),
});
const mark = z.object({
  mark: z.object({ part: z.string(), fault: z.string(), sure }),
  // Only 'false' counts here; whatever else a marking may say is no false mark.
  outcome: z.string(),
});
const result = z.object({
  score: z.number().min(0).max(1),
  capped: z.string().nullish(),
  findings: z.array(finding),
  marks: z.array(mark),
  parts: z.partialRecord(z.enum(STEPS), tally).nullish(),
  // Not said by earlier markings: they took every wall as answered.
  answered: z.boolean().default(true),
});

export type StoredResult = z.infer<typeof result>;

/** The results of one version, one a place in order. @throws StoredResultsError */
export function parseStoredResults(json: string): readonly StoredResult[] {
  const read = z.array(result).safeParse(JSON.parse(json));
  if (read.success) return read.data;
  const [first] = read.error.issues;
  throw new StoredResultsError(`results.${first?.path.join('.')}: ${first?.message}`);
}

/** Whose answer it is, and on which wall. */
export type AnsweredAt = Pick<WallAnswer, 'learner' | 'work' | 'place' | 'code' | 'saysSound'>;

export function wallAnswerOf(
  at: AnsweredAt,
  { score, findings, marks, parts, answered }: StoredResult,
): WallAnswer {
  return {
    ...at,
    score,
    answered,
    faults: findings.map(({ finding, outcome, mark: index }) => {
      const own = index === null || !isFound(outcome) ? undefined : marks[index]?.mark;
      const named = outcome === 'found' ? finding.check : (own?.fault ?? null);
      return {
        fault: finding.check,
        hazard: finding.hazard,
        found: isFound(outcome),
        named: isFound(outcome) ? named : null,
        sure: own?.sure ?? null,
      };
    }),
    falseMarks: marks.flatMap(({ mark, outcome }) => (outcome === 'false' ? mark : [])),
    steps: asked({ ...stepsSeen(findings), ...(parts ?? {}) }),
  };
}

/** One joint off is the right place, but not the fault's own joint: it is not found. */
function isFound(outcome: StoredResult['findings'][number]['outcome']): boolean {
  return outcome === 'found' || outcome === 'wrong name';
}

/** Without the steps that nobody was asked for. */
function asked(steps: Partial<Record<Step, Tally>>): Partial<Record<Step, Tally>> {
  return Object.fromEntries(Object.entries(steps).filter(([, { of }]) => of > 0));
}

/** Found and named can be counted even where a marking did not tally them: of the faults, and of the faults found. */
function stepsSeen(findings: StoredResult['findings']): Partial<Record<Step, Tally>> {
  const found = findings.filter(({ outcome }) => isFound(outcome)).length;
  const named = findings.filter(({ outcome }) => outcome === 'found').length;
  return { found: { got: found, of: findings.length }, named: { got: named, of: found } };
}
