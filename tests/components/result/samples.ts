import type { Finding } from '../../../lib/inspect/finding';
import type { FindingRow, ResultRows } from '../../../lib/wall-page/result-rows';

const REGION = { panel: 'A', x: 0, y: 0, width: 1, height: 1 };
/** Invented figures and a source that does not exist: for the tests alone. */
const SOURCE = {
  limit: 'lintel-bearing',
  rules: 'ontario',
  title: 'A Code',
  edition: '2001',
  clause: '1.2.3',
  howSure: 'read',
} as const;
const BEARING: Finding = {
  check: 'short-lintel-bearing',
  parts: ['A-lintel1'],
  region: REGION,
  measured: 50.8,
  unit: 'mm',
  limit: 152.4,
  margin: -101.6,
  kind: 'code minimum',
  hazard: 'could fall',
  source: SOURCE,
};
const TEXTS = {
  name: 'Lintel bearing too short',
  looksLike: 'Looks.',
  measuredBy: 'Tape.',
  whyItMatters: 'Matters.',
  putsRight: 'Right.',
  caughtAt: 'Caught.',
};
export const MISSED: FindingRow = {
  number: 1,
  finding: BEARING,
  outcome: 'missed',
  texts: TEXTS,
  place: 'The lintel over the window',
  namedAs: null,
  rulesTitle: 'Ontario',
  standsIn: false,
  answer: {},
  verdicts: { found: false, named: false, measured: 'not given', judged: 'not given', acted: 'not given' },
  within: 1.8,
  rightAct: 'make safe and call',
  certainWrong: false,
  lesson: '/lessons/openings#fault-short-lintel-bearing',
};
export const NONE = { got: 0, of: 0 };
export const TWISTED: FindingRow = {
  ...MISSED,
  number: 2,
  finding: {
    ...BEARING,
    check: 'twisted-unit',
    measured: 8,
    limit: 3,
    margin: -5,
    kind: 'good practice',
    hazard: 'looks',
    source: { ...SOURCE, rules: 'good-practice', howSure: 'common practice' },
  },
  outcome: 'wrong name',
  texts: { ...TEXTS, name: 'Twisted unit' },
  namedAs: 'Sliver',
  rulesTitle: 'Good practice',
  standsIn: true,
};
export const NOTHING: ResultRows = {
  score: 1,
  answered: true,
  capped: null,
  parts: { found: NONE, named: NONE, measured: NONE, judged: NONE, acted: NONE },
  findings: [],
  falseMarks: [],
  left: [],
  tempting: [],
  tightest: null,
  repeats: 0,
  marked: 0,
};
