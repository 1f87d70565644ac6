import { inches } from '../../units';
import type { Bound } from '../limit';

/** What all rows of good practice share. */
export const PRACTICE = { rules: 'good-practice', kind: 'good practice', howSure: 'read' } as const;
export const SECOND_HAND = { ...PRACTICE, howSure: 'second-hand' } as const;

export const BEALL = {
  ...SECOND_HAND,
  source: 'beall-2004',
  edition: 'Beall, Masonry and Concrete',
} as const;
export const NEW_ZEALAND = { ...SECOND_HAND, source: 'nzs-4210', edition: 'NZS 4210:2001' } as const;
export const TILE = { ...SECOND_HAND, source: 'ansi-a108-5', edition: 'ANSI A108.5' } as const;
export const TILE_ARTICLES = {
  ...SECOND_HAND,
  source: 'ansi-a108-articles',
  edition: 'Articles on ANSI A108.5',
} as const;
export const BIA_28B = {
  ...PRACTICE,
  source: 'bia-28b',
  edition: 'BIA Technical Note 28B, December 2005',
} as const;

/** Figures that no source gives: chosen by us, so that a fault can be told from sound work in training. */
export const OURS = {
  ...PRACTICE,
  source: 'training-default',
  edition: 'This site',
  howSure: 'common practice',
  note: 'Our own training default. No code or standard that we read gives a figure.',
} as const;

/** Level, plumb and line as a yardstick. */
export const TMS = {
  ...SECOND_HAND,
  kind: 'standard tolerance',
  source: 'tms-602',
  edition: 'TMS 602-13 and -16',
  note: 'A yardstick only: these tolerances are for structural masonry and do not bind veneer (IBC 1404.6.1 says so).',
} as const;
export const TEN_FEET = { run: inches(0, 10), value: inches(1 / 4) };
export const LEVEL: Bound = { form: 'any-run', runs: [TEN_FEET], overall: inches(1 / 2) };
