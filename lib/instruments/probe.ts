import { INSTRUMENT } from './instrument-list';
import { notNegative, type Place, type ReadingContext, readOff } from './read-off';
import type { Reading } from './reading';

const { resolution, error } = INSTRUMENT.probe;
/** The scale on a probe, for the depth of a raked joint, mm. */
const SCALE = { resolution: 0.5, error: 1 } as const;

/** Of a head joint: the share of it that is full, tried over its height. Of every joint, and of the panel for all of them: how far the mortar lies back. */
export function readProbe({ part, panel, survey }: Place, context: ReadingContext): readonly Reading[] {
  const depth = { value: panel.panel.recess, unit: 'mm', ...SCALE } as const;
  const back = notNegative(readOff(context, 'Mortar lies back', depth));
  if (part.kind !== 'head') return [back];
  const filled = survey.wall.heads.find(({ joint }) => joint === part.id)?.filled ?? 100;
  const reading = readOff(context, 'Filled with mortar', { value: filled, unit: '%', resolution, error });
  // A joint cannot be fuller than full, nor emptier than empty.
  return [{ ...reading, value: Math.min(100, Math.max(0, reading.value ?? 0)) }, back];
}
