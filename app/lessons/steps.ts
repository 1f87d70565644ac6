/** What every lesson goes through, in this order. A lesson's headings are these. */
export const STEPS = [
  'Look first',
  'What good looks like',
  'How it is done right',
  'How it is measured',
  'What is required',
  'What goes wrong',
  'What puts it right',
  'Your turn',
] as const;
