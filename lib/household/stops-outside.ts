import type { Stop } from './question';

/** From far off to near by. A person who sees something that could fall goes no nearer. */
export const STOPS_OUTSIDE = [
  {
    id: 'street',
    title: 'From the street',
    stand: 'Stand well back, across the road if you can. Look at the whole wall before you go near it.',
    questions: [
      { id: 'fallen', ask: 'Has a brick, a stone or a piece of one fallen, or moved out of its place?' },
      {
        id: 'loose',
        ask: 'Is anything loose, hanging, or coming away from the wall?',
        how: 'Only look. Do not touch it to find out.',
      },
      {
        id: 'leans',
        ask: 'Does the wall lean, in or out?',
        how: 'Hold a key on a string at arm’s length and close one eye. Line the string up with the edge of the wall.',
      },
      {
        id: 'belly',
        ask: 'Does the face bulge out or sink in?',
        how: 'Stand off the end of the wall, well clear of it, and look along the face.',
      },
      { id: 'moves', ask: 'Does any part of it move, or does a crack grow from day to day?' },
      {
        id: 'event',
        ask: 'Has there been a storm, a hard frost, a fire, a knock or an earthquake not long ago?',
      },
      {
        id: 'rows',
        ask: 'Do the rows of bricks run uphill or wavy?',
        how: 'Compare them with the top and the bottom of the windows.',
      },
    ],
  },
  {
    id: 'face',
    title: 'Each face',
    stand: 'Look at one side of the house after the other. Start far off, then come to arm’s length.',
    questions: [
      {
        id: 'stepped-crack',
        ask: 'Is there a crack with one side standing out past the other?',
        how: 'Look along the wall. A step throws a shadow.',
      },
      { id: 'crack', ask: 'Is there a crack that is wider than a hair?' },
      {
        id: 'crack-width',
        ask: 'How wide is the widest crack?',
        how: 'Hold a ruler across it. Or find a coin whose edge just fits in the gap, and measure the coin.',
        most: 200,
        measured: 'Widest crack',
      },
      { id: 'grows', ask: 'Has a crack become longer or wider over the last months?' },
      { id: 'open-joints', ask: 'Is mortar missing or crumbling between the bricks?' },
      {
        id: 'joint-width',
        ask: 'How wide is the widest upright joint?',
        how: 'Measure the mortar between the ends of two bricks with a tape.',
        most: 100,
        measured: 'Widest upright joint',
      },
      {
        id: 'batten-gap',
        ask: 'How large is the gap under a straight batten?',
        how: 'Hold a straight piece of wood, {batten} long, along the wall. Do not press. Measure the largest gap.',
        most: 300,
        measured: 'Largest gap under a batten of {batten}',
      },
      { id: 'flaking', ask: 'Do the faces of bricks flake or crumble?' },
      { id: 'stain', ask: 'Are there brown streaks, green patches, or parts that stay dark and wet?' },
      { id: 'bloom', ask: 'Is there a white powder on the bricks?' },
      { id: 'hairs', ask: 'Are there cracks as fine as a hair, short and scattered?' },
      { id: 'chips', ask: 'Are there small chips, smears of mortar, or bricks of another shade?' },
    ],
  },
  {
    id: 'corners',
    title: 'Corners and ends',
    stand: 'Stand where you see both sides of a corner. Look up it from the ground to the roof.',
    questions: [
      { id: 'corner-apart', ask: 'Do the two walls come apart at a corner?' },
      { id: 'corner-hangs', ask: 'Does a corner or an end of the wall stand on nothing that you can see?' },
      {
        id: 'corner-crack',
        ask: 'Does a crack run up or down close to a corner?',
        how: 'A straight joint from top to bottom, filled with something like rubber, is not a crack.',
      },
    ],
  },
  {
    id: 'openings',
    title: 'Doors and windows',
    stand: 'Look at each opening from the side first. Do not stand under bricks that sag or are cracked.',
    questions: [
      { id: 'sags', ask: 'Does the row of bricks over a door, a window or a garage sag?' },
      { id: 'head-crack', ask: 'Is there a crack over an opening, or from one of its corners?' },
      {
        id: 'steel',
        ask: 'Can you see steel, concrete or stone that carries the bricks over every opening?',
        how: 'Steel shows as a thin edge, often painted, under the lowest row.',
      },
      { id: 'rust', ask: 'Is that steel rusty and flaking, or does it push the bricks up?' },
      {
        id: 'opening-width',
        ask: 'How wide is the widest opening?',
        how: 'From brick to brick, at the height of your hands.',
        most: 12_000,
        measured: 'Widest opening',
      },
      {
        id: 'bearing',
        ask: 'How far does the steel run past the side of the opening?',
        how: 'Only over a low door, if you see where the steel ends. From the side of the opening to the end of the steel.',
        most: 2000,
        measured: 'Steel past the side of the opening',
      },
    ],
  },
] as const satisfies readonly Stop[];
