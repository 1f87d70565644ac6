import type { Topic } from '../generate/topics';
import type { Wall } from '../wall/model';

/** What the front cannot show, of what this wall asks, and where it shows; null where the front is the place to begin. */
export function hiddenFromFront({ masonry }: Wall, topic: Topic): string | null {
  if (topic === 'mortar') {
    return 'The front hardly shows what is in the mortar. Read what was written down: choose “Mixing tickets”.';
  }
  return masonry === 'adhered'
    ? 'The front cannot show how well these units stick. Lift some here and there: choose “Behind a unit”.'
    : null;
}
