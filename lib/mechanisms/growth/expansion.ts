import type { Season } from '../../failing/state/model';
import type { PanelSurvey } from '../../wall/survey';
import { shift } from '../draft';
import { between, type Mechanism, mustStand, type Site, shareAfter } from '../mechanism';
import { pushedAlong } from '../parting/field';
import { tearApart } from '../parting/part';
import { weakestPath } from '../parting/weakest-path';

/** Growth of clay brick by moisture, for good, and by heat per °C: BIA Technical Note 18, 2006, summary. */
export const MOISTURE_GROWTH = 5e-4;
export const HEAT_GROWTH = 7.2e-6;
/** How much warmer than on the day it was laid, °C: half of the 100 °F (55.6 °C) of the same note to either side. */
export const WARMER: Readonly<Record<Season, number>> = { spring: 0, summer: 27.8, autumn: 0, winter: -27.8 };

/** How much longer a run has become, mm. */
export function grownBy(run: number, moisture: number, warmer: number): number {
  return (MOISTURE_GROWTH * moisture + HEAT_GROWTH * warmer) * run;
}

/** A long run with no joint in it grows toward its corner and pushes the end of the short return out. */
export const CLAY_EXPANSION: Mechanism = {
  name: 'clay-expansion',
  what: 'clay brick grows for good, and with no joint to take it up the run pushes the return out at its corner',
  showsAfter: 8,
  lacks: (survey, main) =>
    mustStand(survey) ?? (returnOf(survey.panels, main) === null ? 'a wall with a corner' : null),
  act: ({ survey, main, draft, chance, years, season }) => {
    const at = returnOf(survey.panels, main);
    if (at === null) return;
    const { length } = main.panel;
    // The far end butts against something that does not give: all of the growth goes to the corner.
    draft.held.push(`${main.panel.id}-${at.isRight ? 'left' : 'right'}-end`);
    const grown = grownBy(length, shareAfter(years, 2) * between(chance, 1, 1.3), WARMER[season]);
    for (const { unit } of main.placed) {
      const along = (unit.x + unit.length / 2) / length;
      shift(draft, unit.id, { u: at.isRight ? grown * along : -grown * (1 - along) });
    }
    pushOut({ draft, chance, survey }, at, grown);
  },
};

interface Return {
  readonly panel: PanelSurvey;
  /** The corner is at the right end of the main panel. */
  readonly isRight: boolean;
}

function returnOf(panels: readonly PanelSurvey[], main: PanelSurvey): Return | null {
  const index = panels.indexOf(main);
  const before = panels[index - 1];
  const after = panels[index + 1];
  if (main.panel.leftEnd === 'corner' && before !== undefined) return { panel: before, isRight: false };
  if (main.panel.rightEnd === 'corner' && after !== undefined) return { panel: after, isRight: true };
  return null;
}

/** The return turns in plan about its first perpends from the corner: a gap on the face of depth × push ÷ width, and a step out that grows to the corner. */
function pushOut(
  { draft, chance, survey }: Pick<Site, 'draft' | 'chance' | 'survey'>,
  at: Return,
  push: number,
): void {
  const { panel, isRight } = at;
  const { length, depth } = survey.wall.family;
  const width = length * 1.25;
  const x = isRight ? width : panel.panel.length - width;
  const gap = (depth * push) / width;
  const corner = pushedAlong(isRight ? -gap : gap);
  const rest = pushedAlong(0);
  const left = isRight ? corner : rest;
  const right = isRight ? rest : corner;
  const tear = {
    left,
    right,
    unitStrength: between(chance, 0.6, 1.4),
    bond: between(chance, 0.6, 1),
    reach: length * 1.2,
  };
  const parting = weakestPath(panel, survey.wall.joint, x, tear);
  if (parting === null) return;
  tearApart(draft, panel, parting, left, right);
  for (const { unit } of panel.placed) {
    const pass = parting.passes[unit.course - 1];
    if (pass === null || pass === undefined) continue;
    const middle = unit.x + unit.length / 2;
    const beyond = isRight ? pass.x - middle : middle - pass.x;
    if (beyond <= 0) continue;
    shift(draft, unit.id, { w: (push * beyond) / width });
  }
}
