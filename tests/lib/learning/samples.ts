import fc from 'fast-check';
import type { CheckId } from '../../../lib/inspect/finding';
import { type Attempt, FAULT_OUTCOMES, WALL_WAYS, type WallAttempt } from '../../../lib/learning/attempt';
import { FAMILIES, faultsOf } from '../../../lib/learning/family';

export const START = Date.UTC(2026, 0, 5, 8);
export const DAY = 86_400_000;

/** A wall of ties, read on the day of that number: the fault named was found, missed, or there was none. */
export function tieWall(
  number: number,
  day: number,
  outcome: 'found' | 'missed' | 'sound',
  calls = 0,
): WallAttempt {
  return {
    ...{ version: 1, id: `a${number}`, at: START + day * DAY + number * 1000, zone: 0, spentMs: 60_000 },
    ...{ kind: 'full wall', wall: `w${number}`, topic: 'ties', difficulty: 3, marks: [] },
    faults: outcome === 'sound' ? [] : [fault('shallow-tie', outcome)],
    falseCalls: Array.from({ length: calls }, () => ({ fault: 'thin-tie' as const, sure: 2 as const })),
  };
}

export function fault(
  name: CheckId,
  outcome: (typeof FAULT_OUTCOMES)[number],
): WallAttempt['faults'][number] {
  const isFound = outcome === 'found';
  return {
    fault: name,
    hazard: 'could fall',
    outcome,
    named: isFound ? name : null,
    sure: isFound ? 2 : null,
    readRight: null,
  };
}

const done = {
  version: fc.constant(1 as const),
  id: fc.stringMatching(/^[a-z0-9]{1,6}$/),
  at: fc.integer({ min: 0, max: START * 2 }),
  zone: fc.integer({ min: -720, max: 840 }),
  spentMs: fc.option(fc.integer({ min: 0, max: 3_600_000 })),
};
const check = fc.constantFrom(...FAMILIES.flatMap(faultsOf));
const sure = fc.constantFrom(1 as const, 2 as const, 3 as const);

const wall: fc.Arbitrary<WallAttempt> = fc.record({
  ...done,
  kind: fc.constantFrom(...WALL_WAYS),
  wall: fc.stringMatching(/^[A-Z0-9]{3}$/),
  topic: fc.constantFrom(...FAMILIES, 'mixed' as const),
  difficulty: fc.integer({ min: 1, max: 5 }),
  marks: fc.array(fc.record({ part: fc.constant('A1.1'), fault: check, sure }), { maxLength: 3 }),
  faults: fc.array(
    fc.record({
      fault: check,
      hazard: fc.constantFrom('could fall' as const, 'looks' as const),
      outcome: fc.constantFrom(...FAULT_OUTCOMES),
      named: fc.option(check),
      sure: fc.option(sure),
      readRight: fc.option(fc.boolean()),
    }),
    { maxLength: 3 },
  ),
  falseCalls: fc.array(fc.record({ fault: check, sure: fc.option(sure) }), { maxLength: 2 }),
});

const look: fc.Arbitrary<Attempt> = fc.record({
  ...done,
  kind: fc.constant('quick look' as const),
  rules: fc.constant('canada'),
  round: fc.integer({ min: 0, max: 999_999 }),
  look: fc.constant('face'),
  level: fc.constantFrom(1, 3),
  time: fc.constantFrom<(number | null)[]>(10, 20, 30, null),
  walls: fc.array(fc.record({ code: fc.constant('AAA'), faulty: fc.boolean(), saidFaulty: fc.boolean() }), {
    maxLength: 10,
  }),
});

const questions: fc.Arbitrary<Attempt> = fc.record({
  ...done,
  kind: fc.constant('questions' as const),
  topic: fc.constant('ties'),
  rules: fc.constant('canada'),
  answers: fc.array(fc.record({ family: fc.constant('edge-ties'), right: fc.boolean() }), { maxLength: 4 }),
});

const build: fc.Arbitrary<Attempt> = fc.record({
  ...done,
  kind: fc.constant('build' as const),
  rules: fc.constant('canada'),
  spoiled: fc.array(check, { maxLength: 3 }),
});

export const attempts = fc.array(fc.oneof(wall, look, questions, build), { maxLength: 12 });
