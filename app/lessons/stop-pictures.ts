import type { StopPicture } from '../../components/household/stop-questions';
import { sizeOfSvg } from '../../lib/drawing/svg-nodes';
import type { StopId } from '../../lib/household/stops';
import { drawPicture, hasLengths } from './draw-picture';
import { fileOf, type LessonPicture, parsePicture } from './lesson-pictures';
import { altOf, keyOf } from './picture-words';

type Shown = Readonly<Record<string, string>>;

const RINGED = { ringed: '' } as const;
const CLOSE = { close: '' } as const;
const SPOILED = { state: 'spoiled' } as const;

/** At each stop good work, and work that is not. Both from the generator, as in the lessons. */
const SHOWN: Readonly<Record<StopId, readonly (readonly [says: string, picture: Shown])[]>> = {
  street: [
    ['Good: the rows run level with the window, and the ends stand upright.', { of: 'first-look' }],
    ['Not good: the upper rows run uphill.', { of: 'off-line', ...SPOILED, ...RINGED }],
  ],
  face: [
    ['Good: the joints are full and all alike.', { of: 'open-joints', ...CLOSE }],
    ['Not good: mortar is missing.', { of: 'open-joints', ...SPOILED, ...RINGED, ...CLOSE }],
  ],
  corners: [
    [
      'Good: two walls that meet at a corner. Both stand on the base, to their very ends.',
      { of: 'before-cover' },
    ],
    [
      'Not good: one end of the wall stands on wood or on nothing.',
      { of: 'no-ledge', ...SPOILED, ...RINGED },
    ],
  ],
  openings: [
    [
      'Good: steel carries the bricks over the window. Its edge shows as a thin line.',
      { of: 'missing-lintel' },
    ],
    ['Not good: nothing carries them.', { of: 'missing-lintel', ...SPOILED, ...RINGED }],
  ],
  base: [
    ['Good, cut through from front to back: the bricks stand on the base.', { of: 'ledge', view: 'section' }],
    ['Not good: they stand out far past it.', { of: 'ledge', ...SPOILED, view: 'section' }],
  ],
  gable: [
    ['Good: the rows run level up to the roof.', { of: 'gable' }],
    ['Not good: the upper rows run uphill.', { of: 'gable', ...SPOILED, ...RINGED }],
  ],
  chimney: [
    [
      'Good: even joints. This is a plain wall; look for the same on the chimney.',
      { of: 'uneven-joints', ...CLOSE },
    ],
    [
      'Not good: joints that taper. Look for the same on the chimney.',
      { of: 'uneven-joints', ...SPOILED, ...RINGED, ...CLOSE },
    ],
  ],
  inside: [
    ['What a finished wall hides. Good: ties in a steady pattern.', { of: 'ties', view: 'before-cover' }],
    [
      'Not good: ties too far apart. No look from outside shows it.',
      { of: 'ties', ...SPOILED, view: 'before-cover', ...RINGED },
    ],
  ],
};

/** The drawings that the stops show, for the route that makes them. */
export const STOP_DRAWINGS: readonly LessonPicture[] = Object.values(SHOWN).flatMap((both) =>
  both.map(([, shown]) => pictureOf(shown)),
);

/** The sound wall with numbers to the words of its parts. */
export const SOUND_WALL: LessonPicture = pictureOf({ of: 'whole-wall', ...RINGED });

/** What each stop shows, by its name, ready for the page. */
export function stopPictures(): Readonly<Record<string, readonly StopPicture[]>> {
  return Object.fromEntries(
    Object.entries(SHOWN).map(([stop, both]) => [
      stop,
      both.map(([says, shown]) => figureOf(pictureOf(shown), says)),
    ]),
  );
}

export function figureOf(picture: LessonPicture, says: string): StopPicture {
  return {
    src: `/lessons/pictures/${fileOf(picture)}`,
    srcInInches: hasLengths(picture) ? `/lessons/pictures/${fileOf(picture, 'inches')}` : undefined,
    // What the caption says is the wall, whether it is ringed or not.
    alt: `${says} ${altOf(picture, true)}`,
    ...sizeOfSvg(drawPicture(picture)),
    // The key to a spoiled wall is measured by one rule set; a householder is told in the caption.
    keyed: picture.state === 'sound' && picture.ringed ? keyOf(picture) : [],
    says,
  };
}

function pictureOf(shown: Shown): LessonPicture {
  const picture = parsePicture(shown);
  if (typeof picture === 'string') throw new RangeError(picture);
  return picture;
}
