import { departureBound } from '../../../limits/bound';
import { limitOf } from '../../../limits/limits';
import { type Mm, snap } from '../../../units';
import { facePlaneOf, padsOf } from '../../../wall/face-plane';
import type { Unit, Wall } from '../../../wall/model';
import { surveyOf } from '../../../wall/survey';
import type { Fault } from '../../fault';
import { departureAt, NoRoom, pickPanel, spotOfPanel } from '../../spoil-input';
import { freeOfSupports } from '../support/support-changes';

/** A trial belly this deep shows how much of its depth a straightedge finds, mm. */
const TRIAL: Mm = 16;
/** Reach of the belly each way, as a share of the panel. */
const REACH = 0.45;

/** What a straightedge tells, and the scatter of faces, mm. */
const CLEAR: Mm = 1.25;

/** Sets the middle of a panel forward (a bulge) or back (a hollow) in a smooth belly. */
export const bulgeOrHollow: Fault = {
  id: 'bulge-or-hollow',
  // At a jamb, and on a return that is short, the slope of a belly would set units off the few beside them.
  kinds: ['plain-panel', 'gable-end'],
  most: 1.7,
  tolerated: 0.9,
  ofFace: true,
  // Beside quoins a unit has too few others for its own slope not to show.
  needs: ['no tall units'],
  spoil: (input) => {
    const { wall, rules, severity, chance } = input;
    const limit = limitOf(rules, 'face-line');
    const panel = pickPanel(input, 'face', freeOfSupports(input));
    if (limit === undefined) throw new NoRoom('face');
    const height = panel.courses * wall.gauge;
    const centre = { x: panel.length / 2, y: height * (panel.gable === null ? 0.5 : 0.4) };
    const belly = (unit: Unit) =>
      bowl((unit.x + unit.length / 2 - centre.x) / (REACH * panel.length)) *
      bowl((unit.y + unit.height / 2 - centre.y) / (REACH * height));
    const pushed = (depth: Mm): Wall => ({
      ...wall,
      units: wall.units.map((unit) =>
        unit.panel === panel.id ? { ...unit, set: unit.set + snap(depth * belly(unit)) } : unit,
      ),
    });
    const wanted = departureAt(departureBound(limit.bound, panel.length), severity, CLEAR);
    const way = chance.happens(50) ? 1 : -1;
    const found = deepestPad(pushed(way * TRIAL), panel.id);
    return { wall: pushed((way * TRIAL * wanted) / found), taken: spotOfPanel(panel, 'face') };
  },
};

/** 1 in the middle, 0 at the rim and beyond, smooth. */
function bowl(away: number): number {
  const left = 1 - away * away;
  return left <= 0 ? 0 : left * left;
}

function deepestPad(wall: Wall, id: string): Mm {
  const panels = wall.panels.filter((panel) => panel.id === id);
  const [survey] = surveyOf({ ...wall, panels }).panels;
  const plane = survey && facePlaneOf(survey.placed);
  if (!survey || !plane) throw new NoRoom('no plane');
  return padsOf(survey, plane).reduce(
    (most, { off }) => (off === null ? most : Math.max(most, Math.abs(off))),
    0,
  );
}
