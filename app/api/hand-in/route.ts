import { GradingError } from '../../../lib/exercise/place-marks';
import { HandInError, type HandInRefusal, takeHandIn, writeHandIn } from '../../../lib/store/hand-in';
import { guarded } from '../../access/guard';
import { Refusal } from '../../request/refusal';
import { gradeWalls } from '../../server/grade-walls';
import { MOST_HAND_IN_BYTES, parseHandIn } from './hand-in-body';

const STATUS: Readonly<Record<HandInRefusal, 404 | 409 | 422>> = {
  'not found': 404,
  'other walls': 409,
  'key used': 422,
  'already handed in': 409,
};

/** Takes a hand-in and answers when it is on disk: 201 the first time, 200 with the same receipt for the same key again. */
export const POST = guarded(
  'POST /api/hand-in',
  async ({ person, body, store, at }) => {
    const { attempt, key, walls } = parseHandIn(body);
    try {
      const handIn = { attempt, key, walls, at, learner: person.learnerId };
      const taken = await takeHandIn(store, handIn);
      const receipt =
        taken.kind === 'earlier'
          ? taken.receipt
          : await writeHandIn(store, handIn, taken, gradeWalls(taken.walls));
      return Response.json({ ok: true, ...receipt }, { status: receipt.replay ? 200 : 201 });
    } catch (error) {
      if (error instanceof HandInError) return refused(error);
      if (error instanceof GradingError) throw new Refusal(422, error.message);
      throw error;
    }
  },
  { mostBytes: MOST_HAND_IN_BYTES },
);

/** With the receipt of the hand-in that counts, where one was taken before. */
function refused({ refusal, message, earlier }: HandInError): Response {
  return Response.json({ problem: message, ...(earlier ?? {}) }, { status: STATUS[refusal] });
}
