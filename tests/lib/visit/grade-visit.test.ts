import { describe, expect, test } from 'vitest';
import type { Weighed } from '../../../lib/failing/causes/causes';
import { parseBrief } from '../../../lib/generate/brief';
import { neededToday, wrongOrders } from '../../../lib/visit/acts';
import { tellsApart } from '../../../lib/visit/further-readings';
import { gradeVisit, pointsLost, type Visited } from '../../../lib/visit/grade-visit';
import { judgeCause } from '../../../lib/visit/judge-cause';
import { type OpenVisit, openVisit } from '../../../lib/visit/open-visit';
import { reportOf } from '../../../lib/visit/report';
import { calledWall } from '../../../lib/visit/visit-wall';

function opened(topic: string, seed: number, wanted: (visit: OpenVisit) => boolean): OpenVisit {
  for (let at = seed; at < seed + 400; at += 7) {
    const visit = openVisit(
      calledWall(parseBrief({ topic, kind: 'plain-panel', difficulty: 1, rules: 'canada', seed: at })),
    );
    if (wanted(visit)) return visit;
  }
  throw new RangeError(`no such visit from ${seed} on`);
}

/** Some units are gone and others may come down. */
const PEELING = opened(
  'back-mortar',
  9000,
  ({ failing, risk }) => failing.state.missing.size > 0 && risk.loose.size > 0,
);
/** Nothing may come down, and two causes are allowed. */
const SETTLED = opened(
  'line',
  1,
  ({ risk, causes }) => risk.loose.size === 0 && causes.filter(({ inK }) => inK).length === 2,
);

/** Everything as it should be, read off what is measured. */
function perfect(visit: OpenVisit): Visited {
  const allowed = visit.causes.filter(({ inK }) => inK);
  const [cause] = allowed;
  return {
    street: ['keep-away', 'warn', 'look', 'go-near'],
    touched: [],
    marks: visit.shown.flatMap(({ condition, parts: [part] }) => (part ? [{ condition, part }] : [])),
    next: visit.risk.next[0] ?? null,
    cause:
      allowed.length === 1 && cause
        ? { cause: cause.cause, signs: cause.needs.map(({ sign }) => sign) }
        : { cause: null, reading: 'gauge-for-a-year' },
    today: ['closed', 'owner', 'engineer', 'authority', 'file'],
  };
}

describe('a visit', () => {
  test.each([
    ['with units that may come down', PEELING],
    ['with nothing loose and two causes', SETTLED],
  ])('%s loses no point when it is done as it should be', (_, visit) => {
    expect(pointsLost(gradeVisit(perfect(visit), visit))).toBe(0);
  });

  test('going up to the wall before the ground is closed costs more than a fault that was missed', () => {
    const done = perfect(PEELING);
    const early = gradeVisit({ ...done, street: ['go-near', 'keep-away', 'look'] }, PEELING);
    // Two orders at three points each: it was neither closed nor looked over before.
    expect(pointsLost(early)).toBe(6);
    expect(early.orders).toEqual([
      ['keep-away', 'go-near'],
      ['look', 'go-near'],
    ]);
    const blind = gradeVisit({ ...done, marks: done.marks.slice(1) }, PEELING);
    expect(pointsLost(blind)).toBe(1);
  });

  test('never closing the ground costs three, whether one goes near or not', () => {
    expect(pointsLost(gradeVisit({ ...perfect(SETTLED), street: ['warn', 'look'] }, SETTLED))).toBe(3);
    expect(pointsLost(gradeVisit({ ...perfect(SETTLED), street: ['look', 'go-near'] }, SETTLED))).toBe(3);
  });

  test('a fingertip on what may come down costs three; on what is firm, nothing', () => {
    const [loose] = PEELING.risk.loose;
    const firm = PEELING.laid.wall.units.find(({ id }) => !PEELING.risk.untouchable.has(id));
    if (loose === undefined || firm === undefined) throw new RangeError('no loose unit, or no firm one');
    expect(pointsLost(gradeVisit({ ...perfect(PEELING), touched: [firm.id] }, PEELING))).toBe(0);
    expect(pointsLost(gradeVisit({ ...perfect(PEELING), touched: [loose, firm.id] }, PEELING))).toBe(3);
  });

  test('caution is never wrong: a sound unit called loose, ground closed where nothing hangs, everybody told', () => {
    const [unit] = SETTLED.laid.wall.units;
    if (unit === undefined) throw new RangeError('a wall without units');
    const done = perfect(SETTLED);
    const careful = {
      ...done,
      next: unit.id,
      marks: [...done.marks, { condition: 'loose' as const, part: unit.id }],
    };
    expect(pointsLost(gradeVisit(careful, SETTLED))).toBe(0);
  });

  test('a unit that stands there and is marked as missing is a false mark', () => {
    const [unit] = SETTLED.laid.wall.units;
    if (unit === undefined) throw new RangeError('a wall without units');
    const done = perfect(SETTLED);
    const marks = [...done.marks, { condition: 'missing' as const, part: unit.id }];
    expect(gradeVisit({ ...done, marks }, SETTLED).falseMarks).toEqual([
      { condition: 'missing', part: unit.id },
    ]);
  });

  test('where something may come down, any of those held alike is right as the next, and no other unit', () => {
    for (const next of PEELING.risk.next)
      expect(gradeVisit({ ...perfect(PEELING), next }, PEELING).isNextRight).toBe(true);
    const held = PEELING.risk.margins.find(({ margin }) => margin > 100);
    if (held === undefined) throw new RangeError('no unit is held well');
    expect(gradeVisit({ ...perfect(PEELING), next: held.part }, PEELING).isNextRight).toBe(false);
    expect(gradeVisit({ ...perfect(PEELING), next: null }, PEELING).isNextRight).toBe(false);
  });

  test('what nobody does costs three each: filling cracks, bedding units back, leaving it', () => {
    const done = perfect(PEELING);
    const today = [...done.today, 'fill', 'fix-back', 'leave'] as const;
    expect(pointsLost(gradeVisit({ ...done, today }, PEELING))).toBe(9);
  });

  test('where something may come down, leaving the ground open costs three and each that was not told two', () => {
    expect(pointsLost(gradeVisit({ ...perfect(PEELING), today: [] }, PEELING))).toBe(3 + 2 + 2 + 2);
  });
});

