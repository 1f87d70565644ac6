import { describe, expect, test } from 'vitest';
import { chanceOf } from '../../../lib/generate/chance';
import type { Chance } from '../../../lib/questions/family';
import type { NumberQuestion } from '../../../lib/questions/question';
import { QUESTION_FAMILIES } from '../../../lib/questions/question-families';
import { QUESTION_TOPICS } from '../../../lib/questions/topics';

/** Takes the least of every draw, and the first of every choice. */
const LEAST: Chance = { whole: (least) => least, pick: (from) => first(from), happens: () => false };

function first<T>(from: readonly T[]): T {
  const [one] = from;
  if (one === undefined) throw new RangeError('nothing to pick');
  return one;
}

const FAMILIES = QUESTION_TOPICS.flatMap((topic) => QUESTION_FAMILIES[topic]);

function askNumber(id: string, chance: Chance = LEAST): NumberQuestion {
  const question = FAMILIES.find((each) => each.id === id)?.ask({
    chance,
    rules: 'canada',
    system: 'inches',
  });
  if (question?.kind !== 'number') throw new RangeError(`${id} asks for no number`);
  return question;
}

describe('asked in inches, worked out by hand', () => {
  // 4 lb × 6 ft.
  test('4 lb that fall 6 ft land with 24 foot-pounds', () => {
    const question = askNumber('cracks/energy');
    expect(question.prompt).toContain('A brick of 4 lb falls 6 ft.');
    expect(question.unit).toBe('ft·lbf');
    expect(question.answer).toBeCloseTo(24, 6);
  });

  // √(2 × 32.174 × 6) = 19.65 ft/s.
  test('6 ft give 19.65 feet a second', () => {
    const question = askNumber('cracks/speed');
    expect(question.unit).toBe('ft/s');
    expect(question.answer).toBeCloseTo(19.65, 2);
  });

  // 40 ft·lbf ÷ 4 lb = 10 ft.
  test('4 lb with 40 foot-pounds fell 10 ft', () => {
    const question = askNumber('cracks/twice-the-height');
    expect(question.prompt).toContain('A brick of 4 lb that falls 10 ft lands with 40 ft·lbf.');
    expect(question.answer).toBe(80);
  });

  // 35 lb per sq ft × 4² ft² ÷ 4.
  test('the triangle over 4 ft weighs 140 pounds', () => {
    const question = askNumber('openings/triangle');
    expect(question.prompt).toContain('35 lbf to a square foot of face. Over an opening of 4 ft');
    expect(question).toMatchObject({ unit: 'lbf', answer: 140 });
  });

  test('800 pounds on two ends are 400 on each', () => {
    const question = askNumber('openings/share-of-load');
    expect(question.prompt).toContain('A lintel carries 800 lbf');
    expect(question).toMatchObject({ unit: 'lbf', answer: 400 });
  });

  // 7 × 0.04 = 0.28, four times.
  test('a mean of 0.28 in', () => {
    const question = askNumber('reading/mean-reading');
    expect(question.prompt).toContain('reads 0.28, 0.28, 0.28, 0.28 in. What is the mean, in inches?');
    expect(question.answer).toBeCloseTo(0.28, 9);
  });

  // 15 mm is 9.45 sixteenths, shown as 9; 1.2 times as much is 11. (11 − 9) ÷ 9 = 22.2 %.
  test('how far off goes by the sixteenths that are shown', () => {
    const question = askNumber('reading/how-far-off');
    expect(question.prompt).toContain('A bed reads 11/16 in, the limit is 9/16 in.');
    expect(question.answer).toBeCloseTo(22.2, 1);
  });
});

test('asked in inches, no question tells heat, weight, force or length in metric alone', () => {
  const metric = /\d (mm|°C|kN|kg|J|m\/s|m²|MPa)(?![\w²])/;
  const texts = FAMILIES.filter(({ id }) => !/kind$|must-or-should$/.test(id)).flatMap((family) =>
    Array.from({ length: 12 }, (_, seed) => {
      const { source: _source, ...asked } = family.ask({
        chance: chanceOf(seed, 1),
        rules: 'united-states',
        system: 'inches',
      });
      return `${family.id}: ${JSON.stringify(asked)}`;
    }),
  );
  expect(texts.length).toBeGreaterThan(500);
  expect(texts.filter((text) => metric.test(text))).toEqual([]);
});
