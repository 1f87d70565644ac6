import { describe, expect, test } from 'vitest';
import { layPlan, layWall } from '../../../lib/generate/generate';
import { lookAlikesFor } from '../../../lib/generate/look-alikes/fits';
import { LOOK_ALIKES, type LookAlike } from '../../../lib/generate/look-alikes/look-alike';
import type { Plan } from '../../../lib/generate/plan';
import { planOf, planWith } from '../../../lib/generate/planner';
import { TOPICS } from '../../../lib/generate/topics';
import { inspect } from '../../../lib/inspect/inspect';
import { RULE_SETS } from '../../../lib/limits/limit';
import type { Wall } from '../../../lib/wall/model';

const WALLS = 400;
const MANY = 20_000;
const briefAt = (difficulty: number, seed: number) =>
  ({ topic: 'mixed', kind: 'window-panel', difficulty, rules: 'canada', seed }) as const;
const plansOf = (difficulty: number) =>
  Array.from({ length: WALLS }, (_, seed) => planOf(briefAt(difficulty, seed)));

describe('difficulty moves its radicals and nothing else', () => {
  test('four walls in ten are sound, not one in a hundred more or less', () => {
    const sound = Array.from({ length: MANY }, (_, seed) => planOf(briefAt(3, seed))).filter(
      ({ spoils }) => spoils.length === 0,
    ).length;
    // Binomial with n = 20,000, p = 0.4: mean 8,000, standard deviation 69. With 0.39 or 0.41 it lies 200 off.
    expect(Math.abs(sound - 8000)).toBeLessThan(100);
  });

  test.each([
    [1, 3, 4, 1, 0.5],
    [3, 1.6, 2.5, 3, 0.85],
    [5, 1.15, 1.5, 4, 0.9],
  ])(
    'difficulty %i: severity %d to %d, at most %i faults, sound work up to %d of its limits',
    (difficulty, least, most, faults, soundUpTo) => {
      for (const { spoils, tolerated } of plansOf(difficulty)) {
        expect(spoils.length).toBeLessThanOrEqual(faults);
        for (const { severity } of spoils) {
          expect(severity).toBeLessThanOrEqual(most);
          // Faults that would break a second limit are held to less than asked, never under 1.15.
          expect(severity).toBeGreaterThanOrEqual(Math.min(least, 1.15));
        }
        for (const { severity } of tolerated) expect(severity).toBeLessThanOrEqual(soundUpTo);
      }
    },
  );

  test('a wall has one fault or more by chance, in every topic and at every difficulty but the easiest', () => {
    for (const topic of TOPICS) {
      const counts = new Set(
        Array.from({ length: WALLS }, (_, seed) => planOf({ ...briefAt(4, seed), topic }).spoils.length),
      );
      expect([...counts].sort().slice(0, 3)).toEqual([0, 1, 2]);
    }
  });

  test('what a wall is built of comes as often on sound walls as on faulty ones', () => {
    const plans = Array.from({ length: MANY }, (_, seed) => planOf({ ...briefAt(5, seed), topic: 'bond' }));
    const traits: Readonly<Record<string, (plan: Plan) => boolean>> = {
      'third bond': ({ bond }) => bond === 'third',
      'a 75 mm bed': ({ thinBed }) => thinBed,
      slips: ({ masonry }) => masonry === 'adhered',
      stone: ({ finish }) => finish !== 'brick',
      quoins: ({ quoins }) => quoins,
    };
    for (const [trait, has] of Object.entries(traits)) {
      const having = plans.filter(has);
      const sound = having.filter(({ spoils }) => spoils.length === 0).length;
      // Binomial with p = 0.4: four standard deviations either way.
      const chance = 4 * Math.sqrt(having.length * 0.4 * 0.6);
      expect(having.length, trait).toBeGreaterThan(500);
      expect(Math.abs(sound - having.length * 0.4), trait).toBeLessThan(chance);
    }
  });

  test('harder walls have more look-alikes and mortar nearer the units in colour', () => {
    const mean = (difficulty: number, value: (plan: Plan) => number) =>
      plansOf(difficulty).reduce((sum, plan) => sum + value(plan), 0) / WALLS;
    for (const value of [(plan: Plan) => plan.lookAlikes.length, (plan: Plan) => plan.mortarTone]) {
      expect(mean(1, value)).toBeLessThan(mean(3, value));
      expect(mean(3, value)).toBeLessThan(mean(5, value));
    }
  });

  test('a wall for practice has just the faults of its plan', () => {
    for (let seed = 0; seed < 60; seed++) {
      const brief = { ...briefAt(1 + (seed % 5), seed), rules: RULE_SETS[seed % 5] ?? 'canada' };
      const { spoils, spares } = planOf(brief);
      const planned = new Set([...spoils, ...spares].map(({ fault }) => fault));
      const found = new Set(inspect(layWall(brief), brief.rules).map(({ check }) => check));
      expect([...found].filter((check) => !planned.has(check))).toEqual([]);
    }
  });
});

describe('look-alikes are on the wall and are no fault', () => {
  const shows: Readonly<Record<LookAlike, (wall: Wall) => boolean>> = {
    'textured-units': ({ units }) => units.some(({ texture }) => texture !== 'smooth'),
    'projecting-pattern': ({ projections }) =>
      projections.some(({ units, by }) => units.length >= 3 && by === 12),
    'weep-openings': ({ heads }) =>
      heads.some(({ joint }) => joint === 'A1.2/3') || heads.some(({ joint }) => joint === 'A1.4/5'),
    'closers-at-reveal': ({ units }) => units.some(({ kind }) => kind === 'closer'),
    'thick-first-bed': ({ units }) => units.some(({ course, y }) => course === 1 && y > 14),
    'overhang-within-a-third': ({ supports }) =>
      supports.some(({ kind, front }) => kind === 'ledge' && front <= -13),
    'hairline-cracks': ({ units }) => units.some(({ condition }) => condition === 'hairline'),
    efflorescence: ({ units }) => units.some(({ condition }) => condition === 'bloom'),
    'chipped-corners': ({ units }) => units.some(({ condition }) => condition === 'chip'),
    'mortar-smears': ({ units }) => units.some(({ condition }) => condition === 'smear'),
    'handmade-size-range': ({ units }) => units.some(({ texture }) => texture === 'rough'),
    'hidden-angle': ({ supports }) => supports.some(({ kind, front }) => kind === 'lintel' && front <= -10),
    'raked-on-thick-veneer': ({ panels }) => panels.some(({ profile }) => profile === 'raked'),
    'hot-day-mortar': ({ batches }) => batches.every(({ air, minutes }) => air >= 25 && minutes > 60),
  };

  test.each(LOOK_ALIKES)('%s', (lookAlike) => {
    const plain = { bond: 'running', soldiers: false, quoins: false, mirrored: false } as const;
    const plan = RULE_SETS.map((rules) => ({
      ...planWith('window-panel', 'anchored', rules, [], 11),
      ...plain,
    })).find((each) => lookAlikesFor(each).includes(lookAlike));
    if (plan === undefined) throw new Error(`${lookAlike} fits no rule set`);
    const { rules } = plan;
    const bare = layPlan({ ...plan, tolerated: [], soundUpTo: 0.9, lookAlikes: [] });
    const dressed = layPlan({ ...plan, tolerated: [], soundUpTo: 0.9, lookAlikes: [lookAlike] });
    expect(shows[lookAlike](dressed)).toBe(true);
    expect(shows[lookAlike](bare)).toBe(false);
    expect(inspect(dressed, rules)).toEqual([]);
  });
});
