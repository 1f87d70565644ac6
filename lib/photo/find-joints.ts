import { bedsOf, type FoundBeds } from './beds';
import { headsOf } from './heads';
import type { Fitted, Joint, Joints } from './joint';
import type { Spot } from './matrix';
import { PhotoError } from './photo-error';
import type { Square } from './picture';
import { meanOf, medianOf } from './rows';

/** What a picture of masonry shows at the least. */
const LEAST_BEDS = 3;
const LEAST_LIKENESS = 0.3;
const LEAST_SHARE = 0.5;
const LEAST_HEADS_A_COURSE = 0.5;

/** The joints in a part of a wall seen square on. Throws a PhotoError where the picture shows no courses of units with joints. */
export function jointsIn(square: Square): Joints {
  const found = bedsOf(square);
  if (found === undefined || found.beds.length < LEAST_BEDS)
    throw new PhotoError('the picture: no courses can be made out between the four points');
  if (found.likeness < LEAST_LIKENESS || found.share < LEAST_SHARE)
    throw new PhotoError(
      'the picture: what is between the four points does not look like courses of masonry',
    );
  const heads = headsOf(square, found);
  if (heads.flat().length < LEAST_HEADS_A_COURSE * heads.length)
    throw new PhotoError(
      'the picture: there are lines across, but no upright joints between them, so this is no masonry',
    );
  const beds = found.beds.map((bed, index) =>
    clearOfHeads(bed, [...(heads[index - 1] ?? []), ...(heads[index] ?? [])], found),
  );
  const { toPixel } = square;
  return {
    beds: beds.map((bed) => joint(bed, toPixel, false)),
    heads: heads.map((course) => course.map((head) => joint(head, toPixel, true))),
    softness: found.soft / medianOf(found.beds.flat().map(({ width }) => width)),
  };
}

/** The strips of a bed that no head joint above or below runs into, unless hardly any would stay. */
function clearOfHeads(
  bed: readonly Fitted[],
  heads: readonly (readonly Fitted[])[],
  { course }: FoundBeds,
): readonly Fitted[] {
  const near = heads.map((head) => ({
    x: meanOf(head.map(({ middle }) => middle)),
    reach: 0.13 * course + meanOf(head.map(({ width }) => width)) / 2,
  }));
  const clear = bed.filter(({ along }) => near.every(({ x, reach }) => Math.abs(x - along) > reach));
  return clear.length >= 4 ? clear : bed;
}

function joint(fits: readonly Fitted[], toPixel: Square['toPixel'], isHead: boolean): Joint {
  const at = (along: number, across: number): Spot =>
    toPixel(isHead ? { x: across, y: along } : { x: along, y: across });
  return {
    cuts: fits.map(({ along, middle, width }) => ({
      from: at(along, middle - width / 2),
      to: at(along, middle + width / 2),
    })),
  };
}
