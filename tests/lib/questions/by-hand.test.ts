import { describe, expect, test } from 'vitest';
import { chanceOf } from '../../../lib/generate/chance';
import type { RuleSetId } from '../../../lib/limits/limit';
import { checkAnswer } from '../../../lib/questions/check-answer';
import type { Chance } from '../../../lib/questions/family';
import { parseNumber } from '../../../lib/questions/parse-number';
import { QUESTION_FAMILIES } from '../../../lib/questions/question-families';
import { QUESTION_TOPICS } from '../../../lib/questions/topics';

/** Chance that gives the values listed, one after the other; whole numbers, or places in a list. */
function fixed(...values: readonly number[]): Chance {
  let at = 0;
  const draw = () => values[at++] ?? 0;
  return {
    whole: (least) => Math.max(least, draw()),
    pick: (from) => {
      const drawn = from[draw()];
      if (drawn === undefined) throw new RangeError('test: no such place');
      return drawn;
    },
    happens: () => draw() === 1,
  };
}

function ask(id: string, chance: Chance, rules: RuleSetId = 'canada', system: 'mm' | 'inches' = 'mm') {
  const family = QUESTION_TOPICS.flatMap((topic) => QUESTION_FAMILIES[topic]).find((each) => each.id === id);
  if (family === undefined) throw new RangeError(`test: no family ${id}`);
  return family.ask({ chance, rules, system });
}

