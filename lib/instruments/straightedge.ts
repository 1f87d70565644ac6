import { medianOf } from '../geometry/interval';
import type { Placed } from '../wall/survey';
import { INSTRUMENT } from './instrument-list';
import { type Place, type ReadingContext, readOff, type SignWords, sized } from './read-off';
import type { Reading } from './reading';
import { unitAt } from './unit-at';

const { resolution, error } = INSTRUMENT.straightedge;
/** Feeler leaves come in steps of 0.05 mm (common practice): a strap is the pack of leaves that lies flush with it. */
const LEAF = 0.05;

/** Of a unit: one end of its face against the other, and its face against the middle one of its neighbours' faces. Of a tie: its thickness. */
export function readStraightedge(
  { part, panel, survey }: Place,
  context: ReadingContext,
): readonly Reading[] {
  if (part.kind === 'tie') {
    const tie = panel.ties.find(({ id }) => id === part.id);
    if (tie === undefined) return [];
    return [
      readOff(context, 'Thickness of the strap', {
        value: tie.thickness,
        unit: 'mm',
        resolution: LEAF,
        error: LEAF,
        fine: true,
      }),
    ];
  }
  const placed = unitAt(part, panel);
  if (placed === null) return [];
  const { twist, id } = placed.unit;
  const mm = (what: string, value: number, ways: SignWords) =>
    sized(readOff(context, what, { value, unit: 'mm', resolution, error }), ways);
  const faces = neighbourFaces(placed);
  const off = placed.proud - medianOf(faces);
  const drawn = survey.wall.projections.some(({ units }) => units.includes(id));
  return [
    mm('One end against the other', twist, ['flat', 'right end proud', 'left end proud']),
    ...(faces.length >= 3
      ? [
          mm(
            drawn
              ? 'Face against its neighbours, past what the drawing wants'
              : 'Face against its neighbours',
            off,
            ['flush', 'proud', 'set back'],
          ),
        ]
      : []),
  ];
}

function neighbourFaces({ left, right, below, above }: Placed): readonly number[] {
  return [...(left ? [left] : []), ...(right ? [right] : []), ...below, ...above].map(({ proud }) => proud);
}
