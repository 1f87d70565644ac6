import { createEmptyCard, fsrs, Rating } from 'ts-fsrs';
import { describe, expect, test } from 'vitest';
import { RADICALS } from '../../../lib/generate/planner';
import { chanceAtLeast, masteryOf } from '../../../lib/learning/mastery';
import {
  afterAnswer,
  chanceOfRight,
  familySkill,
  harderAt,
  NO_ANSWERS,
  type Skill,
} from '../../../lib/learning/skill';
import { LONGEST_DAYS, type Review, reviewed } from '../../../lib/learning/spacing';

describe('skill, offset and difficulty, answer by answer', () => {
  // Worked by hand from the formula at the head of lib/learning/skill.ts with everything 0 at first: p, skill, offset and difficulty after.
  const STEPS = [
    ['ties', true, 0.5, 0.3, 0.4, -0.25],
    ['ties', true, 0.721115, 0.459363, 0.612484, -0.382802],
    ['bond', false, 0.612863, 0.125074, -0.49029, 0.306431],
    ['ties', false, 0.754055, -0.268346, 0.06408, -0.04005],
    ['bond', true, 0.256342, 0.103483, 0.076306, -0.047691],
  ] as const;
  const flat = { offset: 0, difficulty: 0, answers: 0 };

  test('five answers to two families', () => {
    let so: Skill = { ...NO_ANSWERS, families: { ties: flat, bond: flat } };
    for (const [family, right, p, skill, offset, difficulty] of STEPS) {
      const task = { family, harder: 0, guess: 0 };
      expect(chanceOfRight(so, task)).toBeCloseTo(p, 6);
      so = afterAnswer(so, task, right);
      expect(so.skill).toBeCloseTo(skill, 6);
      expect(familySkill(so, family).offset).toBeCloseTo(offset, 6);
      expect(familySkill(so, family).difficulty).toBeCloseTo(difficulty, 6);
    }
  });

  test('a guess floor of .05 and a wall 1.673976 easier than the learner is read rightly in 85 of 100', () => {
    const so: Skill = { ...NO_ANSWERS, families: { ties: flat } };
    expect(chanceOfRight(so, { family: 'ties', harder: -1.673976, guess: 0.05 })).toBeCloseTo(0.85, 6);
    expect(chanceOfRight(so, { family: 'ties', harder: -1.734601, guess: 0 })).toBeCloseTo(0.85, 6);
  });

  test('how much harder each difficulty is follows from what the generator draws', () => {
    const raw = RADICALS.map(
      ({ severity: [least, most], lookAlikes: [few, many] }) =>
        -Math.log2((least + most) / 2) + (0.3 * (few + many)) / 2,
    );
    raw.forEach((each, index) => {
      expect(Math.abs(each - (raw[2] ?? 0) - harderAt(index + 1))).toBeLessThan(0.005);
    });
  });
});

describe('the gate of mastery', () => {
  // P(share >= .8) with any share as likely as any other before. 10 of 10: 1 - .8^11.
  test.each([
    [5, 5, 0.7379],
    [8, 8, 0.8658],
    [9, 10, 0.6779],
    [10, 10, 0.9141],
    [12, 12, 0.945],
    [13, 13, 0.956],
    [14, 15, 0.8593],
    [18, 20, 0.8213],
    [19, 20, 0.9424],
    [22, 24, 0.9018],
    [27, 30, 0.893],
  ])('%i of %i', (hits, of, chance) => {
    expect(chanceAtLeast(0.8, hits, of)).toBeCloseTo(chance, 4);
  });

  test('the beta integral itself', () => {
    expect(1 - chanceAtLeast(0.8, 10, 10)).toBeCloseTo(0.0858993459, 10);
    expect(1 - chanceAtLeast(0.8, 19, 20)).toBeCloseTo(0.0576460752, 10);
  });

  const trials = (rights: string, days = 2) =>
    [...rights].map((sign, index) => ({ right: sign === '+', day: index % days, difficulty: 3 }));
  const SOUND = '++++++++';
  test.each([
    ['ten of ten on two days, eight sound walls left alone', '++++++++++', 2, SOUND, true],
    ['the same on one day', '++++++++++', 1, SOUND, false],
    ['nine of nine', '+++++++++', 2, SOUND, false],
    ['nine of ten', '+++++++++-', 2, SOUND, false],
    ['ten of ten, and one call on ten sound walls', '++++++++++', 2, '+++++++++-', false],
    ['ten of ten, and no sound wall', '++++++++++', 2, '', false],
    ['all of the last thirty, after ten missed', `${'-'.repeat(10)}${'+'.repeat(30)}`, 2, SOUND, true],
  ])('%s', (_, faulty, days, sound, isMastered) => {
    expect(masteryOf(trials(faulty, days), trials(sound)).isMastered).toBe(isMastered);
  });
});

describe('when a family comes back', () => {
  const DAY = 86_400_000;
  const START = Date.UTC(2026, 0, 5, 8);
  const daysAfter = (grades: readonly (1 | 2 | 3 | 4)[]) => {
    let review: Review | null = null;
    return grades.map((grade) => {
      review = reviewed(review, review?.dueAt ?? START, grade);
      return review.days;
    });
  };

  // The library's own published test of its next states, with its short-term steps on.
  test('the library gives the intervals of its own test', () => {
    const scheduler = fsrs({ enable_fuzz: false });
    let card = createEmptyCard(START);
    const days = [3, 3, 3, 3, 3, 3, 1, 1, 3, 3, 3, 3, 3].map((grade) => {
      ({ card } = scheduler.next(card, card.due, grade));
      return card.scheduled_days;
    });
    expect(days).toEqual([0, 2, 11, 46, 163, 498, 0, 0, 2, 4, 7, 12, 21]);
  });

  // Worked out by running the library with our settings.
  test('good, good, again, hard, good, easy on the day each is due', () => {
    expect(daysAfter([3, 3, 1, 2, 3, 4])).toEqual([3, 14, 2, 4, 8, 24]);
  });

  test('none waits longer than our cap', () => {
    expect(Math.max(...daysAfter([4, 4, 4, 4, 4, 4]))).toBe(LONGEST_DAYS);
  });

  test('a first good wall read again thirteen days late is good for 28 days', () => {
    const first = reviewed(null, START, Rating.Good);
    expect(reviewed(first, first.dueAt + 13 * DAY - 3 * DAY, Rating.Good).days).toBe(28);
  });

  test('a clock set back counts as no time gone by', () => {
    const first = reviewed(null, START, Rating.Good);
    const back = reviewed(first, START - 400 * DAY, Rating.Good);
    expect(back).toEqual(reviewed(first, START, Rating.Good));
    expect(back.dueAt).toBeGreaterThan(START);
  });
});
