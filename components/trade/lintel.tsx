'use client';

import { writtenDimension } from '../../lib/drawing/dimension';
import { ring } from '../../lib/drawing/rings';
import { lines, solid } from '../../lib/drawing/shape';
import type { Point } from '../../lib/geometry/polygon';
import { formatFineLength } from '../../lib/limits/format-amount';
import {
  type Bending,
  bothLoads,
  selfWeight,
  spanToDeflection,
  triangleWeight,
  triangularBending,
  uniformBending,
} from '../../lib/trade/lintel-bending';
import { type Angle, angleSection, STEEL_DENSITY, STEEL_STIFFNESS } from '../../lib/trade/steel-angle';
import { formatInches, formatLength, type LengthSystem, type Mm } from '../../lib/units';
import type { Picture } from '../drawing/kit-drawing';
import { DrawingFrame, type Working } from './drawing-frame';
import { useFields } from './fields/use-fields';
import { formatNumber, formatQuantity } from './format-number';
import { LintelTable } from './lintel-table';
import { LimitVerdict } from './verdict-item';

const USUAL: Angle = { upright: 88.9, level: 88.9, thickness: 6.35 };
const ANGLES: readonly (readonly [name: string, angle: Angle])[] = [
  ['L89 × 89 × 6.4', USUAL],
  ['L90 × 75 × 6', { upright: 90, level: 75, thickness: 6 }],
  ['L90 × 90 × 6', { upright: 90, level: 90, thickness: 6 }],
  ['L102 × 89 × 6.4', { upright: 101.6, level: 88.9, thickness: 6.35 }],
  ['L127 × 89 × 7.9', { upright: 127, level: 88.9, thickness: 7.9375 }],
  ['L152 × 89 × 7.9', { upright: 152.4, level: 88.9, thickness: 7.9375 }],
];

/** As it is sold: L89 × 89 × 6.4, or L3 1/2 × 3 1/2 × 1/4 in. */
function nameIn(system: LengthSystem, name: string, { upright, level, thickness }: Angle): string {
  if (system === 'mm') return name;
  return `L${[upright, level, thickness].map((mm) => formatInches(mm).replace(' in', '')).join(' × ')} in`;
}

const angleIn = (system: LengthSystem) => ({
  label: 'Angle to look at',
  start: 'L89 × 89 × 6.4',
  choices: ANGLES.map(([name, sizes]) => [name, nameIn(system, name, sizes)] as const),
});
const FIELDS = {
  clear: { label: 'Clear opening', start: 1800, least: 600, most: 6000, step: 10 },
  depth: { label: 'Depth of the veneer', start: 90, least: 70, most: 100, step: 1 },
  storeys: { label: 'Storeys above', unit: 'storeys', whole: true, start: 0, least: 0, most: 2, step: 1 },
  end: { label: 'Bearing at each end', start: 100, least: 50, most: 300, step: 5 },
  rules: 'rules',
  high: { label: 'Height of wall above', start: 2400, least: 200, most: 9000, step: 50 },
  way: {
    label: 'It carries',
    start: 'triangle',
    choices: [
      ['triangle', 'The triangle above it: the wall arches'],
      ['full height', 'Its full height: fresh mortar, or no room to arch'],
    ],
  },
  chosen: angleIn('mm'),
} as const;

