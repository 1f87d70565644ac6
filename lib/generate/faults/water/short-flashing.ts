import { snap } from '../../../units';
import { supportsUnder } from '../../../wall/drainage';
import { surveyOf } from '../../../wall/survey';
import type { Fault } from '../../fault';
import { boundIn, NoRoom, valueAt } from '../../spoil-input';
import { pickFlashing, withShape } from './flashing-changes';

/** What a tape tells, mm. */
const CLEAR = 2.25;
/** From this severity on it stops inside the edge, by so much for each whole one, mm. */
const INSIDE = 2;
const INSIDE_BY = 8;

/** One flashing cut back: hardly past the edge under it, or inside. */
export const shortFlashing: Fault = {
  id: 'short-flashing',
  masonry: 'anchored',
  spoil: (input) => {
    const { wall, rules, severity } = input;
    const flashing = pickFlashing(input, 'edge');
    const panel = surveyOf(wall).panels.find((each) => each.panel.id === flashing.panel);
    const edges = panel ? supportsUnder(wall, panel, flashing).map(({ front }) => front) : [];
    if (edges.length === 0) throw new NoRoom('nothing under the flashing');
    const past = valueAt(boundIn(rules, 'flashing-past-face'), severity, CLEAR);
    const front = Math.max(...edges) + (severity < INSIDE ? past : -INSIDE_BY * severity);
    return withShape(wall, flashing, 'edge', { front: snap(front) });
  },
};
