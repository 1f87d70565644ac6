import type { FalseMark, FaultAnswer, WallAnswer } from '../../../lib/classes/statistics/wall-answer';

/** 'open-head>thin-joint': there, and what it was called; 'open-head>' when missed. Fairly sure unless said. */
export function fault(text: string, sure: 1 | 2 | 3 = 2): FaultAnswer {
  const [truth = '', named = ''] = text.split('>');
  const found = named !== '';
  return {
    fault: truth,
    hazard: truth === 'no-lintel' ? 'could fall' : 'looks',
    found,
    named: found ? named : null,
    sure: found ? sure : null,
  };
}

export function falseMark(name: string, sure: 1 | 2 | 3 = 2): FalseMark {
  return { fault: name, part: 'A1.1', sure };
}

export function answer(given: Partial<WallAnswer> = {}): WallAnswer {
  const faults = given.faults ?? [];
  const falseMarks = given.falseMarks ?? [];
  return {
    learner: 'ann',
    work: 'w1',
    place: 1,
    code: 'AAA-AAAA-AAA',
    score: 1,
    saysSound: faults.every(({ found }) => !found) && falseMarks.length === 0,
    answered: true,
    steps: {},
    ...given,
    faults,
    falseMarks,
  };
}
