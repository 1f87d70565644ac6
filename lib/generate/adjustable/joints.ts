import { boundAt } from '../../limits/bound';
import { snap } from '../../units';
import { bedId, headId } from '../../wall/part-id';
import { withUnits } from '../draft';
import { unitBeside } from '../spoil-input';
import { type Departure, twice, unitNow } from './departure';

const EIGHTH = 0.125;
const PERCENT = 5;

/** The joints of single units: all others stay as they are. */
export const JOINT_DEPARTURES: readonly Departure[] = [
  {
    id: 'head-joint',
    family: 'Joints',
    name: 'Width of one head joint',
    checks: ['thick-joint', 'thin-joint'],
    unit: 'mm',
    limit: 'head-joint-most',
    fit: (wall, limit, { head }) => {
      const beside = unitBeside(wall, head, 1);
      const sound = beside.x - head.x - head.length;
      return {
        at: headId(head.id, beside.position),
        sound,
        most: twice(boundAt(limit, {}), sound, EIGHTH),
        step: EIGHTH,
        // Its left unit is cut shorter or longer: nothing else moves.
        change: (now, value) => {
          const left = unitNow(now, head);
          const right = unitNow(now, beside);
          return withUnits(now, new Map([[left.id, { ...left, length: right.x - snap(value) - left.x }]]));
        },
      };
    },
  },
  {
    id: 'taper',
    family: 'Joints',
    name: 'Taper of one bed joint',
    checks: ['tapering-bed'],
    unit: 'mm',
    limit: 'bed-taper',
    fit: (_, limit, { taper }) => {
      return {
        at: bedId(taper.id),
        sound: 0,
        most: twice(boundAt(limit, {}), 0, EIGHTH),
        step: EIGHTH,
        change: (now, value) => {
          const unit = unitNow(now, taper);
          const fall = snap(value);
          return withUnits(now, new Map([[unit.id, { ...unit, fall, y: snap(unit.y + fall / 2) }]]));
        },
      };
    },
  },
  {
    id: 'fill',
    family: 'Joints',
    name: 'Filling of one head joint',
    checks: ['open-head'],
    unit: '%',
    limit: 'head-fill',
    fit: (wall, _limit, { fill }) => {
      if (wall.masonry !== 'anchored') return null;
      const joint = headId(fill.id, fill.position + 1);
      return {
        at: joint,
        sound: 100,
        most: 100,
        step: PERCENT,
        change: (now, value) => ({ ...now, heads: [...now.heads, { joint, filled: value }] }),
      };
    },
  },
];