// Every answer here was worked out on paper from the prompt beside it; the source of the way is named.
describe.each([
  // Trade arithmetic: bricks and the joints between them.
  ['joints/mean-head-joint', fixed(5, 2, 12), 'canada', '5 whole bricks of 215 mm take up 1123 mm', 12],
  // Published example: 3300 mm wall, metric brick 57 high (US GSA Metric Design Guide gives 3 courses to 200 mm); 3300 ÷ 67 = 49.25.
  ['line/gauge', fixed(4, 0), 'canada', '3300 mm high, in whole courses of brick 57 mm', 3300 / 49],
  // 10 courses of 65 with 10 beds of 10.
  ['line/height-of-courses', fixed(10, 1, 0), 'canada', '10 courses of brick 65 mm high', 750],
  // Reversed level: true fall 5, tool 3, so 8 one way and 2 the other.
  ['line/level-reversed', fixed(5, 3), 'canada', 'shows a fall of 8 mm', 5],
  // Half of 215 at 10 mm joints is 102.5 (co-ordinating size 225; Brick Development Association tables).
  ['bond/cut-piece', fixed(2, 0, 0), 'canada', 'Bricks are 215 mm long, head joints 10 mm', 102.5],
  // Pier of 4 bricks of 215 at 10 mm: 4 × 225 − 10 (Brick Development Association tables: 890).
  [
    'bond/pier-or-opening',
    fixed(2, 0, 4, 0),
    'canada',
    'A pier with two free ends is set out for 4 bricks of 215 mm',
    890,
  ],
  // Opening of 4 bricks: 4 × 225 + 10 (the same tables: 910).
  [
    'bond/pier-or-opening',
    fixed(2, 0, 4, 1),
    'canada',
    'An opening between two jambs is set out for 4 bricks',
    910,
  ],
  // A block tips at half its depth.
  ['support/tipping', fixed(90), 'canada', 'A loose brick 90 mm deep', 45],
  // NBC 2020 9.20.12.3: 12 mm on units under 90 mm, 25 mm from 90 mm up.
  ['support/most-overhang', fixed(1), 'canada', 'A solid brick is 75 mm deep', 12],
  ['support/most-overhang', fixed(4), 'canada', 'A solid brick is 90 mm deep', 25],
  // IRC 2021 R606.6.1 and R703.8.2.1: a third of the depth.
  ['support/most-overhang', fixed(4), 'united-states', 'A solid brick is 90 mm deep', 30],
  // Ontario 2024 9.20.5.2: 150 mm at each end. NBC 2020 9.20.5.2: 90 mm. NHBC 2020 6.1.12: 100 mm up to 1200.
  ['openings/lintel-length', fixed(3), 'ontario', 'An opening is 1500 mm wide', 1800],
  ['openings/lintel-length', fixed(3), 'canada', 'An opening is 1500 mm wide', 1680],
  ['openings/lintel-length', fixed(1), 'united-kingdom', 'An opening is 1000 mm wide', 1200],
  // Triangle 2 m wide and 1 m high is 1 m²: 2 kN at 2 kN/m².
  ['openings/triangle', fixed(3, 3), 'canada', 'Over an opening of 2 m', 2],
  // Ties 400 × 400 hold 0.16 m² each; 6.2 ÷ 0.16 = 38.75, so 39.
  ['ties/fewest', fixed(1, 6, 0), 'canada', 'A panel has 6.2 m²', 39],
  // NHBC 2020 6.1.18: 300 mm up an edge. 300 × 5.5 = 1650, six gaps, seven ties.
  ['ties/up-a-jamb', fixed(5, 1), 'united-kingdom', 'The jamb is 1650 mm high', 7],
  // 500 up and 600 across (a row of NBC 2020 Table 9.20.9.5.): 0.30 m².
  ['ties/area-each', fixed(1, 3), 'canada', '500 mm apart up the wall and 600 mm across', 0.3],
  // 1 : 1 : 6 is 3 of sand to 1 of binder (ASTM C270 type N).
  ['mortar/sand-ratio', fixed(1, 12), 'canada', '1 of cement, 1 of lime and 6 of sand', 3],
  // 12 boxes with a fifth more.
  [
    'mortar/bulking',
    fixed(12, 2),
    'canada',
    'asks for 12 boxes. Your sand is damp and has swollen by 20 %',
    14.4,
  ],
  // NBC 2020 9.20.13.8: 800 mm. 3.5 × 800 = 2800, four gaps, five holes.
  ['water/weep-count', fixed(3, 1), 'canada', 'The first and the last are 2800 mm apart', 5],
  // 2 kg from 5 m: 2 × 9.81 × 5 = 98 J.
  ['cracks/energy', fixed(1, 3), 'canada', 'A brick of 2 kg falls 5000 mm', 98.0665],
  // √(2 × 9.81 × 5) = 9.9 m/s.
  ['cracks/speed', fixed(3), 'canada', 'A brick falls 5000 mm', 9.9028],
  // 29 CFR 1926.706: height and 4 ft.
  ['cracks/keep-out', fixed(2), 'canada', 'A new wall stands 3000 mm high', 4219.2],
  // 20 × 0.02 m² × 10 mm = 4 litres, and a tenth.
  ['back-buttering/mortar-for-units', fixed(20, 1, 0, 0), 'canada', '20 adhered units', 4.4],
  // 5 bare of 100.
  ['back-buttering/contact-by-grid', fixed(3, 5), 'canada', 'In 5 squares no mortar touched', 95],
  // 2 walls with 4 rows each, 2 of 8 missed.
  ['hold-points/rows-to-photograph', fixed(4, 2, 2), 'canada', '2 walls have 4 rows', 75],
  // (18 − 15) ÷ 15, limit of NBC 2020 9.20.4.1.
  ['reading/how-far-off', fixed(0), 'canada', 'A bed reads 18 mm, the limit is 15 mm', 20],
] as const)('%s', (id, chance, rules, prompt, answer) => {
  test(`${prompt}: ${answer}`, () => {
    const question = ask(id, chance, rules);
    expect(question.prompt).toContain(prompt);
    expect(question.kind).toBe('number');
    expect(Number(question.answer)).toBeCloseTo(answer, 3);
    expect(checkAnswer(question, answer).right).toBe(true);
  });
});

