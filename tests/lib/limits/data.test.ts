import { describe, expect, test } from 'vitest';
import { SOURCES } from '../../../lib/limits/bibliography';
import { boundAt } from '../../../lib/limits/bound';
import { type LimitId, RULE_SETS } from '../../../lib/limits/limit';
import {
  ALL_LIMITS,
  limitOf,
  limitsOf,
  namedLimitOf,
  ruleSetTitle,
  sourceOf,
} from '../../../lib/limits/limits';

/** Every limit a check asks for, and the rule sets with a figure of their own. The compiler refuses a name left out. */
const ASKED: Readonly<Record<LimitId, readonly string[]>> = {
  'back-contact': ['good-practice'],
  'back-void': ['good-practice'],
  'bed-taper': ['good-practice'],
  'bed-joint-most': ['canada', 'ontario', 'good-practice'],
  'bed-joint-least': ['canada', 'ontario', 'good-practice'],
  'bed-from-mean-of-eight': ['united-kingdom'],
  'first-bed-most': ['canada', 'ontario', 'united-states', 'good-practice'],
  'first-bed-least': ['canada', 'ontario', 'united-states', 'good-practice'],
  'head-joint-most': ['canada', 'ontario', 'good-practice'],
  'head-joint-least': ['canada', 'ontario', 'united-kingdom', 'good-practice'],
  'head-fill': ['canada', 'ontario', 'united-states', 'good-practice'],
  'rake-on-thin-veneer': ['canada', 'ontario'],
  'course-level': ['united-kingdom', 'good-practice'],
  gauge: ['good-practice'],
  'perpend-line': ['good-practice'],
  'face-line': ['united-kingdom', 'good-practice'],
  plumb: ['united-kingdom', 'good-practice'],
  'unit-twist': ['good-practice'],
  'unit-set': ['good-practice'],
  'corner-square': ['good-practice'],
  'smallest-piece': ['good-practice'],
  'overhang-share': ['canada', 'ontario', 'united-states', 'good-practice'],
  'overhang-fixed': ['canada', 'ontario', 'united-kingdom'],
  'supported-share': ['canada', 'ontario', 'united-states', 'good-practice'],
  'lintel-bearing': ['canada', 'ontario', 'united-states', 'united-kingdom', 'good-practice'],
  'lintel-present': ['canada', 'ontario', 'united-states', 'good-practice'],
  'angle-size': ['canada', 'ontario', 'united-states'],
  'angle-thickness': ['good-practice'],
  'angle-leg': ['good-practice'],
  'tie-spacing': ['canada', 'ontario', 'united-states', 'united-kingdom', 'good-practice'],
  'tie-edge-distance': ['united-states', 'united-kingdom', 'good-practice'],
  'tie-edge-spacing': ['united-states', 'united-kingdom', 'good-practice'],
  'tie-opening': ['united-states', 'good-practice'],
  'tie-embedment': ['united-states', 'united-kingdom', 'good-practice'],
  'tie-cover': ['united-states', 'good-practice'],
  'tie-thickness': ['canada', 'ontario', 'united-states', 'good-practice'],
  'tie-width': ['canada', 'ontario', 'united-states', 'good-practice'],
  'weep-spacing': ['canada', 'ontario', 'united-states', 'united-kingdom', 'good-practice'],
  'weep-size': ['united-states', 'good-practice'],
  'flashing-present': ['canada', 'ontario', 'united-states', 'good-practice'],
  'flashing-upstand': ['canada', 'ontario', 'good-practice'],
  'flashing-past-face': ['canada', 'ontario', 'good-practice'],
  'end-dam': ['good-practice'],
  'mortar-life': ['canada', 'ontario', 'united-states', 'good-practice'],
  'sand-ratio': ['canada', 'ontario', 'united-states', 'good-practice'],
};
const ASKED_IDS = Object.keys(ASKED) as LimitId[];

describe('limits that checks ask for', () => {
  test.each(ASKED_IDS)('%s has a figure of its own where it should, and nowhere else', (id) => {
    const own = RULE_SETS.filter((rules) => limitsOf(rules).some((limit) => limit.id === id));
    expect(own).toEqual(ASKED[id]);
  });

  test('none is from memory', () => {
    const remembered = ALL_LIMITS.filter(({ id, howSure }) => id in ASKED && howSure === 'memory');
    expect(remembered.map(({ rules, id }) => `${rules} ${id}`)).toEqual([]);
  });

  test('what the wall is measured in is the unit of the limit', () => {
    const units = ASKED_IDS.flatMap((id) =>
      [...new Set(RULE_SETS.flatMap((rules) => limitOf(rules, id)?.unit ?? []))].map(
        (unit) => `${id}: ${unit}`,
      ),
    );
    const otherThanMm = units.filter((line) => !line.endsWith(': mm'));
    expect(otherThanMm).toEqual([
      'back-contact: %',
      'back-void: mm²',
      'head-fill: %',
      'gauge: mm per 4 courses',
      'corner-square: mm per m',
      'supported-share: %',
      'lintel-present: there or not',
      'angle-size: table',
      'tie-spacing: table',
      'flashing-present: there or not',
      'mortar-life: minutes',
      'sand-ratio: volumes',
    ]);
  });
});

