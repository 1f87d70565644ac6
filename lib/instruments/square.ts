import { formatInches, MM_PER_M, type Mm } from '../units';
import { INSTRUMENT } from './instrument-list';
import { type Place, type ReadingContext, readOff, sized, worked } from './read-off';
import type { Reading } from './reading';

const { resolution } = INSTRUMENT.square;
/** Sides of the triangle are 3, 4 and 5 of these, the largest that fits both walls, mm. */
const STEPS: readonly Mm[] = [1000, 500, 300, 200, 100, 50];
/** The long side is read on a tape held by two people: to half a millimetre, mm. */
const TAPE_STEP: Mm = 0.5;
/** And to be trusted within this, mm: 1.5 mm per m on the smallest usual triangle (our proposal). */
const TAPE_ERROR: Mm = 1;

/** The long side of a 3-4-5 triangle laid into the corner, and what it tells: how far 1 m of the return lies off square, mm. */
export function readSquare({ part, survey }: Place, context: ReadingContext): readonly Reading[] {
  const at = survey.wall.panels.findIndex(({ id }) => id === part.panel);
  const main = survey.wall.panels[at - 1]?.plan;
  const back = survey.wall.panels[at]?.plan;
  if (main === undefined || back === undefined) return [];
  const [ax, az] = [main.leftX - main.rightX, main.leftZ - main.rightZ];
  const [bx, bz] = [back.rightX - back.leftX, back.rightZ - back.leftZ];
  const longMain = Math.sqrt(ax * ax + az * az);
  const longBack = Math.sqrt(bx * bx + bz * bz);
  const longer = Math.max(longMain, longBack);
  const shorter = Math.min(longMain, longBack);
  const step = STEPS.find((each) => 4 * each <= longer && 3 * each <= shorter);
  if (step === undefined) return [];
  const [along, across] = [3 * step, 4 * step];
  const cosine = (ax * bx + az * bz) / (longMain * longBack);
  const long = Math.sqrt(along * along + across * across - 2 * along * across * cosine);
  const tape = readOff(context, `Long side of ${along} and ${across}`, {
    value: long,
    unit: 'mm',
    resolution: TAPE_STEP,
    error: TAPE_ERROR,
    words: `of ${formatInches(along)} and ${formatInches(across)}; square when it reads ${5 * step} mm (${formatInches(5 * step)})`,
  });
  const read = tape.value ?? 0;
  const off = (MM_PER_M * (read * read - along * along - across * across)) / (2 * along * across);
  return [
    sized(
      worked(context, 'Return off square', {
        value: off,
        unit: 'mm per m',
        resolution,
        // d·Δd ÷ (a·b), in mm per m: the long side enters by its square.
        error: (MM_PER_M * 5 * step * TAPE_ERROR) / (along * across) + resolution,
      }),
      ['square', 'it opens', 'it closes'],
    ),
    tape,
  ];
}
