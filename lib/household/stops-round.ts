import type { Stop } from './question';

/** The foot, the top, and the inside. */
export const STOPS_ROUND = [
  {
    id: 'base',
    title: 'The base and the ground',
    stand: 'Walk along the foot of the wall, if nothing above you looked loose.',
    questions: [
      {
        id: 'undermined',
        ask: 'Is there a gap under the lowest row of bricks that you can look into?',
        how: 'A thin edge of metal or plastic under the bricks is meant to be there.',
      },
      {
        id: 'brick-depth',
        ask: 'How thick is one brick, from front to back?',
        how: 'Measure at a corner of the house, or at the side of a door.',
        most: 400,
        measured: 'Thickness of a brick',
      },
      {
        id: 'overhang',
        ask: 'How far does the lowest brick stand out past what it sits on?',
        how: 'Put a ruler under the brick, flat against the base, and read it at the face of the brick.',
        most: 400,
        measured: 'Lowest brick past its base',
      },
      {
        id: 'slots',
        ask: 'Are there small open slots or tubes just above the base?',
        how: 'They let water out. Leave them open.',
      },
      { id: 'slots-shut', ask: 'Are slots filled up, painted over or buried?' },
      {
        id: 'slot-spacing',
        ask: 'How far is it from one slot to the next?',
        how: 'Measure the widest space between two slots along the wall.',
        most: 20_000,
        measured: 'From slot to slot',
      },
      { id: 'soil', ask: 'Does soil, paving or a deck reach up to the lowest bricks or the slots?' },
      {
        id: 'clearance',
        ask: 'How high are the slots above the ground?',
        how: 'Measure at the place where the ground is highest.',
        most: 5000,
        measured: 'Slots above the ground',
      },
    ],
  },
  {
    id: 'gable',
    title: 'The gable',
    stand: 'The gable is the three-cornered top of an end wall. Look at it from far off.',
    questions: [
      { id: 'gable-leans', ask: 'Does the gable lean, or is there a gap between it and the roof?' },
      { id: 'top-loose', ask: 'Is a stone, a tile or a brick loose along the top edge?' },
      { id: 'gable-crack', ask: 'Is there a crack in the gable that is wider than a hair?' },
    ],
  },
  {
    id: 'chimney',
    title: 'The chimney, from far off',
    stand: 'Stay on the ground. Stand where you see all of it; a zoom or field glasses help.',
    questions: [
      { id: 'chimney-leans', ask: 'Does the chimney lean or bend?' },
      { id: 'chimney-loose', ask: 'Are bricks or pots loose or missing at its top?' },
      { id: 'chimney-crack', ask: 'Is there a crack in the chimney?' },
      { id: 'chimney-joints', ask: 'Is mortar missing between its bricks?' },
    ],
  },
  {
    id: 'inside',
    title: 'Inside',
    stand: 'Go to the rooms behind the wall, and look in the papers of the house.',
    questions: [
      { id: 'inside-crack', ask: 'Is there a crack inside, at the same place as one outside?' },
      { id: 'sticking', ask: 'Have doors or windows in that wall begun to stick?' },
      { id: 'inside-damp', ask: 'Are there damp patches on the inside of that wall?' },
      {
        id: 'proof',
        ask: 'Do you have dated photographs of the ties, taken before they were covered?',
        how: 'Ties are the metal straps that hold the bricks to the house. A finished wall hides them.',
      },
    ],
  },
] as const satisfies readonly Stop[];
