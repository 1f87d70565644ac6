import { describe, expect, test } from 'vitest';
import type { Drawing, Shape } from '../../../lib/drawing/shape';
import { cutBed, cutSupport, cutTie, cutUnit, unitsCut } from '../../../lib/views/section/cut-parts';
import { sectionView } from '../../../lib/views/section/section';
import { tieId } from '../../../lib/wall/part-id';
import { surveyOf } from '../../../lib/wall/survey';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { HAND_LEDGE, HAND_PANEL, HAND_TIE, handWall, handWallWith, handWindow } from './hand-wall';

const texts = ({ labels }: Drawing): readonly string[] => labels.map(({ text }) => text);
const ringOf = (shape: Shape | undefined) => (shape?.kind === 'area' ? shape.rings[0] : undefined);
const base = { kind: 'section', at: 'base' } as const;
const head = { kind: 'section', at: 'lintel' } as const;

function firstSurvey(wall = handWall()) {
  const [survey] = surveyOf(wall).panels;
  if (survey === undefined) throw new Error('the hand wall has a panel');
  return survey;
}

describe('the overhang drawn is from the edge of the support to the face over it', () => {
  test.each([
    [0, -20, 'overhang here 20 mm'],
    [3, -20, 'overhang here 23 mm'],
    [-2, -31, 'overhang here 29 mm'],
  ])('face at %s, edge at %s: %s', (set, front, text) => {
    const wall = handWallWith('A1.2', { set }, { supports: [{ ...HAND_LEDGE, front }] });
    expect(texts(sectionView(surveyedWall(wall), base, 'mm'))).toContain(text);
  });

  test('in inches: 20 mm is 13/16', () => {
    expect(texts(sectionView(surveyedWall(handWall()), base, 'inches'))).toContain('overhang here 13/16 in');
  });
});

describe('cut at true size', () => {
  test('a unit is as deep as it is, behind its face', () => {
    const unit = firstSurvey().courses[0]?.[1]?.unit;
    const ring = unit ? cutUnit(handWall(), { ...unit, set: 5 }, 310).rings[0] : [];
    const xs = (ring ?? []).map(([x]) => x);
    expect(Math.min(...xs)).toBe(-95);
    expect(ring?.[0]).toEqual([-95, 10]);
    expect(ring?.[2]).toEqual([5, 11.4]);
  });

  test('a raked bed stops at its recess', () => {
    const survey = firstSurvey(handWall({ panels: [{ ...HAND_PANEL, profile: 'raked', recess: 9 }] }));
    const placed = unitsCut(survey, 310)[2];
    expect(placed?.unit.id).toBe('A3.2');
    expect(placed && ringOf(cutBed(survey, placed, 310)[0])).toEqual([
      [-100, 140],
      [-9, 140],
      [-9, 145],
      [-9, 150],
      [-100, 150],
    ]);
  });

  test('an angle has its two legs and its thickness', () => {
    const lintel = handWindow().supports[1];
    expect(lintel && ringOf(cutSupport(lintel, 0)[0])).toEqual([
      [-96, 132],
      [-16, 132],
      [-16, 140],
      [-88, 140],
      [-88, 222],
      [-96, 222],
    ]);
  });

  test('a strap runs from the sheathing through the air space into the bed', () => {
    // Air space 50 behind units 100 deep: from −150 to −100 + 40 = −60, 1 mm thick about y = 145.
    expect(ringOf(cutTie(handWall(), HAND_TIE)[1])).toEqual([
      [-150, 144.5],
      [-60, 144.5],
      [-60, 145.5],
      [-150, 145.5],
    ]);
  });
});

describe('what a section shows and says', () => {
  test('a tie within half a stud of the cut, and none further off', () => {
    // Studs 210 apart, cut at the middle stud, 310.
    const at = (x: number) =>
      texts(sectionView(surveyedWall(handWall({ ties: [{ ...HAND_TIE, x }] })), base, 'mm'));
    expect(at(310)).toContain('tie, bedded 40 mm');
    expect(at(415)).toContain('tie, bedded 40 mm');
    expect(at(416)).not.toContain('tie, bedded 40 mm');
  });

  test('each ledge has its own cut', () => {
    const wood = { ...HAND_LEDGE, id: 'A-ledge2' as const, material: 'wood' as const, fromX: 420 };
    const wall = handWall({ supports: [{ ...HAND_LEDGE, toX: 420 }, wood] });
    expect(texts(sectionView(surveyedWall(wall), base, 'mm'))).toContain('concrete ledge');
    expect(texts(sectionView(surveyedWall(wall), { ...base, support: 'A-ledge2' }, 'mm'))).toContain(
      'wood ledge',
    );
  });

  test('over an opening: legs, overhang and both bearings', () => {
    // Bearings 205 − 105 = 100 and 535 − 415 = 120.
    const said = texts(sectionView(surveyedWall(handWindow()), head, 'mm'));
    expect(said).toEqual(
      expect.arrayContaining([
        'overhang here 16 mm',
        'leg 80 mm',
        'leg 90 mm',
        'angle 8 mm thick',
        '100 mm',
        '120 mm',
        'clear width 210 mm',
      ]),
    );
  });

  test('in inches the angle is read in sixteenths: 8 mm is 5/16', () => {
    expect(texts(sectionView(surveyedWall(handWindow()), head, 'inches'))).toContain('angle 5/16 in thick');
  });

  test('two ties in one bed: their notes stand a line apart', () => {
    const ties = [250, 370].map((x) => ({ ...HAND_TIE, id: tieId('A', 2, x), x }));
    const levels = sectionView(surveyedWall(handWall({ ties })), base, 'mm').labels.flatMap(({ text, at }) =>
      text.startsWith('tie') ? [at[1]] : [],
    );
    expect(levels).toEqual([145, 195]);
  });

  test('where the lintel was left out its opening can be cut', () => {
    const bare = { ...handWindow(), supports: [HAND_LEDGE] };
    const said = texts(sectionView(surveyedWall(bare), { ...head, support: 'A-window1' }, 'mm'));
    expect(said).toContain('Over the window, mortar pared back');
    expect(said.filter((text) => /leg|overhang|angle/.test(text))).toEqual([]);
  });

  test('the strip along the base keeps a missing stretch of ledge open', () => {
    const short = handWall({ supports: [{ ...HAND_LEDGE, toX: 410 }] });
    const { spots } = sectionView(surveyedWall(short), base, 'mm');
    const [first, last] = ['A1.1', 'A1.3'].map((part) => spots.find((spot) => spot.part === part));
    // The strip is 860 wide for 620: units 210 apart lie 291.3 apart.
    expect((last?.x ?? 0) - (first?.x ?? 0)).toBeCloseTo((420 * 860) / 620, 6);
  });
});
