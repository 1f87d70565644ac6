import { describe, expect, test } from 'vitest';
import { quickBrief, SEEN_FROM_AFAR } from '../../app/practise/quick/quick-walls';
import { MAX_SEED } from '../../lib/generate/brief';
import { layWall } from '../../lib/generate/generate';
import { inspect } from '../../lib/inspect/inspect';
import { RULE_SETS } from '../../lib/limits/limit';
import { askOf, WALLS_A_ROUND } from '../../lib/practice/quick-round';

const PLACES = Array.from({ length: WALLS_A_ROUND }, (_, place) => place);

describe.each(RULE_SETS)('a round by %s', (rules) => {
  test.each([1, 314])('number %i: every wall is measured to be as sound or as faulty as asked', (round) => {
    for (const place of PLACES) {
      const brief = quickBrief(rules, round, place);
      const found = inspect(layWall(brief), rules).map(({ check }) => check);
      expect(found.length > 0, JSON.stringify(brief)).toBe(askOf(round, place, MAX_SEED).faulty);
      expect(found.filter((check) => !SEEN_FROM_AFAR.includes(check))).toEqual([]);
    }
  });
});
