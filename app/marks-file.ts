import * as z from 'zod';
import { ACTS } from '../lib/marking/act';
import { LIMIT_KINDS } from '../lib/marking/five-marks';
import type { RawMark } from './grading';

/** Marks that cannot be read: the message says where and what. */
export class MarksError extends Error {
  override name = 'MarksError';
}

const MOST_MARKS = 200;
const MOST_READ = 1_000_000;
const MOST_LETTERS = 200_000;

const marksFile = z.strictObject({
  marks: z
    .array(
      z.strictObject({
        part: z.string().min(1).max(40),
        fault: z.string().min(1).max(40),
        sure: z.union([z.literal(1), z.literal(2), z.literal(3)]).exactOptional(),
        reading: z.number().min(-MOST_READ).max(MOST_READ).exactOptional(),
        kind: z.enum(LIMIT_KINDS).exactOptional(),
        act: z.enum(ACTS).exactOptional(),
      }),
    )
    .max(MOST_MARKS),
});

/** Reads `{"marks": [{"part": "A12.5", "fault": "proud-unit", "sure": 2, "reading": 6, "kind": "good practice", "act": "put right now"}]}`. @throws MarksError. */
export function parseMarks(text: string): readonly RawMark[] {
  if (text.length > MOST_LETTERS)
    throw new MarksError(`marks: ${text.length} letters are too many for ${MOST_MARKS} marks`);
  let loose: unknown;
  try {
    loose = JSON.parse(text);
  } catch (error) {
    throw new MarksError(`marks: not JSON: ${error instanceof Error ? error.message : ''}`);
  }
  const read = marksFile.safeParse(loose);
  if (read.success) return read.data.marks;
  const [first] = read.error.issues;
  throw new MarksError(`${first?.path.join('.') || 'marks'}: ${first?.message ?? 'cannot be read'}`);
}
