/** Things that look wrong and are right. The ids are those of lib/generate, written again because lib/inspect must not know it; a test compares. */
export const LOOK_ALIKE_IDS = [
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
export type LookAlikeId = (typeof LOOK_ALIKE_IDS)[number];

/** Plain words, no figures. Source: common practice of the trade, in our own words. */
export interface LookAlikeText {
  readonly name: string;
  /** What it may be taken for. */
  readonly looksWrong: string;
  /** Why it is right, and how you can tell. */
  readonly isRight: string;
}

export const LOOK_ALIKE_TEXTS: Readonly<Record<LookAlikeId, LookAlikeText>> = {
  'textured-units': {
    name: 'Rough-faced units',
    looksWrong: 'The uneven faces look like bulges, twisted units or units set proud.',
    isRight: 'The faces are meant to be rough. The edges and the joints between them run straight.',
  },
  'projecting-pattern': {
    name: 'Pattern of proud units',
    looksWrong: 'The units that stand out look as if they were laid off the line.',
    isRight: 'The drawing asks for them. They come back by a rule, and all stand out alike.',
  },
  'weep-openings': {
    name: 'Weeps',
    looksWrong: 'The open slots look like head joints that were never filled.',
    isRight: 'They lie just above the flashing, at even spaces. They let water out, so they must stay open.',
  },
  'closers-at-reveal': {
    name: 'Closers at an end or an opening',
    looksWrong: 'The short pieces look like slivers.',
    isRight: 'The same piece comes back at the same end every few courses. It keeps the bond.',
  },
  'thick-first-bed': {
    name: 'Thick first bed',
    looksWrong: 'The lowest joint looks too thick.',
    isRight: 'It is the bed on the ledge, and it has a limit of its own. It takes up an uneven ledge.',
  },
  'overhang-within-a-third': {
    name: 'Overhang within its limit',
    looksWrong: 'The bottom course looks as if it hangs too far past its support.',
    isRight: 'The step is even and within the limit. Most of each unit stands on the support.',
  },
  'hairline-cracks': {
    name: 'Hairline cracks',
    looksWrong: 'The fine cracks look as if the wall were moving.',
    isRight:
      'They are hair-thin, short and scattered, and neither side steps out. A crack that grows or runs on is another matter.',
  },
  efflorescence: {
    name: 'White bloom',
    looksWrong: 'The white marks look as if mortar or units were falling apart.',
    isRight: 'It is salt on the surface, and it brushes off. If it keeps coming back, look for water.',
  },
  'chipped-corners': {
    name: 'Chipped corners',
    looksWrong: 'The knocked corners look like wide joints or units that fall apart.',
    isRight:
      'Only the arris is gone, on the way or in laying. The unit is whole and the joint behind it is full.',
  },
  'mortar-smears': {
    name: 'Smears of mortar',
    looksWrong: 'The mortar on the faces looks like joints laid too thick or badly filled.',
    isRight: 'It lies on the face only. The joint under it is as wide as the others.',
  },
  'handmade-size-range': {
    name: 'Handmade units',
    looksWrong: 'The mixed sizes look like uneven joints or perpends that drift.',
    isRight:
      'Each unit differs a little. The joints make up for it, and on the whole the perpends stay plumb.',
  },
  'hidden-angle': {
    name: 'Hidden steel angle',
    looksWrong: 'The opening looks as if it had no lintel, or only a thin one.',
    isRight:
      'The brick reaches past the steel and hides it from the front. The section shows it at its full size.',
  },
  'raked-on-thick-veneer': {
    name: 'Raked joints on deep units',
    looksWrong: 'The joints lie back from the face and look as if they let water in.',
    isRight: 'The units are deep enough for it, as the section shows. All joints lie back alike.',
  },
  'hot-day-mortar': {
    name: 'Mortar on a hot day',
    looksWrong: 'The heat on the ticket makes the mortar look as if it was used too late.',
    isRight: 'Heat shortens the life of mortar, but this batch was laid within the shorter time.',
  },
};
