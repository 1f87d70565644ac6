import { inches, type Mm } from '../units';
import { heightOf } from '../wall/courses';
import { facePlaneOf } from '../wall/face-plane';
import { perpendChainsOf } from '../wall/perpend-chains';
import { INSTRUMENT } from './instrument-list';
import { type Place, type ReadingContext, readOff, sized, worked } from './read-off';
import type { Reading } from './reading';
import { unitAt } from './unit-at';

const { resolution, error } = INSTRUMENT['plumb-line'];
const MM = { unit: 'mm', resolution, error } as const;

/** Heights over which published limits ask for a lean: 2.5 m, 10 ft and 20 ft. */
const RUNS: readonly { readonly run: Mm; readonly name: string }[] = [
  { run: 2500, name: '2.5 m' },
  { run: inches(0, 10), name: '10 ft' },
  { run: inches(0, 20), name: '20 ft' },
];

/** Of a panel: how far the best plane of its face leans over its height. Of a head joint: how far its line of head joints wanders up the wall. */
export function readPlumbLine({ part, panel, survey }: Place, context: ReadingContext): readonly Reading[] {
  if (part.kind === 'head') {
    const left = unitAt(part, panel);
    const chain = perpendChainsOf(panel, survey.wall.bond).find(({ lefts }) =>
      lefts.some((each) => each === left),
    );
    if (chain === undefined) return [];
    const words = `over ${chain.lefts.length} joints`;
    return [readOff(context, 'This line of head joints wanders', { ...MM, value: chain.drift, words })];
  }
  const plane = facePlaneOf(panel.placed);
  if (plane === null) return [];
  const height = heightOf(panel);
  const lean = readOff(context, 'Lean over the whole height', { ...MM, value: plane.up * height });
  const whole = sized(lean, ['plumb', 'top leans out', 'top leans back']);
  const shorter = RUNS.filter(({ run }) => run < height).map(({ run, name }) =>
    worked(context, `That is, in ${name}`, {
      ...MM,
      value: ((whole.value ?? 0) * run) / height,
      words: whole.words,
    }),
  );
  return [whole, ...shorter];
}
