import { snap } from '../../../units';
import { isOver, weepsOf } from '../../../wall/drainage';
import type { Droppings, Flashing } from '../../../wall/flashing';
import { isTall } from '../../../wall/model';
import { surveyOf } from '../../../wall/survey';
import type { Fault } from '../../fault';
import { boundIn, NoRoom, valueAt } from '../../spoil-input';
import { flashingSpot, pickFlashing } from './flashing-changes';

/** What a wire tells, mm. */
const CLEAR = 2;
/** How far a heap reaches to either side of the weep, in hundredths of a unit. */
const ASIDE = [40, 90] as const;

/** A heap of droppings behind one weep, as high as it or nearly. */
export const blockedWeep: Fault = {
  id: 'blocked-weep',
  masonry: 'anchored',
  spoil: (input) => {
    const { wall, rules, severity, chance } = input;
    const survey = surveyOf(wall);
    const weepsOn = (flashing: Flashing) =>
      survey.panels
        .flatMap((panel) => weepsOf(survey, panel, flashing))
        .filter(({ left, right }) => !isTall(left.unit) && !isTall(right.unit));
    // Over an opening the upright leg of the steel keeps droppings off the weeps.
    const isAtFoot = (flashing: Flashing) =>
      wall.supports.some((support) => support.kind === 'ledge' && isOver(flashing, support, wall.gauge));
    const flashing = pickFlashing(input, 'weeps', (each) => isAtFoot(each) && weepsOn(each).length > 0);
    const weeps = weepsOn(flashing);
    if (weeps.length === 0) throw new NoRoom('no weep left');
    const { left, middle } = chance.pick(weeps);
    const { unit } = left;
    const open = valueAt(boundIn(rules, 'weep-size'), severity, CLEAR);
    const aside = () => (wall.family.length * chance.whole(...ASIDE)) / 100;
    const heap: Droppings = {
      panel: unit.panel,
      y: flashing.y,
      height: snap(unit.y - unit.fall + unit.height - Math.max(0, open) - flashing.y),
      fromX: snap(middle - aside()),
      toX: snap(middle + aside()),
    };
    return {
      wall: { ...wall, droppings: [...(wall.droppings ?? []), heap] },
      taken: flashingSpot(wall, flashing, 'weeps'),
    };
  },
};
