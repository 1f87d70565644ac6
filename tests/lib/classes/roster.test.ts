import { describe, expect, test } from 'vitest';
import { checkRoster, type RosterLine } from '../../../lib/classes/roster';

const lines = (...names: readonly string[]): readonly RosterLine[] =>
  names.map((name, index) => ({ line: index + 1, name, time: '' }));

describe('a roster', () => {
  test('good lines become rows, tidied, with the usual time', () => {
    expect(checkRoster(lines('  Ada   Birch ', 'Bo'), [])).toEqual({
      rows: [
        { line: 1, name: 'Ada Birch', timeFactor: 100 },
        { line: 2, name: 'Bo', timeFactor: 100 },
      ],
      problems: [],
    });
  });

  test.each([
    ['', 'The name is missing.'],
    ['   ', 'The name is missing.'],
    ['12', '"12" has no letter in it. Is this a name?'],
    ['Ada\u0007', '"Ada?" has a character in it that we cannot read. Save the file as CSV, UTF-8.'],
    ['x'.repeat(61), 'The name is longer than 60 letters.'],
  ])('the name %j is refused', (name, message) => {
    expect(checkRoster(lines(name), []).problems).toEqual([{ line: 1, message }]);
  });

  test('sixty letters are not too long', () => {
    expect(checkRoster(lines('x'.repeat(60)), []).problems).toEqual([]);
  });

  test('a name twice is named with the line it stands on too, whatever the case and spaces', () => {
    expect(checkRoster(lines('Ada Birch', 'Bo', 'ADA  birch'), []).problems).toEqual([
      { line: 3, message: '"ADA birch" stands on line 1 too. Give each learner a name of their own.' },
    ]);
  });

  test('a name the group has is named', () => {
    expect(checkRoster(lines('bo'), ['Bo']).problems).toEqual([
      { line: 1, message: '"bo" is in the group already. Give each learner a name of their own.' },
    ]);
  });

  test('letters with an accent are the same however they are stored', () => {
    expect(checkRoster(lines('Zo\u00eb', 'Zoe\u0308'), []).problems).toHaveLength(1);
  });

  test.each([
    ['100', 100],
    ['150 %', 150],
    ['400', 400],
    ['', 100],
  ])('time %j is %i percent', (time, timeFactor) => {
    expect(checkRoster([{ line: 7, name: 'Bo', time }], []).rows).toEqual([
      { line: 7, name: 'Bo', timeFactor },
    ]);
  });

  test.each(['99', '401', '1.5', 'half', '-150'])('time %j is refused', (time) => {
    expect(checkRoster([{ line: 7, name: 'Bo', time }], []).problems).toEqual([
      { line: 7, message: `Time "${time}" is not a whole number of percent from 100 to 400.` },
    ]);
  });

  test('an empty list says what to do', () => {
    expect(checkRoster([], []).problems).toEqual([
      { line: 1, message: 'There is no name here. Type one name on each line.' },
    ]);
  });

  test('a group holds four hundred', () => {
    const many = lines(...Array.from({ length: 400 }, (_, n) => `Learner ${n}`));
    expect(checkRoster(many, []).problems).toEqual([]);
    expect(checkRoster(many, ['One more']).problems).toEqual([
      { line: 1, message: 'A group holds at most 400 learners.' },
    ]);
  });
});
