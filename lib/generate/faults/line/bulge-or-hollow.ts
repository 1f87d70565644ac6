import { departureBound } from '../../../limits/bound';
import { limitOf } from '../../../limits/limits';
import { type Mm, snap } from '../../../units';
import { facePlaneOf, padsOf } from '../../../wall/face-plane';
import type { Unit, Wall } from '../../../wall/model';
import { surveyOf } from '../../../wall/survey';
import { type Fault, NO_OPENING } from '../../fault';
import { NoRoom, spotOfPanel } from '../../spoil-input';

/** A trial belly this deep shows how much of its depth a straightedge finds, mm. */
const TRIAL: Mm = 16;
/** Reach of the belly each way, as a share of the panel. */
const REACH = 0.45;

/** Sets the middle of a panel forward (a bulge) or back (a hollow) in a smooth belly. */
export const bulgeOrHollow: Fault = {
  id: 'bulge-or-hollow',
  kinds: NO_OPENING,
  masonry: ['anchored', 'adhered'],
  most: 1.9,
  spoil: ({ wall, rules, severity, chance, taken }) => {
    const limit = limitOf(rules, 'face-line');
    const panel = chance.pick(wall.panels);
    if (limit === undefined || taken.some((spot) => spot.panel === panel.id)) throw new NoRoom('face');
    if (wall.openings.some((opening) => opening.panel === panel.id)) throw new NoRoom('openings');
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
    const wanted = departureBound(limit.bound, panel.length) * severity;
    const way = chance.happens(50) ? 1 : -1;
    const found = deepestPad(pushed(way * TRIAL), panel.id);
    return { wall: pushed((way * TRIAL * wanted) / found), taken: spotOfPanel(panel) };
  },
};

/** 1 in the middle, 0 at the rim and beyond, smooth. */
function bowl(away: number): number {
  const left = 1 - away * away;
  return left <= 0 ? 0 : left * left;
}

function deepestPad(wall: Wall, id: string): Mm {
  const survey = surveyOf(wall).panels.find(({ panel }) => panel.id === id);
  const plane = survey && facePlaneOf(survey.placed);
  if (!survey || !plane) throw new NoRoom('no plane');
  return padsOf(survey, plane).reduce(
    (most, { off }) => (off === null ? most : Math.max(most, Math.abs(off))),
    0,
  );
}
