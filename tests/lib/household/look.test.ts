import { describe, expect, test } from 'vitest';
import { dialOf, type Look, parseLook } from '../../../lib/household/look';

const LOOK: Look = {
  version: 1,
  id: 'a',
  name: 'North wall',
  begun: 5,
  changed: 6,
  way: 'wrong',
  rules: 'ontario',
  answers: { leans: 'cannot see', bearing: 60 },
  calls: { engineer: '555 0100' },
};

describe('a look as it is kept', () => {
  test('is read back as it was written', () => {
    expect(parseLook(JSON.parse(JSON.stringify(LOOK)))).toEqual(LOOK);
  });

  test.each<[string, unknown]>([
    ['nothing', null],
    ['a later version', { ...LOOK, version: 2 }],
    ['no name of its own', { ...LOOK, id: 7 }],
    ['rules that are gone', { ...LOOK, rules: 'atlantis' }],
    ['another way in', { ...LOOK, way: 'sideways' }],
    ['no time', { ...LOOK, changed: Number.NaN }],
    ['answers that are none', { ...LOOK, answers: 'yes' }],
  ])('is not read: %s', (_, kept) => {
    expect(parseLook(kept)).toBe(null);
  });

  test('drops answers that no question takes, and keeps the others', () => {
    const answers = {
      leans: 'maybe',
      gone: 'yes',
      bearing: 1e9,
      overhang: -1,
      'crack-width': 'yes',
      sags: 'no',
    };
    expect(parseLook({ ...LOOK, answers })?.answers).toEqual({ sags: 'no' });
  });
});

test.each([
  ['+1 (555) 010-0123', '+15550100123'],
  ['999', '999'],
  ['ask my sister', undefined],
  ['', undefined],
])('"%s" is dialled as %s', (typed, dialled) => {
  expect(dialOf(typed)).toBe(dialled);
});
