import type { Batch } from '../wall/model';
import { inWords, type Place, type ReadingContext } from './read-off';
import type { Reading } from './reading';

/** Parts of sand to one of cement and lime at which a nail tells a difference (our proposal: no limit, and no finding). */
const SOFT = 3.2;
const CRUMBLING = 4.2;

/** Drags a nail through the joint of a course, or of the courses of one mixing. */
export function readScratch({ part, survey }: Place, context: ReadingContext): readonly Reading[] {
  const batch = survey.wall.batches.find(({ id, fromCourse, toCourse }) =>
    part.kind === 'batch'
      ? id === part.id
      : fromCourse <= (part.course ?? 0) && (part.course ?? 0) <= toCourse,
  );
  return batch ? [inWords(context, 'Under a nail', wordsOf(batch))] : [];
}

function wordsOf({ sand, portland, lime }: Batch): string {
  const parts = sand / (portland + lime);
  if (parts <= SOFT) return 'hard: the nail only marks it';
  return parts <= CRUMBLING ? 'soft: grains of sand come off' : 'it crumbles: sand runs out';
}
