import { describe, expect, test } from 'vitest';
import { chanceOf } from '../../../lib/generate/chance';
import { RULE_SETS, type RuleSetId } from '../../../lib/limits/limit';
import { QUESTION_FAMILIES, questionSet } from '../../../lib/questions/question-families';
import { QUESTION_TOPICS } from '../../../lib/questions/topics';

const FAMILIES = QUESTION_TOPICS.flatMap((topic) => QUESTION_FAMILIES[topic]);
const EDGE_FAMILIES = [
  'ties/up-a-jamb',
  'ties/edge-passes',
  'hold-points/tie-before-cover',
  'hold-points/edge-limit',
];

// The greatest gap up a jamb, mm. IRC R703.8.4.1: 24 in anywhere, stricter than the 36 in at openings. BIA 28B: 18 in, stricter
// than 36 in borrowed. NHBC 2020 6.2.14: 300 mm at jambs, stricter than 450 in the field.
const MOST: Readonly<Partial<Record<RuleSetId, number>>> = {
  'united-states': 609.6,
  'united-kingdom': 300,
  'good-practice': 457.2,
};

describe('ties at edges', () => {
  test('NBC and OBC say nothing of edges, so nothing is asked of them there', () => {
    const silent = RULE_SETS.filter((rules) => !(rules in MOST));
    expect(silent).toEqual(['canada', 'ontario']);
    for (const rules of RULE_SETS) {
      const asked = EDGE_FAMILIES.filter((id) => FAMILIES.find((each) => each.id === id)?.isAsked(rules));
      expect(asked, rules).toEqual(rules in MOST ? EDGE_FAMILIES : []);
    }
  });

  test('a set of questions leaves out what is not asked', () => {
    for (let seed = 0; seed < 20; seed++) {
      const set = questionSet('ties', { rules: 'canada', system: 'mm' }, 20, (stream) =>
        chanceOf(seed, stream),
      );
      expect(set.filter(({ family }) => EDGE_FAMILIES.includes(family))).toEqual([]);
      expect(set.length).toBeGreaterThanOrEqual(5);
    }
  });

  test.each(Object.entries(MOST) as [RuleSetId, number][])(
    'under %s no reading over %d mm up a jamb is keyed as passing, and the figure itself is',
    (rules, most) => {
      const family = FAMILIES.find(({ id }) => id === 'hold-points/tie-before-cover');
      const passing = Array.from({ length: 60 }, (_, seed) => {
        const question = family?.ask({ chance: chanceOf(seed, 2), rules, system: 'mm' });
        if (question?.kind !== 'pick') throw new RangeError('not a question of picking');
        return question.options
          .filter(({ id }) => question.answer.includes(id))
          .map(({ text }) => Number.parseFloat(text.replace(',', '')));
      }).flat();
      expect(Math.max(...passing)).toBeCloseTo(most, 0);
    },
  );

  test.each([
    // 609.6 mm at most: 24 in; a jamb of 1 gap and a half takes 3 ties. 12 in would be four.
    ['united-states', 609.6],
    ['good-practice', 457.2],
    ['united-kingdom', 300],
  ] as const)('under %s the ties up a jamb stand no more than %d mm apart', (rules, most) => {
    const family = FAMILIES.find(({ id }) => id === 'ties/up-a-jamb');
    for (let seed = 0; seed < 60; seed++) {
      const question = family?.ask({ chance: chanceOf(seed, 4), rules, system: 'mm' });
      if (question?.kind !== 'number') throw new RangeError('not a question of a number');
      const height = Number(/jamb is ([\d,.]+) mm high/.exec(question.prompt)?.[1]?.replace(',', ''));
      expect(height / (question.answer - 1)).toBeLessThanOrEqual(most + 0.05);
      expect(height / (question.answer - 2)).toBeGreaterThan(most);
    }
  });
});

test('no question and no lesson sends anyone under a head to look up', () => {
  const asked = FAMILIES.flatMap((family) =>
    Array.from({ length: 30 }, (_, seed) =>
      JSON.stringify(family.ask({ chance: chanceOf(seed, 6), rules: 'good-practice', system: 'mm' })),
    ),
  );
  expect(asked.filter((text) => /look(ing)? (up )?from below/i.test(text))).toEqual([]);
});

// Bands of BRE Digest 251 were made from walls on moving ground: no width is safe by itself.
test('no question passes a crack by its width', () => {
  const asked = QUESTION_FAMILIES.cracks.flatMap((family) =>
    RULE_SETS.filter(family.isAsked).flatMap((rules) =>
      Array.from({ length: 30 }, (_, seed) => family.ask({ chance: chanceOf(seed, 8), rules, system: 'mm' })),
    ),
  );
  expect(asked.filter(({ prompt }) => /crack.*(passes|pass\?)/i.test(prompt))).toEqual([]);
});
