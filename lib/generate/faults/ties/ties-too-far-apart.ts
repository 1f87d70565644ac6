import { boundAt, smallOpening } from '../../../limits/bound';
import { limitOf, limitsUnder } from '../../../limits/limits';
import { surveyOf } from '../../../wall/survey';
import { awayFrom, inSpan, tieEdgesOf } from '../../../wall/tie-field';
import type { Fault } from '../../fault';
import { NoRoom } from '../../spoil-input';
import { renumbered } from './tie-changes';

/** Leaves out one or more rows of ties in the field of a panel; the ties that serve its edges stay. */
export const tiesTooFarApart: Fault = {
  id: 'ties-too-far-apart',
  masonry: 'anchored',
  spoil: ({ wall, rules, severity, chance, taken }) => {
    const reach = limitOf(rules, 'tie-edge-distance');
    const surveys = surveyOf(wall).panels.filter(
      ({ ties, panel }) => ties.length > 0 && !taken.some((spot) => spot.panel === `${panel.id}-ties`),
    );
    if (reach === undefined || surveys.length === 0) throw new NoRoom('no tie field left');
    const survey = chance.pick(surveys);
    const edges = tieEdgesOf(survey, smallOpening(limitsUnder(rules)));
    const away = boundAt(reach, {});
    // On quoins ties have rows of their own.
    const onQuoin = (x: number) =>
      survey.placed.some(({ unit }) => unit.kind === 'quoin' && x >= unit.x && x <= unit.x + unit.length);
    const field = survey.ties.filter(
      (tie) =>
        !onQuoin(tie.x) &&
        !edges.some(
          (edge) => awayFrom(edge, tie.x) >= 0 && awayFrom(edge, tie.x) <= away && inSpan(edge, tie.y),
        ),
    );
    const rows = [...new Set(field.map(({ course }) => course))].sort((a, b) => a - b);
    // Not the lowest row; not the top one either, nor those along a rake, where other ties stand near.
    const { gable } = survey.panel;
    const inner =
      gable === null ? rows.slice(1, -1) : rows.slice(1).filter((course) => course < gable.fromCourse - 1);
    const missing = Math.min(severity >= 2.5 ? 2 : 1, inner.length);
    if (missing < 1) throw new NoRoom('too few rows of ties');
    const first = chance.whole(0, inner.length - missing);
    const left = new Set(inner.slice(first, first + missing));
    const gone = new Set(field.filter(({ course }) => left.has(course)).map(({ id }) => id));
    return {
      wall: { ...wall, ties: renumbered(wall.ties.filter(({ id }) => !gone.has(id))) },
      taken: { panel: `${survey.panel.id}-ties`, x: 0, y: 0, width: 0, height: 0 },
    };
  },
};
