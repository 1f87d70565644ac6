/** Where a thing that was seen goes, the most urgent first. */
export const DRAWERS = ['go away now', 'an engineer this week', 'ask the mason', 'harmless'] as const;
export type Drawer = (typeof DRAWERS)[number];

export function isMoreUrgent(one: Drawer, other: Drawer): boolean {
  return DRAWERS.indexOf(one) < DRAWERS.indexOf(other);
}

/** The two drawers of what could fall. */
export function couldFall(drawer: Drawer): boolean {
  return drawer === 'go away now' || drawer === 'an engineer this week';
}

export interface Steps {
  readonly now: readonly string[];
  readonly soon: readonly string[];
  readonly later: readonly string[];
}

/** What to do about anything in a drawer. Source: content/safety.mdx and common practice, in our own words. */
export const STEPS_OF: Readonly<Record<Drawer, Steps>> = {
  'go away now': {
    now: [
      'Go away from the wall. Take people and animals with you.',
      'If it hangs over a street or a path, or if someone is hurt, call the emergency number of your country first.',
      'Keep people farther away than the wall is tall, on both sides. Farther is better.',
      'Close the doors, paths and drives that lead under it. Put up a sign.',
      'Do not touch, pull, hit or prop it. Do not fill a crack.',
      'Call a licensed engineer today. Tell the building department if it can fall on a street, a path or a neighbour.',
    ],
    soon: [
      'A contractor props it, ties it back or takes it down, as the engineer says.',
      'Look again from outside the barrier after wind, heavy rain or frost.',
    ],
    later: [],
  },
  'an engineer this week': {
    now: [
      'Keep people from standing, sitting or playing near it.',
      'Do not fill, prop, pull or hit it.',
      'Take a photograph from far off, with the date.',
      'If it moves, leans, steps out or drops a piece: go away at once, and keep others away.',
    ],
    soon: ['Have a licensed engineer look at it this week.'],
    later: [],
  },
  'ask the mason': {
    now: [],
    soon: [
      'Show it to the mason, or to the builder who hired the mason. Ask what it is, and get the answer in writing.',
    ],
    later: ['Look at it again in a month, and photograph the same spot.'],
  },
  harmless: {
    now: [],
    soon: [],
    later: ['Leave it as it is. Look at it again when the season changes.'],
  },
};
