import { type Fault, WITH_OPENING } from '../../fault';
import { boundIn, valueAt } from '../../spoil-input';
import { pickFlashing, withShape } from './flashing-changes';

/** What a tape tells, mm. */
const CLEAR = 3;
/** From here on the end is not turned up at all. */
const FLAT = 2.5;

/** One end of a flashing over an opening turned up too little, or not at all. */
export const noEndDam: Fault = {
  id: 'no-end-dam',
  kinds: WITH_OPENING,
  masonry: 'anchored',
  tolerated: 0.95,
  spoil: (input) => {
    const { wall, rules, severity, chance } = input;
    const length = new Map(wall.panels.map((panel) => [panel.id, panel.length]));
    const flashing = pickFlashing(
      input,
      'ends',
      ({ panel, fromX, toX }) => fromX > 0 && toX < (length.get(panel) ?? 0),
    );
    const dam = severity < FLAT ? Math.round(valueAt(boundIn(rules, 'end-dam'), severity, CLEAR)) : 0;
    return withShape(wall, flashing, 'ends', chance.happens(50) ? { leftDam: dam } : { rightDam: dam });
  },
};
