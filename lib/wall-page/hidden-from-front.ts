import type { Topic } from '../generate/topics';

/** Up to this difficulty a reader is told where to begin. */
const TOLD_UP_TO = 2;

const BEGIN: Partial<Record<Topic, string>> = {
  mortar:
    'You cannot see from the front what is in the mortar. Begin with “Mixing tickets”: they say what was mixed, and when.',
  'back-mortar':
    'You cannot see from the front how well these units stick. Begin with “Behind a unit” and lift some.',
  ties: 'Finished brick hides its ties. Begin with “Before cover”: it shows the wall before the brick went up.',
  water:
    'The front shows the weeps and the edges of flashings. For what lies behind, go to “From the side” and choose the base, or over the opening.',
  support:
    'What carries the wall shows best from the side. Begin with “From the side”, then look from below.',
};

/** What the front cannot show of what this wall asks, and where to look for it first; null where the front is the place to begin, and on harder walls. */
export function hiddenFromFront(topic: Topic, difficulty: number): string | null {
  return difficulty > TOLD_UP_TO ? null : (BEGIN[topic] ?? null);
}
