import { describe, expect, test } from 'vitest';
import { unitMeasures } from '../../../lib/views/pointing/part-measures';
import { surveyOf } from '../../../lib/wall/survey';
import { handWall, handWallWith } from './hand-wall';

const said = (change: Parameters<typeof handWallWith>[1], system: 'mm' | 'inches' = 'mm') =>
  unitMeasures(surveyOf(handWallWith('A3.2', change)), system).get('A3.2');

describe('a unit in the list', () => {
  test.each([
    [{}, '200 mm × 60 mm, face on the line'],
    [{ set: 0.4 }, '200 mm × 60 mm, face on the line'],
    [{ set: 8 }, '200 mm × 60 mm, face 8 mm out from the line'],
    [{ set: -4.2 }, '200 mm × 60 mm, face 4 mm back from the line'],
    // 12 mm of twist about the middle: 6 mm each way.
    [
      { twist: 12 },
      '200 mm × 60 mm, face: left end 6 mm back from the line, right end 6 mm out from the line',
    ],
    [{ fall: 6 }, '200 mm × 60 mm, face on the line, right end 6 mm lower'],
    [{ fall: -3 }, '200 mm × 60 mm, face on the line, left end 3 mm lower'],
    [{ condition: 'hairline' }, '200 mm × 60 mm, face on the line, with a thin crack'],
    [{ condition: 'bloom' }, '200 mm × 60 mm, face on the line, with white bloom'],
    [{ condition: 'flake' }, '200 mm × 60 mm, face on the line, with a flake off its face'],
  ] as const)('%j: %s', (change, text) => {
    expect(said(change)).toBe(text);
  });

  test('in inches to the sixteenth: 200 mm is 7 7/8, 60 mm 2 3/8, 8 mm 5/16', () => {
    expect(said({ set: 8 }, 'inches')).toBe('7 7/8 in × 2 3/8 in, face 5/16 in out from the line');
  });

  test('what a rule in sixteenths does not show is not told: 0.7 mm is less than half of 1.59', () => {
    expect(said({ set: 0.7, fall: 0.7 }, 'inches')).toBe('7 7/8 in × 2 3/8 in, face on the line');
  });

  test('never says whether it is right', () => {
    const all = [...unitMeasures(surveyOf(handWall()), 'mm').values()].join();
    expect(all).not.toMatch(/too|wrong|bad|fault|proud/);
  });
});
