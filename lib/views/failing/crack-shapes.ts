import { scatterOf } from '../../drawing/drawn-chance';
import type { Area } from '../../drawing/shape';
import { type CrackStep, crackSteps } from '../../failing/state/crack-steps';
import type { FailingWall } from '../../failing/state/model';
import type { Point, Ring } from '../../geometry/polygon';
import type { Mm } from '../../units';

/** A hairline is drawn no finer than this, mm, so that it is seen at all; from there on cracks are as wide as they are. */
const FINEST: Mm = 0.7;
/** A crack wanders no more than this from the middle of its joint, mm. */
const WANDER: Mm = 1.6;
const STEPS = 6;
const DARK = '#15100d';

/** Every crack of a panel: its path, and its width at each place. */
export function crackShapes(failing: FailingWall, panel: string): readonly Area[] {
  const rings = crackSteps(failing)
    .filter((step) => step.panel === panel)
    .map((step) => ringOf(step, failing.survey.wall.joint));
  if (rings.length === 0) return [];
  return [{ kind: 'area', rings, fill: DARK, opacity: 0.92 }];
}

/** A band from end to end of a step, about its middle, where the two sides stand now; what goes through a course goes through the bed under it. */
function ringOf({ part, kind, from, to, widths, gone }: CrackStep, bed: Mm): Ring {
  const [fx, fy] = [from[0] + gone.u, from[1] + gone.v - (kind === 'bed' ? 0 : bed)];
  const [tx, ty] = [to[0] + gone.u, to[1] + gone.v];
  const one: Point[] = [];
  const other: Point[] = [];
  for (let step = 0; step <= STEPS; step++) {
    const along = step / STEPS;
    const wide = Math.max(FINEST, widths[0] + (widths[1] - widths[0]) * along) / 2;
    const off = step === 0 || step === STEPS ? 0 : scatterOf(part, 300 + step, WANDER);
    const ragged = scatterOf(part, 320 + step, Math.min(0.8, wide * 0.3));
    const [x, y] = [fx + (tx - fx) * along, fy + (ty - fy) * along];
    if (kind === 'bed') {
      one.push([x, y + off + wide + ragged]);
      other.push([x, y + off - wide]);
    } else {
      one.push([x + off - wide - ragged, y]);
      other.push([x + off + wide, y]);
    }
  }
  return [...one, ...other.reverse()];
}
