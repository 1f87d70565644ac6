import * as z from 'zod';
import { CHECKS } from '../inspect/finding';
import { ACTS } from '../marking/act';
import { LIMIT_KINDS } from '../marking/five-marks';
import { MOST_MARKS, type RawMark } from '../marking/mark';

/** Marks that cannot be read: the message says where and what. */
export class MarksError extends Error {
  override name = 'MarksError';
}

/** A reading farther off than this is a slip of the finger. */
const MOST_READ = 1_000_000;
const MOST_LETTERS = 200_000;

/** Marks as they come in, from a file, a device or the store. Whether the wall has their parts is for placeMarks to say. */
export const marksSchema: z.ZodType<readonly RawMark[]> = z
  .array(
    z.strictObject({
      part: z.string().min(1).max(40),
      fault: z.enum(CHECKS, {
        error: ({ input }) => `there is no fault "${shortened(input)}" in the catalogue`,
      }),
      sure: z.union([z.literal(1), z.literal(2), z.literal(3)]).exactOptional(),
      reading: z.number().min(-MOST_READ).max(MOST_READ).exactOptional(),
      kind: z.enum(LIMIT_KINDS).exactOptional(),
      act: z.enum(ACTS).exactOptional(),
    }),
  )
  .max(MOST_MARKS);

const marksFile = z.strictObject({ marks: marksSchema });

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

function shortened(text: unknown): string {
  const whole = String(text);
  return whole.length > 40 ? `${whole.slice(0, 40)}…` : whole;
}
