import { departureBound } from '../../../limits/bound';
import { FACE_LEAST_UNITS, facePlaneOf, padsOf } from '../../../wall/face-plane';
import type { Check } from '../../check';
import { boxOf } from '../../places';

/**
 * Each panel of at least 24 units. The plane of its face, a + b·x + c·y, is fitted by least squares to the faces at the middles of the units,
 * less what the drawing wants proud. A unit's pad is the mean of how far the units stand off that plane whose middles lie within 300 mm of its
 * own, along and up; it takes at least five.
 *
 * Measured: the deepest pad, against `face-line` for the length of the panel from its leftmost end to its rightmost. Parts: the panel.
 * Region: the units whose pads are over half as deep.
 */
export const bulgeOrHollow: Check = {
  id: 'bulge-or-hollow',
  name: 'Bulge or hollow',
  alsoCalled: 'belly, bow, hump, dished wall, crowding the line, out of range, ranging out',
  looksLike: 'A patch of the wall swells out or sinks in, while the rest keeps its plane.',
  whereToLook:
    'Front view, by the shadows. Pick the whole panel and read how far it stands out and back at most. Pick units to find where.',
  measuredBy: 'Hold a long straightedge on the face and measure how far a patch stands out or sinks in.',
  whyItMatters:
    'In a new wall it is a matter of looks. In an old wall any bulge is movement, and the wall may fall.',
  putsRight:
    'In a new wall, the mason takes the patch down and lays it anew. In an old wall, keep people away. A licensed engineer decides what to do.',
  caughtAt: 'Before each lift of scaffold goes up',
  mistakenFor: ['out-of-plumb', 'textured-units'],
  markedOn: ['panel'],
  hazard: 'looks',
  reach: 'in sight',
  lesson: 'line-level-plumb',
  asks: { what: 'Deepest place, off the plane of the face', unit: 'mm' },
  tooNear: 1,
  measure: ({ panels }, limits, report) => {
    const limit = limits('face-line');
    if (limit === undefined) return;
    for (const survey of panels) {
      const { panel, placed } = survey;
      const plane = placed.length < FACE_LEAST_UNITS ? null : facePlaneOf(placed);
      if (plane === null) continue;
      const pads = padsOf(survey, plane);
      const most = pads.reduce(
        (greatest, { off }) => (off === null ? greatest : Math.max(greatest, Math.abs(off))),
        0,
      );
      report({
        limit,
        end: 'at most',
        measured: most,
        bound: departureBound(limit.bound, boxOf(placed).width),
        at: panel.id,
        place: () => ({
          parts: [panel.id],
          region: boxOf(
            pads.filter(({ off }) => off !== null && Math.abs(off) > most / 2).map((pad) => pad.placed),
          ),
        }),
      });
    }
  },
};
