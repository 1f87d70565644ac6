import type { ExplainedFinding } from '../../../lib/drills/explained-finding';

/** A unit 9 mm proud where 3 mm are allowed: invented, for the tests of the ways to practise. */
export const PROUD: ExplainedFinding = {
  number: 1,
  finding: {
    check: 'proud-unit',
    parts: ['A3.2'],
    region: { panel: 'A', x: 200, y: 140, width: 190, height: 57 },
    measured: 9,
    unit: 'mm',
    limit: 3,
    margin: -6,
    kind: 'good practice',
    hazard: 'looks',
    source: {
      limit: 'unit-set',
      rules: 'good-practice',
      title: 'A book',
      edition: '2020',
      clause: '3.1',
      howSure: 'read',
    },
  },
  name: 'Unit proud or set back',
  place: 'Course 3, unit 2',
  looksLike: 'It stands out.',
  measuredBy: 'With a straightedge.',
  whyItMatters: 'It throws a shadow.',
  rightAct: 'put right now',
  putsRight: 'The mason sets it again.',
  source: 'Good practice · A book · 3.1 · read',
};
