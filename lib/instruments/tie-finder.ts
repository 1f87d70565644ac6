import type { Mm } from '../units';
import type { Tie } from '../wall/model';
import { INSTRUMENT } from './instrument-list';
import { inWords, type Place, type ReadingContext, readOff } from './read-off';
import type { Reading } from './reading';
import { unitAt } from './unit-at';

const { resolution, error } = INSTRUMENT['tie-finder'];

/** It sounds over the head joint beside the unit too, mm. */
const BESIDE: Mm = 12;

/** Metal in the beds above and below a unit, along a course, or in the whole panel. Never how far it reaches in. */
export function readTieFinder({ part, panel }: Place, context: ReadingContext): readonly Reading[] {
  if (part.kind === 'panel') return [inWords(context, 'Metal behind the face', countWords(panel.ties))];
  if (part.kind === 'course') {
    return [
      inWords(
        context,
        'Metal in the bed on top',
        countWords(panel.ties.filter(({ course }) => course === part.course)),
      ),
    ];
  }
  const unit = unitAt(part, panel)?.unit;
  if (unit === undefined) return [];
  const near = (course: number) =>
    panel.ties.filter(
      (tie) => tie.course === course && tie.x >= unit.x - BESIDE && tie.x <= unit.x + unit.length + BESIDE,
    );
  const from = (what: string, { x }: Tie, index: number) =>
    readOff(context, index === 0 ? what : `${what}, again`, {
      value: x - unit.x,
      unit: 'mm',
      resolution,
      error,
    });
  const found = [
    ...near(unit.course).map((tie, index) => from('Metal in the bed above, from the left end', tie, index)),
    ...near(unit.course - 1).map((tie, index) =>
      from('Metal in the bed below, from the left end', tie, index),
    ),
  ];
  return found.length > 0 ? found : [inWords(context, 'Metal behind this unit', 'none found')];
}

function countWords({ length }: readonly Tie[]): string {
  return length === 0 ? 'none found' : length === 1 ? 'in 1 place' : `in ${length} places`;
}
