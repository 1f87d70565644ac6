/** The drawings that compute, in the order in which they are listed. The name is the last part of the address. */
export const DRAWINGS = [
  {
    name: 'mortar-spread',
    title: 'Mortar spread',
    summary: 'Put mortar on the back of a unit, press it, and see what it covers.',
  },
  {
    name: 'on-the-ledge',
    title: 'On the ledge',
    summary: 'Push a unit over its support and see what still carries it, and when it tips.',
  },
  {
    name: 'string-line',
    title: 'String line',
    summary: 'See how far a line sags, and what the units laid to it then do.',
  },
  {
    name: 'gauge-rod',
    title: 'Gauge rod',
    summary: 'Part a height into courses, mark a rod, and see what a small error comes to.',
  },
  {
    name: 'tie-map',
    title: 'Tie map',
    summary: 'Space ties on studs and see how much wall hangs on each, by every rule set.',
  },
  {
    name: 'mortar-box',
    title: 'Mortar box',
    summary: 'Measure out a batch: its type, what it yields, and how its time runs.',
  },
  {
    name: 'lintel',
    title: 'Lintel',
    summary: 'Find the angles that a table gives for an opening, and see why by sums.',
  },
  {
    name: 'arch',
    title: 'Arch',
    summary: 'Strike the circle of an arch, count its units, and see how hard it pushes outward.',
  },
  {
    name: 'set-out-a-course',
    title: 'Set out a course',
    summary: 'Fill a length with units and cut pieces, and rank the ways by their smallest piece.',
  },
  {
    name: 'falling-brick',
    title: 'Falling brick',
    summary: 'See what a unit carries when it lands, and how far to stay away.',
  },
  {
    name: 'corner',
    title: 'Corner',
    summary: 'Set out a corner by 3-4-5 and see what a slip of the tape does at the end of the wall.',
  },
  {
    name: 'level-and-straightedge',
    title: 'Level and straightedge',
    summary: 'Turn a level end for end and tell its own error from the slope of the bed.',
  },
] as const;

export type DrawingName = (typeof DRAWINGS)[number]['name'];
