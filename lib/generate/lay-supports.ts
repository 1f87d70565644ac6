import { angleVerdict, boundAt, overhangBound } from '../limits/bound';
import { limitOf, limitsUnder } from '../limits/limits';
import { type Mm, snap } from '../units';
import type { Angle, Opening, Support } from '../wall/model';
import { ledgeId, lintelId } from '../wall/part-id';
import { type Draft, lengthOf, type PanelDraft } from './draft';

/** Concrete ledge under a whole panel. Its edge lies back from the face by a sound overhang; by more, still within a third, as a look-alike. */
export function layLedge(draft: Draft, panel: PanelDraft): Support {
  const { depth } = draft.out.family;
  const bound = overhangBound(limitsUnder(draft.plan.rules), depth);
  const share = draft.plan.lookAlikes.includes('overhang-within-a-third')
    ? 0.56
    : draft.chance.whole(0, 3) / 10;
  return {
    id: ledgeId(panel.id),
    panel: panel.id,
    kind: 'ledge',
    material: 'concrete',
    fromX: -PAST_END,
    toX: lengthOf(draft, panel.modules) + PAST_END,
    y: 0,
    back: -snap(depth + CAVITY + 40),
    front: -snap(bound * share),
  };
}

/** A ledge runs on past the ends of its panel, mm. */
const PAST_END: Mm = 20;

/** Clear air space: over the 25 mm of NBC 9.20.6.4 and the IRC; 50 mm is what BIA 28B and the NHBC ask. */
export const CAVITY: Mm = 50;

/** A loose steel angle with a good bearing each end: the first listed size that serves the opening with a tenth to spare. */
export function layLintel(draft: Draft, opening: Opening, storeysAbove: number): Support {
  const { plan, out, chance } = draft;
  const bearingLimit = limitOf(plan.rules, 'lintel-bearing');
  const least = bearingLimit ? boundAt(bearingLimit, { span: opening.width }) : 0;
  const bearing = () => snap((least * chance.whole(112, 175)) / 100);
  const angle = angleFor(draft, opening.width, storeysAbove);
  const { depth } = out.family;
  const lip = plan.lookAlikes.includes('hidden-angle')
    ? snap(overhangBound(limitsUnder(plan.rules), depth) * 0.5)
    : 5;
  return {
    id: lintelId(opening.panel),
    panel: opening.panel,
    kind: 'lintel',
    material: 'steel',
    fromX: opening.x - bearing(),
    toX: opening.x + opening.width + bearing(),
    y: opening.y + opening.height,
    back: snap(-lip - angle.horizontal),
    front: -lip,
    angle,
    opening: opening.id,
  };
}

/** Used where the rule set has no table: 102 × 89 × 7.9, over the leg and thickness of good practice. */
const PLAIN_ANGLE: Angle = { vertical: 102, horizontal: 89, thickness: 7.9 };

function angleFor(draft: Draft, span: Mm, storeys: number): Angle {
  const table = limitOf(draft.plan.rules, 'angle-size');
  if (table === undefined || table.bound.form !== 'angle-table') return PLAIN_ANGLE;
  const at = { depth: draft.out.family.depth, storeys };
  for (const { vertical, horizontal, thickness } of table.bound.rows) {
    const angle = { vertical, horizontal, thickness };
    if (angleVerdict(table.bound, angle, span * 1.1, at).passes) return angle;
  }
  throw new RangeError(`lintel: no listed angle spans ${span} mm`);
}
