import { describe, expect, test } from 'vitest';
import { type Margin, marginsOf } from '../../../lib/failing/margins/margins';
import { hasOneNext, letGo, turnsOf, without } from '../../../lib/failing/margins/next';
import { laidContacts } from '../../../lib/failing/state/contacts';
import type { FailingWall } from '../../../lib/failing/state/model';
import { surveyOf } from '../../../lib/wall/survey';
import { ledge, wallOf } from '../../naive/build';

/** Three courses of three units on a ledge, bonded throughout; the middle of each course over the middle of the one below. */
function asLaid(): FailingWall {
  const wall = wallOf(
    [
      [190, 190, 190],
      [190, 190, 190],
      [190, 190, 190],
    ],
    { masonry: 'anchored', supports: [ledge(0, 590)] },
  );
  const survey = surveyOf(wall);
  return {
    survey,
    state: {
      years: 0,
      season: 'summer',
      stuff: 'clay',
      held: [],
      contacts: laidContacts(survey),
      moves: new Map(),
      splits: new Map(),
      supports: new Map(),
      missing: new Map(),
      damage: [],
      zones: [],
    },
  };
}

/** The same with every joint of one unit cracked. */
function loosened(unit: string): FailingWall {
  const { survey, state } = asLaid();
  const contacts = state.contacts.map((contact) =>
    contact.unit === unit || contact.other === unit
      ? { ...contact, state: 'cracked' as const, sound: 0 }
      : contact,
  );
  return { survey, state: { ...state, contacts } };
}

const margin = (part: Margin['part'], of: number): Margin => ({
  part,
  margin: of,
  mode: 'tips off its bed',
  kind: 'wind',
  resistance: of,
  demand: 1,
  unit: 'N·mm',
});

describe('who comes next', () => {
  test('a loose unit in the top course comes before all that are bonded', () => {
    const failing = loosened('A3.2');
    const turns = turnsOf(failing, marginsOf(failing));
    expect(turns[0]?.parts).toEqual(['A3.2']);
    expect(hasOneNext(turns)).toBe(true);
  });

  test('margins within a factor of two are one turn, the end included; the unit that falls farthest leads', () => {
    const failing = asLaid();
    const turns = turnsOf(failing, [
      margin('A1.1', 1),
      margin('A3.1', 2),
      margin('A2.1', 2.01),
      margin('A2.2', 9),
    ]);
    expect(turns.map(({ parts }) => parts)).toEqual([['A3.1', 'A1.1'], ['A2.1'], ['A2.2']]);
    expect(hasOneNext(turns)).toBe(false);
    // A unit of 190 × 60 × 90 mm weighs 1.949 kg; its underside lies 150 mm up: 2.87 J.
    expect(Math.round((turns[0]?.energy ?? 0) * 100) / 100).toBe(2.87);
  });
});

describe('after a loss', () => {
  test('the unit over a gap has nothing under it: it hangs in its joints', () => {
    const left = without(asLaid(), 'A2.2');
    const over = marginsOf(left).find(({ part }) => part === 'A3.2');
    expect(over?.mode).toBe('hangs in its joints');
    expect(marginsOf(left).some(({ part }) => part === 'A2.2')).toBe(false);
  });

  test('nothing presses any more on what lies under the gap', () => {
    // Each unit weighs 19.12 N. Loose, so that friction alone holds it: under one unit 0.75 (2 × 19.12 + 19.12) N, under none 0.75 × 19.12 N.
    const before = marginsOf(loosened('A2.2')).find(({ part }) => part === 'A2.2');
    const after = marginsOf(without(loosened('A2.2'), 'A3.2')).find(({ part }) => part === 'A2.2');
    expect([before, after].map((each) => Math.round((each?.resistance ?? 0) * 100) / 100)).toEqual([
      43.01, 14.34,
    ]);
  });

  test('units come away one after the other, the one held least each time', () => {
    const { failing, lost } = letGo(loosened('A3.2'), 2);
    expect(lost[0]?.part).toBe('A3.2');
    expect(failing.state.missing.size).toBe(2);
    expect(
      failing.state.contacts.filter(({ unit }) => unit === 'A3.2').every(({ state }) => state === 'gone'),
    ).toBe(true);
  });

  test('of a wall with nine units no more than nine come away', () => {
    expect(letGo(asLaid(), 12).lost).toHaveLength(9);
  });
});
