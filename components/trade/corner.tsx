'use client';

import { labelAt, lines } from '../../lib/drawing/shape';
import type { Point } from '../../lib/geometry/polygon';
import { formatAmount } from '../../lib/limits/format-amount';
import { cornerOf, offAtEnd, squareDiagonal } from '../../lib/trade/corner-square';
import { formatLength, inches, type LengthSystem, type Mm } from '../../lib/units';
import type { Picture } from '../drawing/kit-drawing';
import { DrawingFrame, type Working } from './drawing-frame';
import { useFields } from './fields/use-fields';
import { formatNumber } from './format-number';
import { LimitVerdict } from './verdict-item';

/** The side of three parts, and all three as they are measured, in each system. */
const SIZES = {
  mm: [
    [300, '300, 400, 500 mm'],
    [600, '600, 800, 1000 mm'],
    [900, '900, 1200, 1500 mm'],
    [3000, '3, 4, 5 m'],
  ],
  inches: [
    [inches(12), '12, 16, 20 in'],
    [inches(0, 3), '3, 4, 5 ft'],
    [inches(0, 6), '6, 8, 10 ft'],
    [inches(0, 9), '9, 12, 15 ft'],
  ],
} as const;
const GREATEST = 3;

const sizeIn = (system: LengthSystem) => ({
  label: 'Sides measured',
  start: String(GREATEST),
  choices: SIZES[system].map(([, sides], index) => [String(index), sides] as const),
});
const FIELDS = {
  size: sizeIn('mm'),
  error: { label: 'Diagonal too long by', start: 10, least: -50, most: 50, step: 1 },
  length: { label: 'Length of the wall', start: 8000, least: 500, most: 20_000, step: 100 },
  rules: 'rules',
} as const;

const WORKING: readonly Working[] = [
  {
    what: 'Square',
    formula: '3² + 4² = 5². The diagonal of a square corner is √(a² + b²).',
    source: 'Pythagoras',
  },
  {
    what: 'Off square',
    formula: '(d² − a² − b²) ÷ (2 a b), as a share of the length; at the end of the wall, times its length.',
    source: 'cosine rule',
  },
];

/** A corner set out by 3-4-5, and what a wrong diagonal does at the end of the wall. */
export function Corner() {
  const given = useFields(FIELDS);
  const { values, system } = given;
  const { error, length, rules } = values;
  const size = Number(values.size);
  const along = SIZES[system][size]?.[0] ?? SIZES[system][GREATEST][0];
  const across = (along * 4) / 3;
  const diagonal = squareDiagonal(along, across) + error;
  const corner = cornerOf(along, across, diagonal);
  const end = offAtEnd(length, corner);
  const show = (mm: Mm) => formatLength(mm, system);
  const way = end > 0 ? 'too open' : 'too closed';
  return (
    <DrawingFrame
      title="Corner"
      given={{ ...given, fields: { ...FIELDS, size: sizeIn(system) } }}
      sheet={cornerSheet(
        `A corner whose diagonal is ${show(diagonal)}; the end of the wall is ${show(Math.abs(end))} off`,
        corner.offSquare,
        [along, across, diagonal].map(show),
      )}
      note="Seen from above. The turn is drawn up to 15 times too large. Dashed: the square line."
      result={[
        `The diagonal of a square corner is ${show(squareDiagonal(along, across))}. Yours is ${show(diagonal)}.`,
        error === 0
          ? 'The corner is square.'
          : `The corner is ${formatNumber(corner.angle, 2)} degrees, ${way}. At the end of ${show(length)} the wall is ${show(Math.abs(end))} off the square line.`,
        ...(size < GREATEST
          ? ['Measure larger triangles: the same slip of the tape then turns the wall less.']
          : []),
      ]}
      verdicts={
        <LimitVerdict
          {...{ rules, id: 'corner-square', what: 'Off square', measured: Math.abs(corner.offSquare) }}
          show={(value) => formatAmount(value, 'mm per m', system)}
        />
      }
      working={WORKING}
    />
  );
}

const AT: Point = [70, 40];
const SHORT_SIDE = 165;
const LONG_SIDE = 220;
const TURN_DRAWN = 15;

function cornerSheet(
  name: string,
  offSquare: number,
  [along = '', across = '', diagonal = '']: string[],
): Picture {
  const [x, y] = AT;
  const turn = Math.max(-0.6, Math.min(0.6, (offSquare / 1000) * TURN_DRAWN));
  const tip = (reach: number): Point => [x - reach * Math.sin(turn), y + reach * Math.cos(turn)];
  const foot: Point = [x + LONG_SIDE, y];
  return {
    name,
    box: { x: 0, y: 0, width: 420, height: 310 },
    shapes: [
      lines([[AT, [x, 290]]], { paint: '--slate', width: 1, dash: [6, 5] }),
      lines([[[x + 330, y], AT, tip(SHORT_SIDE + 70)]], { paint: '--clay', width: 12, opacity: 0.6 }),
      lines([[AT, tip(SHORT_SIDE), foot, AT]], { paint: '--chalk', width: 2.5 }),
    ],
    labels: [
      labelAt(x + 16, y + SHORT_SIDE / 2 + 5, along, 'start'),
      labelAt(x + LONG_SIDE / 2, y - 21, across),
      labelAt(x + 130, y + SHORT_SIDE / 2 + 19, diagonal, 'start'),
    ],
  };
}