/** An opening: which angles the table of a rule set gives; and, apart from it, what a load does to one angle. */
export function Lintel() {
  const given = useFields(FIELDS);
  const { system } = given;
  const { clear, depth, storeys, end, rules, high, way, chosen } = given.values;
  const angle = ANGLES.find(([name]) => name === chosen)?.[1] ?? USUAL;
  const { bending, stress, span, wall } = bendingOf({ clear, end, depth, high, way, angle });
  const length = (mm: Mm) => formatLength(mm, system);
  return (
    <DrawingFrame
      title="Lintel"
      given={{ ...given, fields: { ...FIELDS, chosen: angleIn(system) } }}
      sheet={lintelSheet({ ...given.values, deflection: bending.deflection }, length(clear))}
      note="Shaded: the wall that the lintel is taken to carry. The bend is drawn up to 100 times too large."
      result={[
        'The table of your code or an engineer decides. The sums below only show why.',
        `${nameIn(system, chosen, angle)} over ${length(span)} from middle to middle of its bearings carries ${formatQuantity(wall / 1000, 'kN', system, 2)} of wall. Moment ${formatQuantity(bending.moment / 1e6, 'kN·m', system, 3)}, stress ${formatQuantity(stress, 'MPa', system)}.`,
        `It bends ${formatFineLength(bending.deflection, system)}, 1/${formatNumber(spanToDeflection(span, bending.deflection), 0)} of its span.`,
      ]}
      verdicts={
        <LimitVerdict
          {...{ rules, id: 'lintel-bearing', what: 'Bearing at each end', measured: end, show: length }}
          at={{ span: clear, depth }}
        />
      }
      working={LINTEL_WORKING}
      caution={[
        'Choosing a lintel for a real opening is work for the code table, or for an engineer where it has no row. Never take out a lintel, or prop a wall, on your own.',
      ]}
    >
      <LintelTable {...{ rules, clear, depth, storeys, system }} />
    </DrawingFrame>
  );
}

const WIDE = 420;
const UNDER = 120;
const BEND_DRAWN = 100;

/** The wall over an opening, the part that is taken to weigh on the lintel, and the bent lintel. */
function lintelSheet(
  given: {
    readonly clear: Mm;
    readonly end: Mm;
    readonly high: Mm;
    readonly way: LoadWay;
    readonly deflection: Mm;
  },
  written: string,
): Picture {
  const { clear, end, high, way, deflection } = given;
  const scale = Math.min(260 / (clear + 2 * end), 190 / Math.min(high, clear));
  const left = WIDE / 2 - (clear * scale) / 2;
  const right = WIDE - left;
  const top = Math.min(330, UNDER + high * scale);
  const half = ((clear + end) / 2) * scale;
  const [from, to] = [WIDE / 2 - half, WIDE / 2 + half];
  const sag = Math.min(70, deflection * scale * BEND_DRAWN);
  const load =
    way === 'triangle'
      ? ring(from, UNDER, WIDE / 2, UNDER + half, to, UNDER)
      : ring(from, UNDER, from, top, to, top, to, UNDER);
  const bent = Array.from({ length: 25 }, (_, index): Point => {
    const share = index / 24;
    return [left + (right - left) * share, UNDER - 4 * sag * share * (1 - share)];
  });
  const over = writtenDimension([left, 25], [right, 25], written);
  /** A bed joint every 16 px, for looks only. */
  const beds = Array.from({ length: Math.max(0, Math.ceil((top - UNDER) / 16) - 1) }, (_, index) => {
    const y = UNDER + (index + 1) * 16;
    return ring(10, y, WIDE - 10, y);
  });
  const wall = ring(
    10,
    10,
    10,
    top,
    WIDE - 10,
    top,
    WIDE - 10,
    10,
    right,
    10,
    right,
    UNDER,
    left,
    UNDER,
    left,
    10,
  );
  return {
    name: `Opening of ${written} under ${way === 'triangle' ? 'a triangle of wall' : 'the full height of wall'}`,
    box: { x: 0, y: 0, width: WIDE, height: 350 },
    shapes: [
      solid(wall, '--clay', { paint: '--ink', width: 1 }, 0.16),
      lines(beds, { paint: '--clay', width: 1, opacity: 0.35 }),
      solid(load, '--clay', { paint: '--clay', width: 1.5 }, 0.45),
      lines([[[left - end * scale, UNDER], ...bent, [right + end * scale, UNDER]]], {
        paint: '--chalk',
        width: 6,
      }),
      ...over.shapes,
    ],
    labels: [over.label],
  };
}

/** N/mm³: brickwork at 20 kN/m³, a round figure. */
const BRICKWORK = 20e-6;

type LoadWay = 'triangle' | 'full height';

/** What one angle under a wall has to bear: its own weight counted in `bending`, left out of `wall` (N). Stress in MPa. */
function bendingOf(given: {
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

const LINTEL_WORKING: readonly Working[] = [
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
