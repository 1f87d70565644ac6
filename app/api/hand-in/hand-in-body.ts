import * as z from 'zod';
import { marksSchema } from '../../../lib/exercise/read-marks';
import type { HandedWall } from '../../../lib/store/hand-in';
import { Refusal } from '../../request/refusal';

/** Room for the most walls with the most marks each. */
export const MOST_HAND_IN_BYTES = 1024 * 1024;

const MOST_WALLS = 50;
const MOST_READINGS = 500;
const A_WEEK_MS = 7 * 24 * 3_600_000;

const place = z.int().min(1).max(MOST_WALLS);

const handInBody = z.strictObject({
  attempt: z.uuid(),
  key: z.uuid(),
  walls: z
    .array(
      z.strictObject({
        place,
        fingerprint: z.string().regex(/^[0-9a-f]{16}$/),
        marks: marksSchema,
        readings: z.array(z.unknown()).max(MOST_READINGS),
        saysSound: z.boolean(),
        opened: z.array(z.string().min(1).max(40)).max(MOST_READINGS),
        spentMs: z
          .number()
          .min(0)
          .transform((ms) => Math.min(Math.round(ms), A_WEEK_MS)),
      }),
    )
    .min(1)
    .max(MOST_WALLS),
});

export interface HandInBody {
  readonly attempt: string;
  readonly key: string;
  readonly walls: readonly HandedWall[];
}

/** Reads what a device hands in. @throws Refusal that names the place in it, like walls.0.marks.3.fault. */
export function parseHandIn(body: unknown): HandInBody {
  const read = handInBody.safeParse(body);
  if (!read.success) {
    const [first] = read.error.issues;
    throw new Refusal(422, `${first?.path.join('.') || 'hand-in'}: ${first?.message ?? 'cannot be read'}`);
  }
  return read.data;
}
