import { type Row, row } from './row';

const MASON = 'ask the mason';
const HARMLESS = 'harmless';

/** What does not fall by itself: for the mason, and what is harmless as a rule. Source: common practice. */
export const ROWS_ELSE: readonly Row[] = [
  row('event', 'yes', MASON, {
    saw: 'The wall has been through a storm, a frost, a fire, a knock or an earthquake.',
    ask: 'Ask someone who knows walls to walk round it once.',
  }),
  row(
    'crack',
    'yes',
    MASON,
    {
      saw: 'There is a crack that is wider than a hair.',
      maybe: ['A crack from drying, or a straight joint filled with something like rubber.'],
      ask: 'Photograph it with a ruler, from the same spot each month. If it grows or steps out, call an engineer.',
    },
    { 'crack-width': ['within'] },
  ),
  row('rows', 'yes', MASON, {
    saw: 'Rows of bricks run uphill or wavy.',
    maybe: [
      'Old bricks made by hand, which are all a little different.',
      'Ground that slopes and fools the eye.',
    ],
    ask: 'Ask how level the rows are, measured. In an old wall, ask whether that is new.',
  }),
  row('open-joints', 'yes', MASON, {
    saw: 'Mortar is missing or crumbling between bricks.',
    maybe: [
      'Small slots in a line, all the same way apart. They let water out.',
      'Old lime mortar, which is soft and pale but whole.',
    ],
    ask: 'Ask how deep it is gone, and what mortar suits these bricks. Hard mortar can spoil soft old bricks.',
  }),
  row('joint-width', 'beyond', MASON, {
    saw: 'An upright joint is wide.',
    maybe: ['A joint in an arch, which is wider at one end.', 'A joint made wide to meet a window.'],
    ask: 'Ask how wide the joints were to be, and show the widest.',
  }),
  row('flaking', 'yes', MASON, {
    saw: 'The faces of bricks flake or crumble.',
    maybe: ['Bricks that were made to look old. Then all their edges are rounded alike.'],
    ask: 'Ask where the water comes from. Do not paint or seal the bricks, and do not pull at the flakes.',
  }),
  row('stain', 'yes', MASON, {
    saw: 'There are streaks, green patches, or parts that stay wet.',
    maybe: ['Dirt washed down from a sill.', 'A leaking gutter or pipe.'],
    ask: 'Follow the stain up to where it starts, and show it. Brown can be rust from steel in the wall.',
  }),
  row('slots', 'no', MASON, {
    saw: 'You saw no slots above the base that let water out.',
    maybe: ['Tubes, wicks or small grilles in place of slots.', 'A solid old wall, which never had any.'],
    ask: 'Ask where the water behind the bricks gets out.',
  }),
  row('slots-shut', 'yes', MASON, {
    saw: 'Slots that let water out are shut or buried.',
    ask: 'Ask to have them opened. Do not seal any.',
  }),
  row('slot-spacing', 'beyond', MASON, {
    saw: 'The slots are far apart.',
    maybe: ['A slot between them that is hidden or filled with a small grille.'],
    ask: 'Ask how far apart they were to be.',
  }),
  row('soil', 'yes', MASON, {
    saw: 'Soil, paving or a deck reaches up to the bricks or the slots.',
    ask: 'Ask how low the ground has to be, and take away loose soil and leaves.',
  }),
  row('clearance', 'beyond', MASON, {
    saw: 'The slots are close to the ground.',
    maybe: ['A place with a drain in front of the wall.'],
    ask: 'Ask how water is kept from the foot of the wall.',
  }),
  row('chimney-joints', 'yes', MASON, {
    saw: 'Mortar is missing between the bricks of the chimney.',
    ask: 'Ask for photographs from a proper scaffold, taken by someone who works there.',
  }),
  row('sticking', 'yes', MASON, {
    saw: 'Doors or windows have begun to stick.',
    maybe: ['Wood that swells in damp weather. New paint.'],
    ask: 'Note which ones, and since when. Look for cracks near them.',
  }),
  row('inside-damp', 'yes', MASON, {
    saw: 'There are damp patches inside.',
    maybe: ['Wet air from a bath or a kitchen. A leaking pipe.'],
    ask: 'Ask how water that gets behind the bricks is led out again.',
  }),
  row('proof', ['no', 'do not know', 'cannot see'], MASON, {
    saw: 'You have no photographs of the ties.',
    ask: 'Ask for dated photographs with a tape in them, the make and spacing of the ties, and who checked them.',
  }),
  row('bloom', 'yes', HARMLESS, {
    saw: 'There is a white powder on the bricks.',
    maybe: ['If it comes back year after year: water that gets in somewhere.'],
    ask: 'Brush it off when it is dry. Use no acid and no pressure washer.',
  }),
  row('hairs', 'yes', HARMLESS, {
    saw: 'There are cracks as fine as a hair.',
    maybe: ['The start of a longer crack. Then it grows.'],
    ask: 'Photograph them once with a coin beside them. One that grows or steps out goes to an engineer.',
  }),
  row('chips', 'yes', HARMLESS, {
    saw: 'There are chips, smears or other shades.',
    maybe: ['A smear can hide a joint that is not full.'],
    ask: 'Look from well back. What you cannot see from there is only looks.',
  }),
  row('slots', 'yes', HARMLESS, {
    saw: 'There are small open slots above the base.',
    ask: 'They are meant to be there. Leave them open and clear.',
  }),
];
