import { describe, expect, test } from 'vitest';
import { groupScale, SOUND_WALL } from '../../../lib/classes/statistics/abilities';
import { confusionOf, swapsOf, swapWords } from '../../../lib/classes/statistics/confusion';
import { familyRates } from '../../../lib/classes/statistics/family-rates';
import { heatOf } from '../../../lib/classes/statistics/heat-map';
import { analyseTest } from '../../../lib/classes/statistics/item-analysis';
import { figuresOf } from '../../../lib/classes/statistics/learner-figures';
import { scoreError } from '../../../lib/classes/statistics/score-error';
import { testTable } from '../../../lib/classes/statistics/test-items';
import { answer, falseMark, fault } from './statistics-answers';

describe('fault there against fault named', () => {
  const answers = [
    answer({ faults: [fault('thin-joint>open-head'), fault('open-head>open-head')] }),
    answer({
      faults: [fault('thin-joint>open-head'), fault('open-head>')],
      falseMarks: [falseMark('thin-tie')],
    }),
    answer({ faults: [fault('open-head>thin-joint')], falseMarks: [falseMark('thin-tie')] }),
  ];

  test('every fault lands in one cell of its row', () => {
    const { rows, nothingThere } = confusionOf(answers);
    expect(rows).toEqual([
      {
        fault: 'open-head',
        met: 3,
        named: new Map([
          ['open-head', 1],
          ['thin-joint', 1],
        ]),
        notFound: 1,
      },
      { fault: 'thin-joint', met: 2, named: new Map([['open-head', 2]]), notFound: 0 },
    ]);
    expect(nothingThere).toEqual(new Map([['thin-tie', 2]]));
  });

  test('the commonest swap comes first, in words', () => {
    const swaps = swapsOf(confusionOf(answers), 1);
    expect(swaps).toEqual([{ fault: 'thin-joint', saidToBe: 'open-head', times: 2, met: 2 }]);
    expect(swaps.map((swap) => swapWords(swap, (name) => name.replace('-', ' ')))).toEqual([
      '“thin joint” was called “open head” 2 times. It was met 2 times.',
    ]);
  });
});

describe('rates of a fault', () => {
  // 8 of 10 found: Wilson .490 to .943 (E. B. Wilson 1927, worked by hand).
  test('found of met with 95 % limits', () => {
    const answers = Array.from({ length: 10 }, (_, i) =>
      answer({ faults: [fault(i < 8 ? 'open-head>open-head' : 'open-head>')] }),
    );
    const [rates] = familyRates(answers);
    expect(rates).toMatchObject({
      fault: 'open-head',
      met: 10,
      found: 8,
      named: 8,
      wallsWithout: 0,
      falseAlarm: null,
    });
    expect(rates?.hit?.low).toBeCloseTo(0.49, 3);
    expect(rates?.hit?.high).toBeCloseTo(0.943, 3);
  });

  test('a wall with two false marks of one name is one false alarm, and a wall that has the fault is none', () => {
    const answers = [
      answer({ falseMarks: [falseMark('open-head'), falseMark('open-head')] }),
      answer(),
      answer({ faults: [fault('open-head>')], falseMarks: [falseMark('open-head')] }),
    ];
    expect(familyRates(answers)).toMatchObject([
      { wallsWithout: 2, wallsFalse: 1, falseAlarm: { share: 0.5 } },
    ]);
  });
});

test('a learner who marks a part twice is one learner there', () => {
  const marks = [
    { learner: 'ann', part: 'A1.1', fault: 'proud-unit' },
    { learner: 'ann', part: 'A1.1', fault: 'twisted-unit' },
    { learner: 'bo', part: 'A1.1', fault: 'proud-unit' },
    { learner: 'bo', part: 'A2.3', fault: 'proud-unit' },
  ];
  expect(heatOf(marks, 4)).toEqual([
    {
      part: 'A1.1',
      learners: 2,
      share: 0.5,
      names: [
        ['proud-unit', 2],
        ['twisted-unit', 1],
      ],
    },
    { part: 'A2.3', learners: 1, share: 0.25, names: [['proud-unit', 1]] },
  ]);
});

