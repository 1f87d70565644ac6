import { describe, expect, test } from 'vitest';
import { formatReading, formatRest, formatWhole } from '../../../components/instruments/format-reading';
import { whyNot } from '../../../components/instruments/instrument-words';
import { INSTRUMENT } from '../../../lib/instruments/instrument-list';
import type { Reading } from '../../../lib/instruments/reading';
import type { LengthSystem } from '../../../lib/units';

const reading = (change: Partial<Reading>): Reading => ({
  ...{ instrument: 'tape', part: 'A1.1', what: 'Length', value: 190.5, unit: 'mm', words: null, error: 1 },
  ...{ fine: false, turned: false },
  ...change,
});

describe('a reading in words', () => {
  test.each<[Partial<Reading>, LengthSystem, string, string]>([
    [{}, 'mm', '190.5 mm', '± 1 mm'],
    // 190.5 mm is 7 1/2 in.
    [{}, 'inches', '7 1/2 in', '190.5 mm ± 1'],
    [{ value: 0.76, error: 0.05, fine: true }, 'mm', '0.76 mm', '± 0.05 mm'],
    [{ value: 0.76, error: 0.05, fine: true }, 'inches', '0.030 in', '0.76 mm ± 0.05'],
    [{ value: 6, words: 'proud' }, 'mm', '6 mm', '± 1 mm, proud'],
    [
      { value: 2.1, unit: 'mm per m', error: 0.5, words: 'right end high' },
      'mm',
      '+2.1 mm per m',
      '± 0.5, right end high',
    ],
    [{ value: -2.1, unit: 'mm per m', error: 0.5 }, 'mm', '−2.1 mm per m', '± 0.5'],
    // 2.083 mm in a metre is 1/4 in in 10 ft; 0.1 is less than half a sixteenth.
    [{ value: -2.1, unit: 'mm per m', error: 0.5 }, 'inches', '−1/4 in per 10 ft', '−2.1 mm per m ± 0.5'],
    [{ value: -0.1, unit: 'mm per m', error: 0.5 }, 'inches', '0 in per 10 ft', '−0.1 mm per m ± 0.5'],
    [{ value: 20, unit: '°C', error: 0.5 }, 'inches', '68 °F', '20 °C ± 0.5'],
    [{ value: 96, unit: '%' }, 'mm', '96 %', '± 1'],
    [{ value: 96, unit: '%' }, 'inches', '96 %', '± 1'],
    [{ value: 4, unit: 'volumes', error: 0.01 }, 'mm', '4 to 1', '± 0.1'],
    [{ value: 95, unit: 'minutes' }, 'mm', '95 minutes', '± 1'],
    [
      { value: 0, unit: 'there or not', error: 0, words: 'no lintel to be seen' },
      'mm',
      'no lintel to be seen',
      '',
    ],
    [{ value: null, unit: '', error: 0, words: 'solid' }, 'inches', 'solid', ''],
    // An error is rounded up, never down.
    [{ value: 1, error: 1.01 }, 'mm', '1 mm', '± 1.1 mm'],
  ])('%o in %s: %s and %s', (change, system, large, rest) => {
    expect(formatReading(reading(change), system)).toBe(large);
    expect(formatRest(reading(change), system)).toBe(rest);
  });

  test.each<[Partial<Reading>, LengthSystem, string]>([
    [{}, 'mm', '190.5 mm ± 1 mm'],
    [{}, 'inches', '7 1/2 in (190.5 mm ± 1)'],
    [{ value: 96, unit: '%' }, 'inches', '96 % ± 1'],
    [{ value: null, unit: '', error: 0, words: 'solid' }, 'inches', 'solid'],
  ])('%o in %s, in one line: %s', (change, system, whole) => {
    expect(formatWhole(reading(change), system)).toBe(whole);
  });
});

describe('why an instrument reads nothing', () => {
  test.each([
    ['square', 'unit', 'It does not read this part. It reads corners.'],
    ['scratch', 'unit', 'It does not read this part. It reads bed joints, head joints and mixings.'],
    ['plumb-line', 'unit', 'It needs two points. Press “Measure from here”, then pick another part.'],
    ['joint-gauge', 'bed', 'It finds nothing to read here.'],
  ] as const)('%s on a %s', (id, kind, words) => {
    expect(whyNot(INSTRUMENT[id], kind)).toBe(words);
  });
});
