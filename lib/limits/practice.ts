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