describe('standard error of a score', () => {
  // By hand: middle (8+1)/12 = 3/4, and 3/4 · 1/4 over 9 walls; 4/5, and 4/25 over 2; nothing known: one half.
  test.each([
    [0.8, 10, Math.sqrt(3 / 144)],
    [1, 3, Math.sqrt(4 / 50)],
    [0, 3, Math.sqrt(4 / 50)],
    [0.5, 0, 1 / 2],
  ])('%f over %i walls', (score, walls, expected) => {
    expect(scoreError(score, walls)).toBeCloseTo(expected, 12);
  });

  // An instructor worked these out by hand from the walls of twelve hand-ins: two walls right of three, standard error 33.3; six walls
  // with a mean of 39.6 %, 19.4.
  test.each([
    [2 / 3, 3, 1 / 3],
    [0.396, 6, 0.194],
  ])('%f over %i walls is never told as less than it is', (score, walls, worked) => {
    expect(scoreError(score, walls)).toBeGreaterThanOrEqual(worked);
  });

  test('more walls, less error', () => {
    expect(scoreError(0.7, 40)).toBeLessThan(scoreError(0.7, 10) / 1.8);
  });
});

describe('figures of a learner', () => {
  test('certain and wrong: the wrong name and the false mark, not the unsure ones', () => {
    const figures = figuresOf([
      answer({ place: 3, faults: [fault('thin-joint>open-head', 3), fault('no-lintel>no-lintel', 3)] }),
      answer({ place: 4, falseMarks: [falseMark('thin-tie', 3), falseMark('shallow-tie', 1)] }),
    ]);
    expect(figures.certainButWrong).toEqual([
      { learner: 'ann', work: 'w1', place: 3, said: 'open-head', truth: 'thin-joint' },
      { learner: 'ann', work: 'w1', place: 4, said: 'thin-tie', truth: null },
    ]);
    expect(figures.falseMarks).toBe(2);
    expect(figures.calibration?.levels.map(({ answers, right }) => [answers, right])).toEqual([
      [1, 0],
      [0, 0],
      [3, 1],
    ]);
  });

  test('a step that was never asked is null, not nought', () => {
    const { steps } = figuresOf([
      answer({ steps: { found: { got: 1, of: 2 }, measured: { got: 0, of: 0 } } }),
      answer({ steps: { found: { got: 2, of: 2 } } }),
    ]);
    expect(steps.found).toEqual({ got: 3, of: 4 });
    expect(steps.measured).toBe(null);
  });

  // 82 hits, 18 misses, 46 false alarms, 54 right: d' 1.002793, manual of the open package statpsych.
  test('sound or faulty', () => {
    const many = (count: number, faulty: boolean, saysSound: boolean) =>
      Array.from({ length: count }, () => answer({ faults: faulty ? [fault('open-head>')] : [], saysSound }));
    const figures = figuresOf([
      ...many(82, true, false),
      ...many(18, true, true),
      ...many(46, false, false),
      ...many(54, false, true),
    ]);
    expect(figures.soundOrFaulty?.dPrime).toBeCloseTo(1.002793, 6);
    // By hand: agreement .68, chance .5 (columns 100 and 100), so (.68 - .5) / .5.
    expect(figures.kappa).toBeCloseTo(0.36, 9);
  });

  test('walls that were not answered are in no verdict, and count in the mean score', () => {
    const said = [
      answer({ faults: [fault('open-head>open-head')], saysSound: false, score: 1 }),
      answer({ score: 1 }),
    ];
    const unanswered = { answered: false, saysSound: false, score: 0 };
    const figures = figuresOf([
      ...said,
      answer(unanswered),
      answer({ ...unanswered, faults: [fault('open-head>')] }),
    ]);
    expect(figures.verdicts).toEqual({ hits: 1, misses: 0, falseAlarms: 0, soundCalls: 1 });
    expect(figures.soundOrFaulty).toEqual(figuresOf(said).soundOrFaulty);
    expect(figures.kappa).toBe(1);
    expect(figures.score).toBe(0.5);
  });

  test('no walls, no figures', () => {
    expect(figuresOf([])).toMatchObject({
      walls: 0,
      score: null,
      kappa: null,
      soundOrFaulty: null,
      calibration: null,
    });
  });
});

