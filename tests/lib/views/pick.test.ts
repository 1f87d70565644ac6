import { describe, expect, test } from 'vitest';
import { drawingOf } from '../../../lib/views/draw-view';
import { awayFrom, pickAt } from '../../../lib/views/pointing/pick';
import type { View } from '../../../lib/views/view';
import { partsOf } from '../../../lib/wall/parts';
import { surveyOf } from '../../../lib/wall/survey';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { nearbyParts } from '../../../lib/wall-page/nearby-parts';
import { handWall } from './hand-wall';

const wall = handWall();
const parts = partsOf(surveyOf(wall));
const FRONT: View = { kind: 'front' };
const front = drawingOf(surveyedWall(wall), FRONT, 'mm');
/** A finger over courses of 64 px strays 24 px: 26 mm of the wall. */
const FINGER = 26;

describe('how far a point lies from the middle of a part', () => {
  // A head joint 10 × 60 at (200, 150): drawn in by 26 it is the upright line from (205, 176) to (205, 184).
  const head = { x: 200, y: 150, width: 10, height: 60 };
  test.each([
    [205, 180, 26, 0],
    [215, 180, 26, 10],
    [205, 190, 26, 6],
    [208, 188, 26, 5],
    [205, 150, 0, 0],
    [205, 210, 6, 6],
  ])('from (%s, %s), drawn in by %s: %s mm', (x, y, reach, away) => {
    expect(awayFrom(head, x, y, reach)).toBe(away);
  });
});

describe('what a finger means on the hand wall', () => {
  // Course 3: units from 0, 210 and 420, y 150 to 210; heads at 200 and 410; the beds of course 4 at y 210 to 220.
  test.each([
    [205, 180, 'A3.1/2', 'dead on a head joint'],
    [214, 172, 'A3.1/2', 'a finger aside of it'],
    [310, 180, 'A3.2', 'the middle of a brick'],
    [250, 145, 'A3.2-bed', 'dead on a bed'],
    [250, 156, 'A3.2-bed', 'just over it, on the brick'],
    [310, 145, 'A3.2-bed', 'dead on the middle of a bed, where a head comes up from below'],
    [300, -20, 'A-ledge', 'the ledge'],
  ])('(%s, %s) is %s: %s', (x, y, part) => {
    expect(pickAt(front, parts, x, y, FINGER)?.part).toBe(part);
  });

  test('far outside the wall nothing is meant', () => {
    expect(pickAt(front, parts, 300, 600, FINGER)).toBeNull();
  });

  test('the place pointed at is told in the frame of the panel', () => {
    const frame = front.frames[0];
    expect(frame).toEqual({ panel: 'A', x: 0, y: 0, scale: 1 });
    expect(pickAt(front, parts, 205, 180, FINGER)?.aim).toEqual({ panel: 'A', x: 205, y: 180, reach: 26 });
  });
});

describe('what else lies at a place, nearest first', () => {
  const at = (id: string, x: number, y: number) => {
    const part = parts.get(id);
    if (!part) throw new RangeError(id);
    return nearbyParts(part, { panel: 'A', x, y, reach: FINGER }, wall, parts);
  };
  const headsAt = (id: string, x: number, y: number) =>
    at(id, x, y).flatMap((each) => (each.kind === 'head' && each.course === 3 ? [each.id] : []));

  test('in a brick, the head joint on the side where the finger lay', () => {
    expect(headsAt('A3.2', 260, 180)).toEqual(['A3.1/2', 'A3.2/3']);
    expect(headsAt('A3.2', 360, 180)).toEqual(['A3.2/3', 'A3.1/2']);
  });

  test('from an opening, support or end nothing small is near where nobody pointed', () => {
    const ledge = parts.get('A-ledge');
    const near = ledge ? nearbyParts(ledge, null, wall, parts).map(({ kind }) => kind) : [];
    expect(near).not.toContain('unit');
    expect(near).toContain('panel');
  });
});
