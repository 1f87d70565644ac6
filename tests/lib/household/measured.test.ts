import { describe, expect, test } from 'vitest';
import { type Finding, noteOf } from '../../../lib/household/note';
import type { Answers, QuestionId } from '../../../lib/household/stops';
import type { RuleSetId } from '../../../lib/limits/limit';
import type { LengthSystem } from '../../../lib/units';

function findingOf(
  about: QuestionId,
  answers: Answers,
  rules: RuleSetId,
  system: LengthSystem = 'mm',
): Finding | undefined {
  const { findings } = noteOf({ way: 'finished', rules, answers }, system);
  return findings.find((each) => each.about === about);
}

/** The figure as its own document has it, and an answer just beyond it. At the figure itself nothing is found. */
const OUTSIDE: readonly (readonly [
  source: string,
  rules: RuleSetId,
  about: QuestionId,
  figure: number,
  beyond: number,
  given?: Answers,
])[] = [
  ['NBC 2020, 9.20.5.2: 90 mm', 'canada', 'bearing', 90, 89],
  ['OBC 2024, 9.20.5.2: 150 mm', 'ontario', 'bearing', 150, 149],
  ['IRC 2021, R703.8.3: 4 in', 'united-states', 'bearing', 101.6, 101],
  [
    'NHBC 2020, 6.1.12 Table 5: 100 mm up to 1.2 m',
    'united-kingdom',
    'bearing',
    100,
    99,
    { 'opening-width': 1200 },
  ],
  [
    'NHBC 2020, 6.1.12 Table 5: 150 mm over 1.2 m',
    'united-kingdom',
    'bearing',
    150,
    149,
    { 'opening-width': 1201 },
  ],
  ['the same, width not measured: the wider one', 'united-kingdom', 'bearing', 150, 149],
  ['NBC 2020, 9.20.12.3: 25 mm of 90 mm', 'canada', 'overhang', 25, 26, { 'brick-depth': 90 }],
  ['NBC 2020, 9.20.12.3: 12 mm under 90 mm', 'canada', 'overhang', 12, 13, { 'brick-depth': 80 }],
  ['the same, brick not measured: the thinnest, 75 mm', 'canada', 'overhang', 12, 13],
  ['IRC 2021, R606.6.1: two thirds bear', 'united-states', 'overhang', 30, 31, { 'brick-depth': 90 }],
  ['NHBC 2020, 6.1.12: 25 mm', 'united-kingdom', 'overhang', 25, 26, { 'brick-depth': 102 }],
  ['NBC 2020, 9.20.13.8: 800 mm', 'canada', 'slot-spacing', 800, 801],
  ['IRC 2021, R703.8.6: 33 in', 'united-states', 'slot-spacing', 838.2, 839],
  ['LABC Warranty: 900 mm', 'united-kingdom', 'slot-spacing', 900, 901],
  ['BIA 28B: 24 in', 'good-practice', 'slot-spacing', 609.6, 610],
  ['NHBC guide: 150 mm above ground', 'united-kingdom', 'clearance', 150, 149],
  ['BIA 28B: 6 in above ground, borrowed', 'canada', 'clearance', 152.4, 152],
  ['NBC 2020, 9.20.4.1: 10 and 5 mm', 'canada', 'joint-width', 15, 16],
  ['NHBC 2019, 9.1.2: 8 mm in any length up to 5 m', 'united-kingdom', 'batten-gap', 8, 9],
  ['TMS 602: 1/4 in in 10 ft, borrowed', 'canada', 'batten-gap', 6.35, 7],
  ['BRE Digest 251: bands up to 5 mm', 'canada', 'crack-width', 5, 6],
];

describe('lengths are held to the figure of the chosen place', () => {
  test.for(OUTSIDE)('%s', ([, rules, about, figure, beyond, given = {}]) => {
    expect(findingOf(about, { ...given, [about]: figure }, rules)).toBe(undefined);
    const found = findingOf(about, { ...given, [about]: beyond }, rules);
    expect(found?.measured?.source).toMatch(/\w+, \w+/);
  });
});

describe('a figure that is borrowed', () => {
  test('says so, names its own source, and sends nobody away', () => {
    const found = findingOf('clearance', { clearance: 100 }, 'canada');
    expect(found?.measured).toEqual({
      value: 'Slots above the ground: 100 mm',
      limit: 'at least 153 mm',
      kind: 'good practice',
      source: 'BIA Technical Note 28B, December 2005, summary of recommendations',
      sourceKey: 'bia-28b',
      softer: [
        'Canada (NBC 2020) gives no figure for this. This one is borrowed from elsewhere, to compare. For this figure alone nobody has to leave.',
      ],
    });
  });

  test('a figure of the place itself has no such words', () => {
    const found = findingOf('bearing', { bearing: 60 }, 'ontario');
    expect(found?.measured).toMatchObject({ limit: 'at least 150 mm', kind: 'code minimum', softer: [] });
  });

  test('what was taken for granted is told', () => {
    expect(findingOf('overhang', { overhang: 20 }, 'canada')?.measured?.softer).toEqual([
      expect.stringContaining('The brick was not measured'),
    ]);
    expect(findingOf('overhang', { overhang: 40, 'brick-depth': 90 }, 'canada')?.measured?.softer).toEqual(
      [],
    );
  });
});

test('lengths are told in one system, the reader’s', () => {
  const answers: Answers = { bearing: 50.8, 'batten-gap': 25.4 };
  expect(findingOf('bearing', answers, 'united-states', 'inches')?.measured).toMatchObject({
    value: 'Steel past the side of the opening: 2 in',
    limit: 'at least 4 in',
  });
  expect(findingOf('batten-gap', answers, 'united-states', 'inches')?.measured).toMatchObject({
    value: 'Largest gap under a batten of 4 ft: 1 in',
    limit: 'at most 1/4 in',
  });
  expect(findingOf('batten-gap', answers, 'united-states', 'mm')?.measured?.value).toBe(
    'Largest gap under a batten of 1.2 m: 25.4 mm',
  );
});
