import { describe, expect, test } from 'vitest';
import { placePicture } from '../../app/walls/place-picture';
import { layByCode } from '../../lib/engines/engines';
import { parseCode } from '../../lib/generate/wall-code';
import { inspect } from '../../lib/inspect/inspect';
import { placeFile } from '../../lib/wall-page/place-file';

/** One open head joint. */
const FIRST = parseCode('6NK-PWAG-FAH');
/** A bare back. */
const BARE = parseCode('B5J-594G-QKM');

const boxOf = (svg: string | null) => /viewBox="([^"]+)"/.exec(svg ?? '')?.[1];

describe('the place of a fault beside the same place built right', () => {
  test.each([
    ['open-head', FIRST],
    ['missing-back-mortar', BARE],
  ] as const)('%s: the same part of the sheet at the same scale, and another picture', (check, brief) => {
    const finding = inspect(layByCode(brief).wall, brief.rules).find((each) => each.check === check);
    if (finding === undefined) throw new RangeError('the wall has no such fault');
    const laid = placePicture(brief, placeFile(finding, 'as-laid'));
    const sound = placePicture(brief, placeFile(finding, 'sound'));
    expect(boxOf(laid)).toMatch(/^-?[\d.]+ -?[\d.]+ [\d.]+ [\d.]+$/);
    expect(boxOf(sound)).toBe(boxOf(laid));
    expect(sound).not.toBe(laid);
    // A place, not a wall: the whole front takes some 400 KB.
    expect(laid?.length).toBeLessThan(60_000);
  });

  test('only a fault that is measured has a picture', () => {
    expect(placePicture(FIRST, 'open-head.A1.1_2.as-laid.svg')).toBeNull();
    expect(placePicture(FIRST, 'open-head.A27.3_4.elsewhere.svg')).toBeNull();
    expect(placePicture(FIRST, '')).toBeNull();
  });
});
