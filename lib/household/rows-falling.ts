import { NOT_SEEN, type Row, row } from './row';

const AWAY = 'go away now';
const ENGINEER = 'an engineer this week';

/**
 * What could fall. The full alarm is for what moves, leans, steps out, hangs or has fallen, and for cracked bricks over an opening
 * with nothing seen that carries them. Source: content/safety.mdx; common practice.
 */
export const ROWS_FALLING: readonly Row[] = [
  row('fallen', 'yes', AWAY, {
    saw: 'A piece has fallen or moved out of its place.',
    ask: 'More can follow. Leave the pieces where they lie.',
  }),
  row('loose', 'yes', AWAY, {
    saw: 'Something is loose, hanging, or coming away from the wall.',
    ask: 'Leave it alone. Do not pull it off, and do not stick it back.',
  }),
  row('leans', 'yes', AWAY, {
    saw: 'The wall looks as if it leans.',
    maybe: [
      'A wall that was built to slope, the same on its whole length.',
      'A window or a phone that makes straight things look bent. Look with your own eyes from another place.',
    ],
    ask: 'Only measuring tells. Let the engineer do it.',
  }),
  row('belly', 'yes', AWAY, {
    saw: 'The face looks as if it bulges out or sinks in.',
    maybe: ['Bricks with a rough face. Then the rows and joints are still straight.', 'A shadow in low sun.'],
    ask: 'Look at it from another place, far off. If you still see it, it stays here.',
  }),
  row('moves', 'yes', AWAY, {
    saw: 'A part of the wall moves, or a crack grows from day to day.',
    ask: 'Do not go back to measure it.',
  }),
  row('stepped-crack', 'yes', AWAY, {
    saw: 'A crack has one side standing out past the other.',
    maybe: ['A rough brick beside a smooth one. Then there is no crack between them.'],
    ask: 'Do not fill it. That hides whether it moves.',
  }),
  row('corner-apart', 'yes', AWAY, {
    saw: 'Two walls come apart at a corner.',
    maybe: [
      'A straight joint from top to bottom, filled with something like rubber. It is meant to be there.',
    ],
    ask: 'Keep clear of both walls.',
  }),
  row('corner-hangs', 'yes', AWAY, {
    saw: 'A corner or an end stands on nothing that you can see.',
    maybe: ['A ledge or a steel angle that is hidden from where you stand.'],
    ask: 'Ask what carries it, and for a photograph of it. Stay out from under it until you know.',
  }),
  row('sags', 'yes', AWAY, {
    saw: 'The row of bricks over an opening sags.',
    maybe: ['A flat arch that was built with a curve. Then its joints are all alike and not cracked.'],
    ask: 'Use another door. Keep everybody out from under it.',
  }),
  row(
    'head-crack',
    'yes',
    AWAY,
    {
      saw: 'There is a crack at an opening, and you saw nothing that carries the bricks over it.',
      maybe: ['Steel that is hidden behind the bricks. Papers or a photograph can show it.'],
      ask: 'Use another door. Stay out from under it until someone shows you what carries it.',
    },
    { steel: ['no', ...NOT_SEEN] },
  ),
  row('gable-leans', 'yes', AWAY, {
    saw: 'The gable leans, or there is a gap between it and the roof.',
    maybe: ['A joint that was left open on purpose and filled with something soft, the same all along.'],
    ask: 'Keep clear on that side, as far as the gable is tall.',
  }),
  row('top-loose', 'yes', AWAY, {
    saw: 'Something is loose along the top edge.',
    ask: 'Keep clear below it. Do not go up to look.',
  }),
  row('chimney-leans', 'yes', AWAY, {
    saw: 'The chimney looks as if it leans or bends.',
    maybe: ['A chimney that was built with a bend. Old photographs can show it.'],
    ask: 'Stay out of the rooms and the yard right below it.',
  }),
  row('chimney-loose', 'yes', AWAY, {
    saw: 'Something is loose or missing at the top of the chimney.',
    ask: 'Keep clear on all sides. Do not light a fire in it.',
  }),
  row(
    'head-crack',
    'yes',
    ENGINEER,
    {
      saw: 'There is a crack over an opening or from one of its corners.',
      maybe: ['A fine crack from drying. It does not grow, and no side of it stands out.'],
      ask: 'Ask whether what carries the bricks has moved.',
    },
    { steel: ['yes'] },
  ),
  row('crack-width', 'beyond', ENGINEER, {
    saw: 'The widest crack is wide.',
    ask: 'Photograph it with a ruler beside it, each month from the same spot, until the engineer has come.',
  }),
  row(
    'crack',
    'yes',
    ENGINEER,
    {
      saw: 'There is a crack that is wider than a hair. Nobody knows how wide.',
      maybe: ['A straight joint filled with something like rubber. It is meant to be there.'],
      ask: 'Have its width measured, and ask whether it grows.',
    },
    { 'crack-width': [...NOT_SEEN, 'no', 'yes', 'no figure'] },
  ),
  row('grows', 'yes', ENGINEER, {
    saw: 'A crack has become longer or wider over some months.',
    maybe: ['A crack that opens in winter and closes in summer. Note its width with the date.'],
    ask: 'Give the engineer your photographs with their dates.',
  }),
  row('corner-crack', 'yes', ENGINEER, {
    saw: 'A crack runs up or down close to a corner.',
    maybe: ['A joint filled with something like rubber.'],
    ask: 'Ask what holds the corner to the house.',
  }),
  row('steel', 'no', ENGINEER, {
    saw: 'You saw an opening with no steel, concrete or stone that carries the bricks over it.',
    maybe: ['Steel that is hidden behind the face of the bricks.', 'An arch, which carries itself.'],
    ask: 'Ask what carries the bricks there, and for its size and a photograph.',
  }),
  row('rust', 'yes', ENGINEER, {
    saw: 'Steel over an opening is rusty and flaking, or pushes the bricks up.',
    maybe: ['A brown stain on the paint alone.'],
    ask: 'Ask how much of the steel is left.',
  }),
  row('bearing', 'beyond', ENGINEER, {
    saw: 'The steel ends close to the side of the opening.',
    maybe: ['Steel that goes on behind the brick, where you cannot see its end.'],
    ask: 'Ask how far the steel reaches on each side, and for a photograph with a tape.',
  }),
  row('undermined', 'yes', ENGINEER, {
    saw: 'There is a gap under the lowest row of bricks.',
    maybe: ['The edge of a metal or plastic sheet that lets water out. It is even all along.'],
    ask: 'Ask what the lowest row stands on. Do not fill the gap.',
  }),
  row('overhang', 'beyond', ENGINEER, {
    saw: 'The lowest brick stands out far past what it sits on.',
    maybe: ['A thin coat of plaster on the base, which hides where the base really ends.'],
    ask: 'Ask how wide the ledge is, and how much of the brick stands on it.',
  }),
  row('batten-gap', 'beyond', ENGINEER, {
    saw: 'A straight batten does not lie flat on the wall.',
    maybe: [
      'One brick that stands out, or a rough face. Move the batten and try again.',
      'A batten that is not straight. Turn it over and try again.',
    ],
    ask: 'Ask whether the face is out of line, and since when.',
  }),
  row('gable-crack', 'yes', ENGINEER, {
    saw: 'There is a crack in the gable.',
    ask: 'Ask what holds the gable to the roof.',
  }),
  row('chimney-crack', 'yes', ENGINEER, {
    saw: 'There is a crack in the chimney.',
    ask: 'Ask an engineer or a chimney mason to look at it from a proper scaffold. Do not light a fire in it until then.',
  }),
  row('inside-crack', 'yes', ENGINEER, {
    saw: 'There is a crack inside, at the same place as one outside.',
    maybe: ['A seam between two boards that shows by chance at the same place.'],
    ask: 'Show the engineer both sides.',
  }),
  row(
    'sticking',
    'yes',
    ENGINEER,
    {
      saw: 'Doors or windows stick in a wall that has a crack.',
      maybe: ['Wood that swells in damp weather.'],
      ask: 'Note which ones, and since when.',
    },
    { crack: ['yes'] },
  ),
];
