import { describe, expect, test } from 'vitest';
import { layByCode } from '../../../lib/engines/engines';
import { keyOf } from '../../../lib/exercise/key';
import { drawingOfLook, parseLook } from '../../../lib/site-drawn/sent-look';
import { lookAt, readingsOf, siteWall } from '../../../lib/site-drawn/site-wall';
import { drawingOf } from '../../../lib/views/draw-view';
import { parseView, viewText } from '../../../lib/views/parse-view';
import { UP_CLOSE } from '../../../lib/views/viewing-conditions';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { openWallOf } from '../../../lib/wall-page/open-wall';
import { viewChoices, viewOf } from '../../../lib/wall-page/view-choices';
import { WALLS } from './walls';

describe('a look that the site draws', () => {
  test('shows what is drawn of the wall itself, to a twentieth of a millimetre', () => {
    for (const brief of WALLS.slice(0, 3)) {
      const site = siteWall(brief);
      const sent = drawingOfLook(lookAt(site, { kind: 'front' }, 'mm', UP_CLOSE));
      const drawn = drawingOf(surveyedWall(layByCode(brief).wall), { kind: 'front' }, 'mm');
      expect(sent.shapes.length).toBe(drawn.shapes.length);
      for (const [index, shape] of sent.shapes.entries()) {
        const own = drawn.shapes[index];
        if (shape.kind !== 'area' || own?.kind !== 'area') continue;
        expect(shape.rings.length).toBe(own.rings.length);
        const [point] = shape.rings[0] ?? [];
        const [ownPoint] = own.rings[0] ?? [];
        expect(Math.abs((point?.[0] ?? 0) - (ownPoint?.[0] ?? 0))).toBeLessThanOrEqual(0.0501);
        expect(Math.abs((point?.[1] ?? 0) - (ownPoint?.[1] ?? 0))).toBeLessThanOrEqual(0.0501);
      }
    }
  });

  test('says in words which look it is, and never what a rule or a ticket would read', () => {
    const words = new Set<string>();
    for (const brief of WALLS.filter((_, index) => index % 2 === 0)) {
      const site = siteWall(brief);
      const { wall } = site.bare;
      for (const { value } of viewChoices(wall)) {
        const view = viewOf(value, openWallOf(wall).firstUnit, wall);
        expect(parseView(wall, viewText(view))).toEqual(view);
        for (const { text } of lookAt(site, view, 'mm', UP_CLOSE).labels)
          words.add(text.replace(/\d+/g, '#'));
      }
    }
    expect(
      [...words].filter((text) => /bedded|overhang|thick|deep|leg|air space|° ?C|: #|min$|\./.test(text)),
    ).toEqual([
      'Wall A, cut # mm from its left end.',
      'Dashed: a plumb line at the face line.',
      'Wall B, cut # mm from its left end.',
    ]);
  });

  test('the answer of a network that wants one to sign in is no look', () => {
    expect(() => parseLook('<html>Welcome to our network</html>')).toThrow('this is no look of the site');
  });
});

test('an instrument reads the wall itself: of a tie at fault what was measured of it, of one that is wanting nothing', () => {
  let read = 0;
  let wanting = 0;
  for (const seed of Array.from({ length: 12 }, (_, index) => 50_000 + index)) {
    const brief = { topic: 'ties', kind: 'plain-panel', difficulty: 3, rules: 'canada', seed } as const;
    const site = siteWall(brief);
    const ties = [...site.bare.parts.values()].filter(({ kind }) => kind === 'tie');
    const valuesBy = (instrument: 'tape' | 'straightedge') =>
      ties.map(({ id }) => readingsOf(site, { instrument, part: id, turned: false, from: null }, false));
    for (const { check, measured, unit } of keyOf(site.wall, brief.rules).findings) {
      if (check === 'ties-too-far-apart' || check === 'no-tie-at-edge') {
        wanting += valuesBy('tape').filter((readings) => readings.length === 0).length;
      }
      if (check !== 'shallow-tie') continue;
      const values = valuesBy('tape').flat();
      const nearest = Math.min(...values.map(({ value }) => Math.abs((value ?? Number.NaN) - measured)));
      // A tape is off by a millimetre at most.
      expect([unit, nearest <= 1]).toEqual(['mm', true]);
      read += 1;
    }
  }
  expect(read).toBeGreaterThan(0);
  expect(wanting).toBeGreaterThan(0);
});
