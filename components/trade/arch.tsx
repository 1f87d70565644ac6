'use client';

import { writtenDimension } from '../../lib/drawing/dimension';
import { polygon } from '../../lib/drawing/shape';
import type { Point, Ring } from '../../lib/geometry/polygon';
import { type ArchSetOut, type ArchShape, archThrust, setOutArch } from '../../lib/trade/arch';
import { formatLength, type LengthSystem, MM_PER_M, type Mm } from '../../lib/units';
import type { Picture } from '../drawing/kit-drawing';
import { DrawingFrame, type Working } from './drawing-frame';
import { useFields } from './fields/use-fields';
import { formatQuantity } from './format-number';
import { LimitVerdict } from './verdict-item';

const FIELDS = {
  span: { label: 'Span, jamb to jamb', start: 1200, least: 400, most: 1800, step: 10 },
  rise: { label: 'Rise at the middle', start: 150, least: 30, most: 900, step: 5 },
  ring: { label: 'Depth of the ring', start: 200, least: 90, most: 400, step: 5 },
  unit: { label: 'Thickness of a unit', start: 57, least: 40, most: 100, step: 0.5 },
  joint: { label: 'Thin joint wished for', start: 8, least: 3, most: 20, step: 0.5 },
  thick: { label: 'Thickness of the wall', start: 90, least: 50, most: 300, step: 1 },
  rules: 'rules',
} as const;

const WORKING: readonly Working[] = [
  {
    what: 'Radius',
    formula: '(span² ÷ 4 + rise²) ÷ (2 × rise).',
    source: 'the circle through both springings and the crown',
  },
  {
    what: 'Joints',
    formula: '(length of the curve − all units) ÷ (units + 1), at the underside and at the back.',
    source: 'units are whole and alike, so the joints are the wedges',
  },
  {
    what: 'Push outward',
    formula: 'Moment of a beam of the same span, wL² ÷ 8 + WL ÷ 6, divided by the rise.',
    source:
      'statics of an arch with three hinges: its own ring and a triangle of brickwork at 45°, 1900 kg/m³',
  },
];

/** A segmental arch laid out on the ground: its circle, its odd number of units, the joints that come of it, and how hard it pushes. */
export function Arch() {
  const given = useFields(FIELDS);
  const { system } = given;
  const { joint, thick, rules, ...shape } = given.values;
  const length = (mm: Mm) => formatLength(mm, system);
  const rise = Math.min(shape.rise, shape.span / 2);
  const set = setOutArch({ ...shape, rise }, joint);
  return (
    <DrawingFrame
      title="Arch"
      given={{
        ...given,
        fields: { ...FIELDS, rise: { ...FIELDS.rise, most: Math.floor(shape.span / 2) } },
        values: { ...given.values, rise },
      }}
      sheet={archSheet({ ...shape, rise }, set, system)}
      note="From in front. The key stands in the middle; the slopes at both ends are the skewbacks."
      result={[
        `Strike a circle of ${length(set.radius)}. It takes ${set.count} units, so the middle one is the key.`,
        `The joints are ${length(set.inside)} at the underside and ${length(set.outside)} at the back.`,
        `Each side is pushed outward with about ${formatQuantity(archThrust({ ...shape, rise }, thick) / 1000, 'kN', system, 2)}. A flatter arch pushes harder.`,
      ]}
      verdicts={[
        <LimitVerdict
          key="arch-joint"
          {...{ rules, id: 'arch-joint', what: 'Joint at the underside', measured: set.inside, show: length }}
        />,
        <LimitVerdict
          key="minor-arch"
          {...{ rules, id: 'minor-arch', what: 'Span of a small arch', measured: shape.span / MM_PER_M }}
          show={(metres) => length(metres * MM_PER_M)}
        />,
      ]}
      working={WORKING}
      caution={[
        'An arch needs wall enough at both sides to take its push, and its frame under it until the mortar is strong. An engineer decides on both.',
      ]}
    />
  );
}

/** Under the springing, on the sheet. */
const FOOT = 96;
/** Width of the sheet, and room beside the arch for the wall it leans on, as a share of the span. */
const WIDE = 420;
const BESIDE = 0.22;

/** The arch between its jambs, with its span and rise. */
function archSheet(
  { span, rise, ring, unit }: ArchShape,
  { radius, half, count, inside }: ArchSetOut,
  system: LengthSystem,
): Picture {
  const out = radius + ring;
  const reach = out * Math.sin(half) + BESIDE * span;
  const perMm = WIDE / (2 * reach);
  /** A point of the arch on the sheet: so far from the centre, turned so far from upright. */
  const at = (distance: Mm, turn: number): Point => [
    WIDE / 2 + distance * Math.sin(turn) * perMm,
    FOOT + (rise - radius + distance * Math.cos(turn)) * perMm,
  ];
  const step = (unit + inside) / radius;
  const wedges = Array.from({ length: count }, (_, index): Ring => {
    const turn = (index - (count - 1) / 2) * step;
    // A unit keeps its thickness from the underside to the back.
    const [near, far] = [unit / 2 / radius, unit / 2 / out];
    return [at(radius, turn - near), at(radius, turn + near), at(out, turn + far), at(out, turn - far)];
  });
  const turns = Array.from({ length: 25 }, (_, index) => half * (index / 12 - 1));
  const curve = (distance: Mm, from: readonly number[]) => from.map((turn) => at(distance, turn));
  const [, top] = at(out, 0);
  const wall = (side: 1 | -1): Ring => {
    const edge = side === 1 ? WIDE : 0;
    const [jamb, springing] = at(radius, side * half);
    const [back, high] = at(out, side * half);
    // The slope that the arch leans on is the skewback.
    return [
      [jamb, 0],
      [jamb, springing],
      [back, high],
      [back, top],
      [edge, top],
      [edge, 0],
    ];
  };
  const [left] = at(radius, -half);
  const [right, springing] = at(radius, half);
  const over = writtenDimension([left, 26], [right, 26], formatLength(span, system));
  const up = writtenDimension([WIDE / 2, springing], at(radius, 0), formatLength(rise, system));
  return {
    name: `An arch of ${count} units over ${formatLength(span, system)}, ${formatLength(rise, system)} high at the middle`,
    box: { x: 0, y: 0, width: WIDE, height: top + 12 },
    shapes: [
      ...([1, -1] as const).flatMap((side) => [
        polygon(wall(side), 'url:unit2a'),
        polygon(wall(side), 'url:fleck'),
      ]),
      polygon([...curve(radius, turns), ...curve(out, turns.toReversed())], 'url:mortar'),
      ...wedges.map((wedge, index) => polygon(wedge, `url:unit${(index * 5) % 8}a`)),
      { kind: 'area', rings: wedges, fill: 'url:fleck' },
      {
        kind: 'area',
        rings: [wedges[(count - 1) / 2] ?? []],
        pen: { paint: '--chalk', width: 2.5, thin: true },
      },
      ...over.shapes,
      ...up.shapes,
    ],
    labels: [over.label, up.label],
  };
}
