import { weepGapsOf, weepsOf } from '../../../wall/drainage';
import { surveyOf } from '../../../wall/survey';
import type { Fault } from '../../fault';
import { boundIn, NoRoom } from '../../spoil-input';
import { flashingSpot, pickFlashing } from './flashing-changes';

/** What a tape tells, mm. */
const CLEAR = 5;

/** Leaves out as many weeps in a row as make one stretch too long: by the severity, or as near over the limit as the weeps stand. */
export const weepsTooFarApart: Fault = {
  id: 'weeps-too-far-apart',
  masonry: 'anchored',
  spoil: (input) => {
    const { wall, rules, severity, chance } = input;
    const most = boundIn(rules, 'weep-spacing');
    const survey = surveyOf(wall);
    const flashing = pickFlashing(input, 'weeps');
    const panel = survey.panels.find((each) => each.panel.id === flashing.panel);
    if (panel === undefined) throw new NoRoom('no panel');
    const weeps = weepsOf(survey, panel, flashing).map(({ id }) => id);
    const longestWithout = (left: ReadonlySet<string>) => {
      const heads = wall.heads.filter(({ joint }) => !left.has(joint));
      return Math.max(
        ...weepGapsOf({ ...survey, wall: { ...wall, heads } }, panel, flashing).map(
          ({ from, to }) => to - from,
        ),
      );
    };
    const choices = weeps.flatMap((_, start) =>
      weeps.slice(start).map((_, more) => {
        const left = new Set(weeps.slice(start, start + more + 1));
        return { left, longest: longestWithout(left) };
      }),
    );
    const over = choices.filter(({ longest }) => longest > most + CLEAR);
    if (over.length === 0) throw new NoRoom('no stretch would be too long');
    const away = (longest: number) => Math.abs(longest - most * severity);
    const nearest = Math.min(...over.map(({ longest }) => away(longest)));
    const { left } = chance.pick(over.filter(({ longest }) => away(longest) - nearest < CLEAR));
    return {
      wall: { ...wall, heads: wall.heads.filter(({ joint }) => !left.has(joint)) },
      taken: flashingSpot(wall, flashing, 'weeps'),
    };
  },
};