describe('a wrong answer is explained from the mistake', () => {
  test.each([
    ['joints/mean-head-joint', fixed(5, 2, 12), 9.6, 'one joint for each brick'],
    ['line/height-of-courses', fixed(10, 1, 0), 740, 'You forgot a joint'],
    ['bond/cut-piece', fixed(2, 0, 0), 107.5, 'You left out the joint'],
    ['support/most-overhang', fixed(4), 30, 'wrong rule set'],
    ['openings/lintel-length', fixed(3), 1590, 'one end only'],
    ['openings/lintel-length', fixed(3), 1800, 'wrong rule set'],
    ['ties/area-each', fixed(1, 3), 0.36, 'only the spacing across'],
    ['ties/fewest', fixed(1, 6, 0), 38, 'You rounded down'],
    ['bond/cut-piece', fixed(2, 0, 0), 4.04, 'in inches. This asks for millimetres'],
    ['mortar/sand-ratio', fixed(1, 12), 6, 'You left out the lime'],
  ] as const)('%s %#', (id, chance, given, told) => {
    const verdict = checkAnswer(ask(id, chance), given);
    expect(verdict.right).toBe(false);
    expect(verdict.explanation).toContain(told);
  });

  test('millimetres for inches', () => {
    const question = ask('bond/cut-piece', fixed(2, 0, 0), 'united-states', 'inches');
    expect(question.prompt).toContain('Bricks are 8 1/2 in long, head joints 3/8 in');
    expect(checkAnswer(question, 4.0625).right).toBe(true);
    expect(checkAnswer(question, 103.2).explanation).toContain('in millimetres. This asks for inches');
  });

  test('both most spacings at once fail in the United States: 24 in by 32 in is 5.33 sq ft, 2.67 is allowed (IRC 2021 R703.8.4)', () => {
    const asked = Array.from({ length: 60 }, (_, seed) =>
      ask('ties/spacings-pass', chanceOf(seed, 1), 'united-states', 'inches'),
    );
    const both = asked.flatMap((question) => {
      if (question.kind !== 'pick') return [];
      return question.options
        .filter(({ text }) => text === '24 in up, 32 in across')
        .map(({ id, why }) => ({ passes: question.answer.includes(id), why }));
    });
    expect(both.length).toBeGreaterThan(5);
    expect(both.filter(({ passes }) => passes)).toEqual([]);
    expect(both[0]?.why).toBe('Each tie holds 5.33 sq ft. At that width the spacing up is too much.');
  });
});

// By hand: 16 × 24 in are 1 1/3 × 2 ft. 24 × 32 in would be 5.33 sq ft, twice what the IRC lets a tie hold.
test('in inches a tie holds square feet', () => {
  const question = ask('ties/area-each', fixed(1, 1), 'united-states', 'inches');
  expect(question.prompt).toContain('16 in apart up the wall and 24 in across');
  expect(question).toMatchObject({ unit: 'sq ft', answer: expect.closeTo(2.6667, 4) });
});

test('the angle that serves is not always the one with the largest leg', () => {
  const largest = Array.from({ length: 200 }, (_, seed) => {
    const question = ask('openings/which-angle', chanceOf(seed, 3));
    if (question.kind !== 'choose') return false;
    const legs = question.options.map(({ text }) => Number.parseFloat(text));
    return legs[question.options.findIndex(({ id }) => id === question.answer)] === Math.max(...legs);
  }).filter((is) => is).length;
  expect(largest).toBeGreaterThan(20);
  expect(largest).toBeLessThan(140);
});

test('the source says where the figure is from, and when the rules in use are silent', () => {
  expect(ask('openings/lintel-length', fixed(3), 'ontario').source).toBe(
    'Ontario Building Code 2024, Division B, Section 9.20: 9.20.5.2. Kind: code minimum.',
  );
  expect(ask('ties/embedment-limit', fixed(2, 1), 'canada').source).toContain(
    'Canada (NBC 2020) is silent here, so good practice is used.',
  );
});

test.each([
  ['67.8', 67.8],
  ['67,8 mm', 67.8],
  ['2 3/4', 2.75],
  ['2-3/4 in', 2.75],
  ['3/8"', 0.375],
  ['-4', -4],
  ['', undefined],
  ['ten', undefined],
  ['1/0', undefined],
  ['1.2.3', undefined],
  ['.5', 0.5],
  ['5.', 5],
  ['2½', 2.5],
  ['−3/4', -0.75],
  ['0,125', 0.125],
  ['1,219', undefined],
  ['12,500 mm', undefined],
  ['1e3', undefined],
])('%j is read as %j', (text, value) => {
  expect(parseNumber(text)).toBe(value);
});

// By hand: 25.4 mm an inch, 12 inches a foot.
test.each([
  ['2 1/2 in', 'mm', 63.5],
  ['10"', 'mm', 254],
  ["1' 6 1/2", 'in', 18.5],
  ['6 ft', 'in', 72],
  ['6 ft 3 in', 'mm', 1905],
  ['127 mm', 'in', 5],
  ['7', 'mm', 7],
  ['7', 'in', 7],
  ['30 ties', 'ties', 30],
  ['95%', '%', 95],
  ['5 mm', '%', undefined],
  ['3 J', 'mm', undefined],
  ['ft', 'in', undefined],
  ['', 'mm', undefined],
])('%j, asked in %s, is read as %j', (text, unit, value) => {
  const read = parseNumber(text, unit);
  expect(read === undefined ? undefined : Number(read.toFixed(9))).toBe(value);
});
