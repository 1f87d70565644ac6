/** Things that look wrong and are right. */
export const LOOK_ALIKES = [
  'textured-units',
  'projecting-pattern',
  'weep-openings',
  'closers-at-reveal',
  'thick-first-bed',
  'overhang-within-a-third',
  'hairline-cracks',
  'efflorescence',
  'chipped-corners',
  'mortar-smears',
  'handmade-size-range',
  'hidden-angle',
  'raked-on-thick-veneer',
  'hot-day-mortar',
] as const;
export type LookAlike = (typeof LOOK_ALIKES)[number];
