import { describe, expect, test } from 'vitest';
import { STEPS_OF } from '../../../lib/household/drawers';
import { LIMIT_OF_LOOKING, ROWS } from '../../../lib/household/note';
import { QUESTIONS } from '../../../lib/household/stops';
import { groundLimits } from '../../../lib/household/ten-limits';
import { RULE_SETS } from '../../../lib/limits/limit';

const said = [...ROWS.flatMap(({ saw, maybe, ask }) => [saw, ...maybe, ask]), LIMIT_OF_LOOKING];
const steps = Object.values(STEPS_OF).flatMap((each) => Object.values(each).flat());

describe('the words of a note', () => {
  test.each([
    ['name a cause', /\b(because of|caused|due to|settle[sd]?|settlement|subsid|sinking|failing|failed)\b/i],
    ['give a verdict on the wall', /\bwall is (safe|sound|fine|unsafe|dangerous|good|bad)\b|\bto code\b/i],
    ['put anything off', /\bwait\b|\bno hurry\b|\bnot urgent\b/i],
  ])('never %s', (_, pattern) => {
    expect([...said, ...steps].filter((text) => pattern.test(text))).toEqual([]);
  });

  test('each begin with what was seen, and end with what to ask or do', () => {
    for (const { saw, ask } of ROWS) {
      expect(saw).toMatch(/^[A-Z].*\.$/);
      expect(ask).toMatch(/^[A-Z].*\.$/);
    }
  });
});

test('each question stands once, and ends as a question', () => {
  expect(new Set(QUESTIONS.map(({ id }) => id)).size).toBe(QUESTIONS.length);
  expect(QUESTIONS.filter(({ ask }) => !ask.endsWith('?'))).toEqual([]);
});

describe.each(RULE_SETS)('limits from the ground by %s', (rules) => {
  test('are ten, each with a source, in one system of lengths', () => {
    const metric = groundLimits(rules, 'mm');
    const inches = groundLimits(rules, 'inches');
    expect(metric).toHaveLength(10);
    expect(metric.filter(({ source }) => !/\w+, \w/.test(source))).toEqual([]);
    expect(
      metric.filter(({ title, asked }) => /\b(in|ft)$/.test(asked) || /\d (in|ft)\b/.test(title)),
    ).toEqual([]);
    expect(inches.filter(({ title, asked }) => /\d m?m\b/.test(`${title} ${asked}`))).toEqual([]);
  });
});

// To the careful side, as a tape reads it. Typed from the documents: NHBC 2019 9.1.2, BBFNZ guide, IRC R703.8.3, OBC 9.20.5.2, NBC 9.20.13.8, BRE Digest 251.
test.each([
  ['united-kingdom', 0, 'at least 10 m', 'at least 33 ft'],
  ['canada', 0, 'at least 6.1 m', 'at least 20 ft'],
  ['united-states', 6, 'at least 102 mm', 'at least 4 in'],
  ['ontario', 6, 'at least 150 mm', 'at least 5 15/16 in'],
  ['canada', 7, 'at most 800 mm', 'at most 31 7/16 in'],
  ['canada', 9, 'at most 5 mm', 'at most 3/16 in'],
] as const)('by %s the limit in place %i is %s, %s', (rules, place, metric, inch) => {
  expect(groundLimits(rules, 'mm')[place]?.asked).toBe(metric);
  expect(groundLimits(rules, 'inches')[place]?.asked).toBe(inch);
});