describe('all limits', () => {
  test('there are some of every rule set', () => {
    expect(Math.min(...RULE_SETS.map((rules) => limitsOf(rules).length))).toBeGreaterThan(30);
    expect(RULE_SETS.flatMap(limitsOf)).toEqual(ALL_LIMITS);
  });

  test('each stands once in its rule set, under the right name', () => {
    const keys = ALL_LIMITS.map(({ rules, id }) => `${rules} ${id}`);
    expect(keys.filter((key, index) => keys.indexOf(key) !== index)).toEqual([]);
    expect(RULE_SETS.flatMap((rules) => limitsOf(rules).filter((limit) => limit.rules !== rules))).toEqual(
      [],
    );
  });

  test('each says where it is from, and every source is used', () => {
    const keys = SOURCES.map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
    expect(ALL_LIMITS.map((limit) => sourceOf(limit).key)).toEqual(ALL_LIMITS.map(({ source }) => source));
    expect(keys.filter((key) => !ALL_LIMITS.some(({ source }) => source === key))).toEqual([]);
    expect(ALL_LIMITS.filter(({ edition, clause, quantity }) => !edition || !clause || !quantity)).toEqual(
      [],
    );
    expect(SOURCES.filter(({ title, publisher, read }) => !title || !publisher || !read)).toEqual([]);
  });

  test('what was read in an edition that is no longer the newest says which one is', () => {
    const newer = SOURCES.filter((source) => source.newer !== undefined).map(
      ({ key, newer }) => `${key}: ${newer}`,
    );
    expect(newer).toEqual([
      'nbc-2020: NBC 2025',
      'obc-2012: Ontario Building Code 2024',
      'irc-2021: IRC 2024',
      'nhbc-2011: NHBC Standards 2025',
      'nhbc-2019: NHBC Standards 2025',
      'nhbc-2020: NHBC Standards 2025',
      'nhbc-2020-frame: NHBC Standards 2025',
      'nhbc-2022: NHBC Standards 2025',
    ]);
  });

  test('a yardstick taken from a standard is called a tolerance of that standard, in no rule set good practice', () => {
    const wrong = ALL_LIMITS.filter(
      ({ source, kind, howSure }) =>
        source === 'tms-602' && kind !== 'standard tolerance' && howSure !== 'memory',
    );
    expect(wrong.map(({ id }) => id)).toEqual([]);
    expect(limitOf('canada', 'plumb')?.kind).toBe('standard tolerance');
  });

  test('a figure from memory says so', () => {
    const remembered = ALL_LIMITS.filter(({ howSure }) => howSure === 'memory');
    expect(remembered.length).toBeGreaterThan(3);
    expect(remembered.filter(({ note }) => !/From memory.*decides nothing/.test(note ?? ''))).toEqual([]);
  });

  test('our own defaults are only in good practice, and say what they are', () => {
    const ours = ALL_LIMITS.filter(({ source }) => source === 'training-default');
    expect(ours.map(({ id }) => id)).toEqual([
      'bed-taper',
      'gauge',
      'perpend-line',
      'unit-twist',
      'unit-set',
      'corner-square',
    ]);
    expect(
      ours.filter(
        ({ rules, howSure, note }) =>
          rules !== 'good-practice' ||
          howSure !== 'common practice' ||
          !/Our own training default/.test(note ?? ''),
      ),
    ).toEqual([]);
  });

  test('steps and runs rise, and the last step has no end', () => {
    for (const { rules, id, bound } of ALL_LIMITS) {
      const sizes =
        bound.form === 'stepped'
          ? bound.steps.map(({ upTo }) => upTo)
          : bound.form === 'any-run'
            ? bound.runs.map(({ run }) => run)
            : [];
      expect(
        [...sizes].sort((a, b) => a - b),
        `${rules} ${id}`,
      ).toEqual(sizes);
      if (bound.form === 'stepped') expect(sizes.at(-1), `${rules} ${id}`).toBe(Number.POSITIVE_INFINITY);
    }
  });
});

describe('limitOf', () => {
  test('gives the rule set its own limit', () => {
    expect(limitOf('ontario', 'lintel-bearing')).toMatchObject({ rules: 'ontario', clause: '9.20.5.2' });
  });
  test('goes to good practice where the rule set is silent', () => {
    expect(limitOf('canada', 'unit-twist')).toMatchObject({
      rules: 'good-practice',
      howSure: 'common practice',
    });
  });
  test('says nothing where both are', () => {
    expect(limitOf('united-states', 'rake-on-thin-veneer')).toBe(undefined);
    expect(limitOf('good-practice', 'overhang-fixed')).toBe(undefined);
    expect(namedLimitOf('canada', 'no-such-limit')).toBe(undefined);
    expect(namedLimitOf('canada', 'toString')).toBe(undefined);
  });
  test('a limit without a book is refused', () => {
    const [limit] = ALL_LIMITS;
    if (limit === undefined) throw new Error('no limits');
    expect(() => sourceOf({ ...limit, source: 'no-such-book' })).toThrow(
      'the source no-such-book is not in the bibliography',
    );
  });
});

test('rule sets by name', () => {
  expect(RULE_SETS.map(ruleSetTitle)).toEqual([
    'Canada (NBC 2020)',
    'Ontario (2024)',
    'United States (IRC 2021)',
    'United Kingdom (NHBC 2019/2020, LABC)',
    'Good practice',
  ]);
});

test('our training defaults', () => {
  const figures = ['bed-taper', 'gauge', 'perpend-line', 'unit-twist', 'unit-set', 'corner-square'].map(
    (id) => {
      const limit = namedLimitOf('united-kingdom', id);
      return limit === undefined ? undefined : boundAt(limit, {});
    },
  );
  expect(figures).toEqual([4, 3, 10, 3, 3, 5]);
});
