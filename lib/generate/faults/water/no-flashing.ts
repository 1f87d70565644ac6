import { weepsOf } from '../../../wall/drainage';
import { surveyOf } from '../../../wall/survey';
import type { Fault } from '../../fault';
import { flashingSpot, pickFlashing } from './flashing-changes';

/** Leaves one flashing out, and with it the weeps that would stand on it and what would lie there. */
export const noFlashing: Fault = {
  id: 'no-flashing',
  masonry: 'anchored',
  spoil: (input) => {
    const { wall } = input;
    const flashing = pickFlashing(input, 'all');
    const survey = surveyOf(wall);
    const weeps = new Set(
      survey.panels.flatMap((panel) => weepsOf(survey, panel, flashing).map(({ id }) => id)),
    );
    return {
      wall: {
        ...wall,
        flashings: wall.flashings.filter((each) => each !== flashing),
        heads: wall.heads.filter(({ joint }) => !weeps.has(joint)),
        droppings: (wall.droppings ?? []).filter(
          ({ panel, y }) => panel !== flashing.panel || Math.abs(y - flashing.y) > wall.gauge,
        ),
      },
      taken: flashingSpot(wall, flashing, 'weeps'),
    };
  },
};
