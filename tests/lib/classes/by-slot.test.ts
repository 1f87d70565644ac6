import { expect, test } from 'vitest';
import { briefsFor, withSlots } from '../../../app/set-work/lay-forms';
import { bySlot } from '../../../lib/classes/by-slot';
import { templateOf } from '../../../lib/classes/templates';
import { WALL_PROBE } from '../../../lib/exercise/wall-probe';

const SPEC = { ...templateOf('fair-test').spec, walls: 5 };

test('answers under one slot are on walls with the same families of faults, whatever place they had', () => {
  const work = { spec: withSlots(SPEC, 'a secret'), secret: 'a secret' };
  const answers = ['a', 'b', 'c'].flatMap((learner) =>
    briefsFor(work, learner, 1).map((brief, index) => ({
      learner,
      place: index + 1,
      families: WALL_PROBE.measured(brief),
    })),
  );
  for (const { place, families } of bySlot(work, answers)) {
    expect(families).toEqual(work.spec.slots[place - 1]?.families);
  }
  const places = bySlot(work, answers).map(({ place }) => place);
  expect([...places].sort()).toEqual([1, 1, 1, 2, 2, 2, 3, 3, 3, 4, 4, 4, 5, 5, 5]);
});

test('the same walls for all keep their places', () => {
  const spec = { ...SPEC, sameForAll: true, topics: ['joints'] as const, kinds: ['plain-panel'] as const };
  const work = { spec: withSlots(spec, 's'), secret: 's' };
  const answers = [1, 2, 3, 4, 5].map((place) => ({ learner: 'a', place }));
  expect(bySlot(work, answers)).toEqual(answers);
});
