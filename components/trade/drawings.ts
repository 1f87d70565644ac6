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
] as const;

export type DrawingName = (typeof DRAWINGS)[number]['name'];
