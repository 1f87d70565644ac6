import * as z from 'zod';
import { GradingError } from '../../../lib/exercise/place-marks';
import { marksSchema } from '../../../lib/exercise/read-marks';
import {
  type HandedWall,
  HandInError,
  type HandInRefusal,
  takeHandIn,
  writeHandIn,
} from '../../../lib/store/hand-in';
import { isSiteDrawn } from '../../../lib/store/instrument-uses';
import type { Receipt } from '../../../lib/store/receipt';
import { guarded } from '../../access/guard';
import { Refusal } from '../../request/refusal';
import { gradeWalls } from '../../server/grade-walls';
import { meantWall } from '../../server/meant-walls';

const STATUS: Readonly<Record<HandInRefusal, 404 | 409 | 422>> = {
  'not found': 404,
  'other walls': 409,
  'key used': 422,
  'already handed in': 409,
};

/** Room for the most walls with the most marks each. */
const MOST_HAND_IN_BYTES = 1024 * 1024;

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

interface HandInBody {
  readonly attempt: string;
  readonly key: string;
  readonly walls: readonly HandedWall[];
}

/** Reads what a device hands in. @throws Refusal that names the place in it, like walls.0.marks.3.fault. */
function parseHandIn(body: unknown): HandInBody {
  const read = handInBody.safeParse(body);
  if (!read.success) {
    const [first] = read.error.issues;
    throw new Refusal(422, `${first?.path.join('.') || 'hand-in'}: ${first?.message ?? 'cannot be read'}`);
  }
  return read.data;
}

/** Takes a hand-in and answers when it is on disk: 201 the first time, 200 with the same receipt for the same key again. */
export const POST = guarded(
  'POST /api/hand-in',
  async ({ person, body, store, at }) => {
    const { attempt, key, walls } = parseHandIn(body);
    try {
      const handIn = { attempt, key, walls, at, learner: person.learnerId };
      const taken = await takeHandIn(store, handIn);
      if (taken.kind === 'earlier') return receiptAnswer(taken.receipt);
      const isDrawn = await isSiteDrawn(store, attempt);
      const meant = isDrawn ? { ...taken, walls: taken.walls.map(meantWall) } : taken;
      const receipt = await writeHandIn(store, handIn, meant, gradeWalls(meant.walls));
      return receiptAnswer(receipt);
    } catch (error) {
      if (error instanceof HandInError) return refused(error);
      if (error instanceof GradingError) throw new Refusal(422, error.message);
      throw error;
    }
  },
  { mostBytes: MOST_HAND_IN_BYTES },
);

function receiptAnswer(receipt: Receipt): Response {
  return Response.json({ ok: true, ...receipt }, { status: receipt.replay ? 200 : 201 });
}

/** With the receipt of the hand-in that counts, where one was taken before. */
function refused({ refusal, message, earlier }: HandInError): Response {
  return Response.json({ problem: message, ...(earlier ?? {}) }, { status: STATUS[refusal] });
}
