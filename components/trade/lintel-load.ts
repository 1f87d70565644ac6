import {
  type Bending,
  bothLoads,
  selfWeight,
  triangleWeight,
  triangularBending,
  uniformBending,
} from '../../lib/trade/lintel-bending';
import { type Angle, angleSection, STEEL_DENSITY, STEEL_STIFFNESS } from '../../lib/trade/steel-angle';
import type { Mm } from '../../lib/units';
import type { Working } from './drawing-frame';

/** N/mm³: brickwork at 20 kN/m³, a round figure. */
const BRICKWORK = 20e-6;

export type LoadWay = 'triangle' | 'full height';

/** What one angle under a wall has to bear: its own weight counted in `bending`, left out of `wall` (N). Stress in MPa. */
export function bendingOf(given: {
  readonly clear: Mm;
  readonly end: Mm;
  readonly depth: Mm;
  readonly high: Mm;
  readonly way: LoadWay;
  readonly angle: Angle;
}): { readonly bending: Bending; readonly stress: number; readonly span: Mm; readonly wall: number } {
  const { clear, end, depth, high, way, angle } = given;
  const section = angleSection(angle);
  const stiffness = { elastic: STEEL_STIFFNESS, inertia: section.inertia };
  const span = clear + end;
  const weight = depth * BRICKWORK;
  const above =
    way === 'triangle'
      ? triangularBending(triangleWeight(weight, span), span, stiffness)
      : uniformBending(weight * high, span, stiffness);
  const own = uniformBending(selfWeight(section.area, STEEL_DENSITY), span, stiffness);
  const bending = bothLoads(above, own);
  return { bending, stress: bending.moment / section.modulus, span, wall: above.load };
}

export const LINTEL_WORKING: readonly Working[] = [
  {
    what: 'Triangle',
    formula:
      'W = q L² ÷ 4; moment W L ÷ 6; bend W L³ ÷ (60 E I). Only where the wall can arch: enough of it above and beside, mortar hardened, nothing heavy set down low.',
    source: 'elementary beam formulas; UFC 3-310-05A, lintel example 1',
  },
  {
    what: 'Full height',
    formula:
      'w = q H; moment w L² ÷ 8; bend 5 w L⁴ ÷ (384 E I). Fresh mortar does not arch: prop the lintel, or reckon so.',
    source: 'elementary beam formulas; the same manual, example 2',
  },
  {
    what: 'The angle',
    formula:
      'Two rectangles with sharp corners; E 200 000 MPa (29 000 000 psi); own weight 7850 kg/m³ (490 lb/cu ft); stress = moment ÷ section modulus. L from middle to middle of the bearings.',
    source: 'geometry; within a few per cent of rolled sections',
  },
  {
    what: 'Weight of the wall',
    formula: 'q = depth × 20 kN/m³ (127 lbf/cu ft).',
    source: 'round figure for brickwork',
  },
];
