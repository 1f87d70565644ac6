/** Said before anything else to a person whose wall is finished. */
export const FIRST_WORDS =
  'A wall can look perfect and still lack its ties. Ties are the metal straps that hold the bricks to the house, and a finished wall hides them. So look, but ask for proof as well.';

/** Before the look round begins. Source: content/safety.mdx. */
export const SAFETY_FIRST: readonly string[] = [
  'Do not touch the wall until you have looked at it from far off. Never pull, push or hit it.',
  'Keep children and animals away from it while you look. Have somebody watch them.',
  'Let nobody stand under it. Do not stand under it yourself to look up.',
  'Stay on the ground. Use no ladder and no scaffold.',
  'If something leans, hangs, moves or has fallen: stop looking, go away and keep others away.',
];

/** Whom to call. No numbers of ours: they differ from place to place. */
export const WHOM: readonly (readonly [
  call: 'emergency' | 'engineer' | 'mason',
  who: string,
  when: string,
])[] = [
  ['emergency', 'Emergency number of your country', 'Someone is hurt, or it hangs over a street or a path.'],
  ['engineer', 'A licensed engineer', 'Anything that leans, hangs, sags, moves or has stepped out.'],
  ['mason', 'The mason or the builder', 'Anything else that you want to have explained.'],
];

/** What not to do to a wall, ever. Source: trade brief, section 4.5. */
export const DO_NOT: readonly string[] = [
  'Do not seal or fill the small slots at the base.',
  'Do not paint or coat wet bricks.',
  'Do not use a pressure washer or strong acid.',
  'Do not pile soil or bark against the wall.',
  'Do not patch old soft bricks with hard mortar.',
  'Do not hang heavy things on the bricks.',
  'Do not pay in full before you have the photographs.',
];