describe('a set work as a test', () => {
  const both = (learner: string, first: string, sound: boolean) => [
    answer({ learner, place: 1, faults: [fault(first)] }),
    answer({ learner, place: 2, code: 'BBB-BBBB-BBB', falseMarks: sound ? [] : [falseMark('thin-tie')] }),
  ];

  test('same walls: a fault is an item, and so is leaving a sound wall alone', () => {
    const table = testTable(
      [...both('ann', 'open-head>open-head', true), ...both('bo', 'open-head>thin-joint', false)],
      true,
    );
    expect(table.items).toEqual([
      { place: 1, index: 0, fault: 'open-head', sound: false },
      { place: 2, index: null, fault: null, sound: true },
    ]);
    expect(table.scores).toEqual([
      [1, 1],
      [0, 0],
    ]);
    expect(analyseTest(table.scores).alpha).toBe(1);
  });

  test('a sound wall that was not answered is not one left alone', () => {
    const left = [answer({ learner: 'ann' }), answer({ learner: 'bo', answered: false, saysSound: false })];
    expect(testTable(left, true).scores).toEqual([[1], [0]]);
    expect(groupScale(left).difficulties).toMatchObject([{ question: SOUND_WALL, answers: 1 }]);
    const [rates] = familyRates([...left, answer({ falseMarks: [falseMark('thin-tie')] })]);
    expect(rates).toMatchObject({ wallsWithout: 2, wallsFalse: 1 });
  });

  test('walls of their own: an item is a wall with its score', () => {
    const table = testTable(
      [
        answer({ score: 0.5 }),
        answer({ place: 2, score: 0.25 }),
        answer({ learner: 'bo', code: 'CCC-CCCC-CCC' }),
      ],
      false,
    );
    expect(table).toMatchObject({ learners: ['ann'], scores: [[0.5, 0.25]], leftOut: 1 });
  });

  test('same walls: one who had another wall is left out and counted', () => {
    const table = testTable([answer(), answer({ learner: 'bo', code: 'CCC-CCCC-CCC' })], true);
    expect(table).toMatchObject({ learners: ['ann'], leftOut: 1 });
  });
});

describe('one scale for a group', () => {
  const learner = (name: string, right: number, of: number) => [
    ...Array.from({ length: of }, (_, i) =>
      answer({ learner: name, faults: [fault(i < right ? 'open-head>open-head' : 'open-head>')] }),
    ),
    answer({ learner: name, falseMarks: name === 'cy' ? [falseMark('thin-tie')] : [] }),
  ];
  const scale = groupScale([...learner('ann', 9, 10), ...learner('bo', 5, 10), ...learner('cy', 1, 10)]);

  test('who finds more stands higher, and the errors are stated', () => {
    const [ann, bo, cy] = ['ann', 'bo', 'cy'].map((name) => scale.abilityOf(name));
    expect(ann?.ability).toBeGreaterThan((bo?.ability ?? 0) + 0.5);
    expect(bo?.ability).toBeGreaterThan((cy?.ability ?? 0) + 0.5);
    expect(bo?.standardError).toBeGreaterThan(0.4);
    expect(bo?.standardError).toBeLessThan(0.7);
  });

  test('answers are counted by question', () => {
    expect(scale.difficulties.map(({ question, answers }) => [question, answers])).toEqual([
      ['open-head', 30],
      [SOUND_WALL, 3],
    ]);
  });

  test('a learner with no answers is at the prior', () => {
    expect(scale.abilityOf('dee')).toEqual({ ability: 0, standardError: 1 });
  });
});
