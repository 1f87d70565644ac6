import { INSTRUMENT } from './instrument-list';
import { type Place, type ReadingContext, readOff, worked } from './read-off';
import type { Reading } from './reading';

const { resolution, error } = INSTRUMENT.thermometer;

/** Air when a mixing was used, and its ticket: minutes from mixing to the last unit in place, and volumes of sand to one of cement and lime. */
export function readThermometer({ part, survey }: Place, context: ReadingContext): readonly Reading[] {
  const batch = survey.wall.batches.find(({ id }) => id === part.id);
  if (batch === undefined) return [];
  const { air, minutes, portland, lime, sand } = batch;
  const words = `${portland} cement, ${lime} lime, ${sand} sand`;
  return [
    readOff(context, 'Air', { value: air, unit: '°C', resolution, error }),
    // A ticket is written in whole minutes.
    readOff(context, 'From mixing to the last unit', {
      value: minutes,
      unit: 'minutes',
      resolution: 1,
      error: 1,
    }),
    worked(context, 'Sand to one of cement and lime', {
      value: sand / (portland + lime),
      unit: 'volumes',
      resolution: 0.01,
      error: 0.01,
      words,
    }),
  ];
}