describe('the order of acts', () => {
  test.each([
    [['keep-away', 'look', 'go-near'], 0],
    [['look', 'keep-away', 'go-near'], 0],
    [['keep-away', 'go-near', 'look'], 1],
    [['go-near'], 2],
    [[], 0],
    [['warn', 'shake'], 0],
  ] as const)('%j has %i wrong', (done, wrong) => {
    expect(wrongOrders(done)).toHaveLength(wrong);
  });

  test.each([
    [{ mayFall: true, hasMoved: false }, ['closed', 'owner', 'engineer', 'authority']],
    [{ mayFall: false, hasMoved: true }, ['owner', 'engineer']],
    [{ mayFall: false, hasMoved: false }, ['owner']],
  ])('a wall that is %j asks for %j today', (wall, acts) => {
    expect(neededToday(wall)).toEqual(acts);
  });
});

const seen = (sign: string, there: boolean) => ({ sign, there });
/** One that the wall allows, one that it rules out, one of which it shows too little. */
const ONE: readonly Weighed[] = [
  {
    cause: 'frost',
    needs: [seen('flakes', true)],
    bars: [seen('bloom', false)],
    fits: [seen('winter', true)],
    inK: true,
  },
  { cause: 'salts', needs: [seen('flakes', true)], bars: [seen('wet', true)], fits: [], inK: false },
  { cause: 'blow', needs: [seen('crushed', false)], bars: [], fits: [], inK: false },
];
const TWO: readonly Weighed[] = [
  ...ONE,
  { cause: 'water-at-cap', needs: [seen('lime', true)], bars: [], fits: [], inK: true },
];

describe('the cause', () => {
  test('the only one that is allowed, with its signs', () => {
    expect(judgeCause({ cause: 'frost', signs: ['flakes', 'winter'] }, ONE)).toEqual({
      kind: 'the cause',
      named: ['flakes', 'winter'],
      unnamed: [],
      notSo: [],
    });
  });

  test('a sign that is not on the wall does not carry it', () => {
    expect(judgeCause({ cause: 'frost', signs: ['bloom'] }, ONE)).toEqual({
      kind: 'the cause',
      named: [],
      unnamed: ['flakes'],
      notSo: ['bloom'],
    });
  });

  test('one that a sign rules out is answered with that sign, one without its need with the need', () => {
    expect(judgeCause({ cause: 'salts', signs: ['flakes'] }, ONE)).toEqual({ kind: 'barred', by: 'wet' });
    expect(judgeCause({ cause: 'blow', signs: [] }, ONE)).toEqual({ kind: 'lacks', need: 'crushed' });
  });

  test('where two are allowed, either goes beyond the evidence, and what tells them apart is right', () => {
    expect(judgeCause({ cause: 'frost', signs: ['flakes'] }, TWO).kind).toBe('one of several');
    expect(judgeCause({ cause: null, reading: 'under-the-cap' }, TWO).kind).toBe('told apart');
    expect(judgeCause({ cause: null, reading: 'rust-at-a-tie' }, TWO).kind).toBe('would not tell');
    expect(judgeCause({ cause: null, reading: null }, TWO).kind).toBe('would not tell');
    expect(judgeCause({ cause: null, reading: 'under-the-cap' }, ONE).kind).toBe('could be told');
  });

  test('a year of a crack gauge tells a drying tree from ground that has gone down; a level does not', () => {
    const both = ['corner-settlement', 'tree-drying'];
    expect(tellsApart('gauge-for-a-year', both)).toBe(true);
    expect(tellsApart('level-of-a-course', both)).toBe(false);
    expect(tellsApart('behind-a-unit', both)).toBe(false);
  });
});

describe('the report', () => {
  const crack = { condition: 'cracked', parts: ['A1.1'], most: 4 } as const;
  const flake = { condition: 'flaked', parts: ['A3.1'], most: 12 } as const;

  test('has one card a finding, the most urgent first; what is on a unit that may come down is urgent', () => {
    const risk = { ...SETTLED.risk, loose: new Set(['A3.1'] as const) };
    const cards = reportOf({ ...SETTLED, risk, shown: [crack, flake] });
    expect(cards.map(({ shown, urgency }) => [shown.condition, urgency])).toEqual([
      ['flaked', 'now'],
      ['cracked', 'soon'],
    ]);
  });

  test('tells a crack of 4 mm in the words of its class of repair: filled, perhaps pointed outside', () => {
    const [card] = reportOf({ ...SETTLED, shown: [crack] });
    expect(card?.act).toContain('filled; perhaps pointed outside');
    expect(card?.hazard).toBe('Its width alone says nothing of the danger.');
  });
});
