import { boundAt, smallOpening } from '../../../limits/bound';
import { limitOf, limitsUnder } from '../../../limits/limits';
import { surveyOf } from '../../../wall/survey';
import { awayFrom, inSpan, tieEdgesOf } from '../../../wall/tie-field';
import type { Fault } from '../../fault';
import { NoRoom } from '../../spoil-input';
import { renumbered } from './tie-changes';

/** A wanted miss: the next ties must stand this much past the limit, or the edge is no clear case. */
const CLEARLY_PAST = 1.35;

/** Leaves out every tie that serves one jamb or free end. */
export const noTieAtEdge: Fault = {
  id: 'no-tie-at-edge',
  masonry: 'anchored',
  spoil: ({ wall, rules, chance, taken }) => {
    const distance = limitOf(rules, 'tie-edge-distance');
    if (distance === undefined) throw new NoRoom('no edge distance');
    const reach = boundAt(distance, {});
    const bare = surveyOf(wall).panels.flatMap((survey) => {
      const edges = tieEdgesOf(survey, smallOpening(limitsUnder(rules)));
      return edges.flatMap((edge) => {
        const beside = survey.ties.filter((tie) => awayFrom(edge, tie.x) >= 0 && inSpan(edge, tie.y));
        const serving = beside.filter((tie) => awayFrom(edge, tie.x) <= reach);
        const next = beside
          .filter((tie) => awayFrom(edge, tie.x) > reach)
          .reduce((least, tie) => Math.min(least, awayFrom(edge, tie.x)), Number.POSITIVE_INFINITY);
        const others = edges.filter((other) => other !== edge);
        const shared = serving.some((tie) =>
          others.some(
            (other) => awayFrom(other, tie.x) >= 0 && awayFrom(other, tie.x) <= reach && inSpan(other, tie.y),
          ),
        );
        const clear =
          next >= reach * CLEARLY_PAST && next < survey.panel.length && serving.length > 0 && !shared;
        return clear && !taken.some((spot) => spot.panel === `${survey.panel.id}-ties`)
          ? [{ survey, serving }]
          : [];
      });
    });
    if (bare.length === 0) throw new NoRoom('no edge to leave bare');
    const { survey, serving } = chance.pick(bare);
    const gone = new Set(serving.map(({ id }) => id));
    return {
      wall: { ...wall, ties: renumbered(wall.ties.filter(({ id }) => !gone.has(id))) },
      taken: { panel: `${survey.panel.id}-ties`, x: 0, y: 0, width: 0, height: 0 },
    };
  },
};
