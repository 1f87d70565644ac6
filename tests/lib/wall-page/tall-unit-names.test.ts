import { expect, test } from 'vitest';
import { drawTerm } from '../../../app/glossary/term-pictures';
import { partName } from '../../../lib/wall/part-names';
import { partsOf } from '../../../lib/wall/parts';
import { surveyOf } from '../../../lib/wall/survey';
import { nearbyParts } from '../../../lib/wall-page/nearby-parts';
import { handTall } from '../views/hand-wall';

const wall = handTall();
const parts = partsOf(surveyOf(wall));

function part(id: string) {
  const found = parts.get(id);
  if (found === undefined) throw new RangeError(id);
  return found;
}

test.each([
  ['A1.1', 'Course 1, quoin at the left end, unit 1'],
  ['A2.3', 'Course 2, soldier, unit 3'],
  ['A2.1', 'Course 2, unit 1'],
])('on its card %s is "%s"', (id, name) => {
  expect(partName(part(id), wall)).toBe(name);
});

test('a quoin past the middle stands at the right end', () => {
  const right = handTall({ 'A1.3': { kind: 'quoin', height: 200, x: 525, length: 95 } });
  const quoin = partsOf(surveyOf(right)).get('A1.3');
  expect(quoin && partName(quoin, right)).toBe('Course 1, quoin at the right end, unit 3');
});

test('from a soldier each course that it stands through can be marked, from a brick its own', () => {
  const courses = (id: string) =>
    nearbyParts(part(id), null, wall, parts).flatMap((each) => (each.kind === 'course' ? [each.id] : []));
  expect(courses('A2.3')).toEqual(['A2', 'A3', 'A4']);
  expect(courses('A2.1')).toEqual(['A2']);
  expect(courses('A2.3-bed')).toEqual(['A2']);
});

test('quoins and soldiers stand in the pictures of their own words only', () => {
  expect(drawTerm('quoin')).toMatch(/url\(#quoin\d/);
  expect(drawTerm('unit')).not.toMatch(/url\(#quoin\d/);
  expect(drawTerm('soldier-course')).not.toMatch(/url\(#quoin\d/);
  // The row is ringed from jamb to jamb: the picture is wider than one of a thing that is small.
  const width = (word: string) => Number(/viewBox="\S+ \S+ (\S+)/.exec(drawTerm(word) ?? '')?.[1]);
  expect(width('quoin')).toBe(900);
  expect(width('soldier-course')).toBeGreaterThan(1200);
});
