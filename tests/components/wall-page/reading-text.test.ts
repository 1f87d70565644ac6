import { expect, test } from 'vitest';
import { parseReading, readingText, readingUnit } from '../../../components/wall-page/reading-text';

// 25.4 mm an inch; 10 ft are 3,048 mm, so 1/4 in per 10 ft is 6.35 ÷ 3.048 = 2.0833 mm per m.
test.each([
  [12.7, 'mm', 'mm', '12.7', 'mm'],
  [12.7, 'mm', 'inches', '1/2', 'in'],
  [38.1, 'mm', 'inches', '1 1/2', 'in'],
  [1206.5, 'mm', 'inches', '47 1/2', 'in'],
  [1270, 'mm', 'inches', '50', 'in'],
  [25.3, 'mm', 'inches', '1', 'in'],
  [0.762, 'mm', 'inches', '0.030', 'in'],
  [6.35, 'mm per 4 courses', 'inches', '1/4', 'in over 4 courses'],
  [2.0833, 'mm per m', 'inches', '1/4', 'in per 10 ft'],
  [66.667, '%', 'inches', '66.67', '%'],
  [210, 'minutes', 'mm', '210', 'minutes'],
] as const)('%s %s in %s is shown as %s %s', (value, unit, system, text, unitText) => {
  expect([readingText(value, unit, system), readingUnit(unit, system)]).toEqual([text, unitText]);
});

test.each([
  ['12,7', 'mm', 'mm', 12.7],
  ['12.7 mm', 'mm', 'mm', 12.7],
  ['1 1/2', 'mm', 'inches', 38.1],
  ['0.03', 'mm', 'inches', 0.762],
  ['9.5 mm', 'mm', 'inches', 9.5],
  ['1 in', 'mm', 'mm', 25.4],
  ['4 ft 2 in', 'mm', 'inches', 1270],
  ['70', '%', 'inches', 70],
  ['70 %', '%', 'mm', 70],
  ['a lot', 'mm', 'mm', undefined],
  ['', 'mm', 'mm', undefined],
] as const)('“%s” typed for %s in %s is %s', (text, unit, system, value) => {
  const read = parseReading(text, unit, system);
  expect(read === undefined ? undefined : Math.round(read * 1e6) / 1e6).toBe(value);
});

test('a slope typed in inches per 10 ft is mm per m', () => {
  expect(parseReading('1/4', 'mm per m', 'inches')).toBeCloseTo(2.0833, 4);
});
