import type { Wall } from '../wall/model';

const SHOWS: Readonly<Record<string, string>> = {
  afar: 'What the street sees: colour, bond, level lines, a lean or a bulge. Fine joints run together.',
  front: 'Close up you see every joint, chip and cut. Nothing behind the face shows here.',
  'side-light':
    'Low sun throws a shadow wherever a unit stands out or sits back. Move the sun and watch the shadows.',
  side: 'The wall is cut through from top to bottom: see whether it is plumb, what it stands on and what holds it back.',
  cut: 'One support is cut through: see how much of the unit rests on it, and what keeps the water out.',
  above: 'One course from above: see how it lines up, and what lies in the cavity behind it.',
  below: 'You look up at the bottom edge: see what carries the units, and how far they stick out past it.',
  'before-cover':
    'The wall before the units went up: see every tie, how far apart they are, and how near to edges and openings.',
  tickets: 'What was mixed for each course, how much of everything, and when.',
};

/** What a look shows, in a sentence or two, by its key. */
export function whatShows(viewKey: string, { masonry }: Wall): string {
  if (viewKey !== 'behind') return SHOWS[viewKey.split(':')[0] ?? ''] ?? '';
  return masonry === 'adhered'
    ? 'Lifted units show how much mortar holds them on. What you lift stays marked on the wall.'
    : 'A lifted unit shows its back, the bed it lay on, and any tie in that bed.';
}

/** How to choose the units to lift: nobody may lift them all. */
export function liftingPlan({ masonry }: Wall): string {
  return masonry === 'adhered'
    ? 'Sound the wall first: pick units in “Up close” and tap them with the instrument. Lift where it rings hollow. Then lift evenly along every fourth course.'
    : 'You cannot lift them all. Lift where a tie should be, or where something else made you doubt.';
}
