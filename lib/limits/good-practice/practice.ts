import { inches } from '../../units';
import type { Bound } from '../limit';

/** What all rows of good practice share. */
export const PRACTICE = { rules: 'good-practice', kind: 'good practice', howSure: 'read' } as const;

/** Figures that no source gives: chosen by us, so that a fault can be told from sound work in training. */
export const OURS = {
  ...PRACTICE,
  source: 'training-default',
  edition: 'This site',
  clause: 'training default',
  howSure: 'common practice',
  note: 'Our own training default. No code or standard that we read gives a figure.',
} as const;

/** Level, plumb and line as a yardstick. */
export const TMS = {
  ...PRACTICE,
  kind: 'standard tolerance',
  topic: 'line',
  source: 'tms-602',
  edition: 'TMS 602-13 and -16',
  clause: 'Article 3.3 F',
  howSure: 'second-hand',
  note: 'A yardstick only: these tolerances are for structural masonry and do not bind veneer (IBC 1404.6.1 says so).',
} as const;
export const TEN_FEET = { run: inches(0, 10), value: inches(1 / 4) };
export const LEVEL: Bound = { form: 'any-run', runs: [TEN_FEET], overall: inches(1 / 2) };
