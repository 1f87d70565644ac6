import { useState } from 'react';
import { crackWidth, openingSquare } from '../../lib/photo/by-points';
import type { Spot } from '../../lib/photo/matrix';
import type { Known } from '../../lib/photo/measure';
import type { Reference } from '../../lib/photo/reference';
import type { LengthSystem } from '../../lib/units';
import { ChoiceBar } from '../ui/choice-bar';
import { CORNER_NAMES, cornersWithin } from './corners';
import { MeasuredList } from './measured-list';
import type { Photograph } from './open-photograph';
import { PointPicker } from './point-picker';

const THINGS = [
  { value: 'nothing', label: 'Nothing more' },
  { value: 'crack', label: 'A crack' },
  { value: 'opening', label: 'An opening' },
] as const;
/** How far in from the edges of the picture the corners of an opening begin. */
const IN = 0.3;

/** A crack or an opening on the same face, between points that the person sets. */
export function OneThingMore(props: {
  readonly photograph: Photograph;
  readonly reference: Reference;
  readonly known: Known;
  readonly system: LengthSystem;
}) {
  const { photograph, reference, known, system } = props;
  const { picture } = photograph;
  const { width, height } = picture;
  const [thing, choose] = useState<(typeof THINGS)[number]['value']>('nothing');
  const [edges, setEdges] = useState<readonly Spot[]>([
    { x: 0.45 * width, y: 0.5 * height },
    { x: 0.55 * width, y: 0.5 * height },
  ]);
  const [corners, setCorners] = useState<readonly Spot[]>(cornersWithin(width, height, IN));
  const [one, other] = edges;
  const [first, second, third, fourth] = corners;
  return (
    <>
      <h2>6. One thing more on the same face</h2>
      <ChoiceBar legend="Measure" options={THINGS} value={thing} onChoose={choose} />
      {thing === 'crack' && one && other && (
        <>
          <PointPicker
            {...{ photograph }}
            names={['One', 'Other']}
            noun="edge"
            spots={edges}
            onMove={setEdges}
          />
          <MeasuredList
            measures={[
              { what: 'Crack, from edge to edge', ...crackWidth(picture, reference, [one, other], known) },
            ]}
            system={system}
          />
        </>
      )}
      {thing === 'opening' && first && second && third && fourth && (
        <>
          <PointPicker
            {...{ photograph }}
            names={CORNER_NAMES}
            noun="corner of the opening"
            spots={corners}
            onMove={setCorners}
          />
          <MeasuredList
            measures={[
              {
                what: 'Corner of the opening that is least square',
                ...openingSquare(picture, reference, [first, second, third, fourth], known),
              },
            ]}
            system={system}
          />
        </>
      )}
    </>
  );
}
