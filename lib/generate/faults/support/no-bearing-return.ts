import type { Support, Wall } from '../../../wall/model';
import { secondLedgeId } from '../../../wall/part-id';
import type { Fault } from '../../fault';
import { NoRoom } from '../../spoil-input';
import { replaceSupport, supportSpot } from './support-changes';

/** Stops one ledge short of the end of its panel, with nothing or with wood under the rest; in sound work the rest has a ledge of its own. The return, where there is one. */
export const noBearingReturn: Fault = {
  id: 'no-bearing-return',
  masonry: 'anchored',
  tolerated: 0.95,
  spoil: ({ wall, severity, chance, taken }) => {
    const panel = wall.panels[wall.panels.length - 1];
    const ledge = wall.supports.find((support) => support.kind === 'ledge' && support.panel === panel?.id);
    if (ledge === undefined || taken.some((spot) => spot.panel === ledge.id))
      throw new NoRoom('no ledge left');
    const first = wall.units.filter((unit) => unit.panel === ledge.panel && unit.course === 1);
    const loose = severity < 1 ? chance.whole(1, 4) : Math.min(first.length - 2, Math.round(severity));
    const atLeft = panel?.leftEnd === 'free' && chance.happens(50);
    const [from, to] = atLeft ? endOfLeft(first, loose) : endOfRight(first, loose);
    const kept: Support = atLeft ? { ...ledge, fromX: to } : { ...ledge, toX: from };
    const second: Support = {
      ...ledge,
      id: secondLedgeId(ledge.panel),
      material: severity < 1 ? 'concrete' : 'wood',
      // What carries the end carries it to the end, and begins where the first piece stops.
      ...(severity < 1 ? (atLeft ? { toX: to } : { fromX: from }) : { fromX: from, toX: to }),
    };
    const two = severity < 1 || chance.happens(50);
    return { wall: replaceSupport(wall, ledge, two ? [kept, second] : [kept]), taken: supportSpot(ledge) };
  },
};

/** The stretch under the last `count` units, from the head joint before them to the ledge's end. */
function endOfRight(first: Wall['units'], count: number): readonly [number, number] {
  const before = first[first.length - count - 1];
  const last = first[first.length - 1];
  if (before === undefined || last === undefined) throw new NoRoom('course too short');
  return [before.x + before.length, last.x + last.length];
}

function endOfLeft(first: Wall['units'], count: number): readonly [number, number] {
  const after = first[count];
  if (after === undefined) throw new NoRoom('course too short');
  return [first[0]?.x ?? 0, after.x];
}
