'use client';

import { writtenDimension } from '../../lib/drawing/dimension';
import { ring } from '../../lib/drawing/rings';
import { labelAt, lines, polygon } from '../../lib/drawing/shape';
import { type Point, rectRing } from '../../lib/geometry/polygon';
import { departureBound } from '../../lib/limits/bound';
import { formatFineLength } from '../../lib/limits/format-amount';
import { limitOf } from '../../lib/limits/limits';
import {
  catenarySag,
  dipAt,
  extraLineLength,
  lineWeight,
  parabolaSag,
  sagInBays,
  USUAL_LINE_MASS,
  windOnLine,
} from '../../lib/trade/string-line';
import { formatLength, inches, type Mm } from '../../lib/units';
import type { Picture } from '../drawing/kit-drawing';
import { DrawingFrame, type Working } from './drawing-frame';
import { useFields } from './fields/use-fields';
import { formatNumber } from './format-number';
import { isWithin, VerdictItem } from './verdict-item';

/** The line is drawn as if it were so thick for the wind, mm. */
const LINE_DIAMETER: Mm = 1.5;

const FIELDS = {
  length: { label: 'Length between the leads', start: 20_000, least: 1000, most: 40_000, step: 500 },
  pull: { label: 'Pull', quantity: 'N', start: 100, least: 5, most: 200, step: 5, otherStep: 1 },
  mass: {
    label: 'Weight of the line',
    quantity: 'g/m',
    start: USUAL_LINE_MASS,
    least: 0.2,
    most: 5,
    step: 0.1,
  },
  wind: { label: 'Side wind', quantity: 'm/s', start: 0, least: 0, most: 15, step: 1 },
  hasSupport: { label: 'A support in the middle, on the true line', start: false },
  rules: 'rules',
} as const;

const WORKING: readonly Working[] = [
  {
    what: 'Sag in the middle',
    formula:
      'weight per metre × length² ÷ (8 × pull): the parabola. The true curve, a catenary, is given beside it.',
    source: 'statics of a hanging line; g = 9.80665 m/s²',
  },
  {
    what: 'A support in the middle',
    formula:
      'Each half is half as long, so it sags a quarter as much. The lowest points are then at the quarters.',
    source: 'the same',
  },
  {
    what: 'Side wind',
    formula:
      '½ × 1.2 kg/m³ × 1.2 × 1.5 mm × speed² gives newtons per metre; it acts sideways as weight acts down.',
    source: 'drag of a round line, textbook figures',
  },
];

/** A line between two leads: sag, wind, and what a row of units laid to it does. */
export function StringLine() {
  const given = useFields(FIELDS);
  const { system } = given;
  const { length, pull, mass, wind, hasSupport, rules } = given.values;
  const weight = lineWeight(mass);
  const bays = hasSupport ? 2 : 1;
  const sag = sagInBays(weight, length, pull, bays);
  const aside = parabolaSag(windOnLine(wind, LINE_DIAMETER), length / bays, pull);
  const curve = catenarySag(weight, length / bays, pull);
  const fine = (mm: Mm) => (system === 'mm' ? `${formatNumber(mm, 2)} mm` : formatFineLength(mm, system));
  const extra = extraLineLength(sag, length / bays) * bays;
  const level = limitOf(rules, 'course-level');
  const bound = level && departureBound(level.bound, length / bays / 2);
  return (
    <DrawingFrame
      title="String line"
      given={given}
      sheet={lineSheet((x) => dipAt(x, weight, length / bays, pull), length, bays, sag, [
        formatLength(length, system),
        fine(sag),
      ])}
      note={`Heights are drawn ${formatNumber((sagScaleOf(sag) * length) / WIDE, 0)} times too large, so that the sag can be seen.`}
      result={[
        `The line sags ${fine(sag)}${hasSupport ? ' at the quarter points' : ' in the middle'}. As a catenary: ${fine(curve)}.`,
        `A row of units laid to it dips by as much. The line is only ${system === 'mm' ? `${formatNumber(extra, 4)} mm` : `${formatNumber(extra / inches(1), 5)} in`} longer than straight: a tape tells nothing.`,
        ...(wind > 0 ? [`The wind blows it ${fine(aside)} sideways: the face follows.`] : []),
      ]}
      verdicts={
        level &&
        bound !== undefined && (
          <VerdictItem
            limit={level}
            what="Dip from a lead to the lowest point"
            passes={isWithin(level, sag, bound)}
            text={`${fine(sag)}, at most ${formatLength(bound, system)} over ${formatLength(length / bays / 2, system)}.`}
          />
        )
      }
      working={WORKING}
      caution={[
        'A tight line can snap back. Keep your face out of its way when you pull, and use sound pins.',
      ]}
    />
  );
}

const LEFT = 20;
const WIDE = 380;
const TRUE_LINE = 210;
const FOOT = 30;
const SCALE_MM = 3;

/** Pixels a mm of sag. Deep sags are drawn flatter, or they would leave the sheet. */
function sagScaleOf(sag: Mm): number {
  return Math.min(SCALE_MM, 120 / Math.max(sag, 1));
}

/** The line over the row of units laid to it. `dipIn` gives the dip at a place in a bay. */
function lineSheet(
  dipIn: (x: Mm) => Mm,
  length: Mm,
  bays: number,
  sag: Mm,
  [long = '', deep = '']: readonly string[],
): Picture {
  const perMm = sagScaleOf(sag);
  const bay = length / bays;
  const right = LEFT + WIDE;
  const points = Array.from({ length: 81 }, (_, index): Point => {
    const dip = dipIn(Math.min(((length * index) / 80) % bay, bay));
    return [LEFT + (WIDE * index) / 80, TRUE_LINE - dip * perMm];
  });
  const joints = points.filter((_, index) => index % 4 === 0 && index > 0 && index < 80);
  const low = LEFT + WIDE / (2 * bays);
  const middle = LEFT + WIDE / 2;
  const sags = writtenDimension([low, TRUE_LINE], [low, TRUE_LINE - sag * perMm], deep);
  const over = writtenDimension([LEFT, 240], [right, 240], long);
  return {
    name: `A line of ${long} that sags ${deep}`,
    box: { x: 0, y: 0, width: 420, height: 270 },
    shapes: [
      polygon([...points, [right, FOOT], [LEFT, FOOT]], '--clay', 0.25),
      lines(
        joints.map(([x, y]) => ring(x, y - 2, x, FOOT)),
        { paint: '--raised', width: 2 },
      ),
      lines([ring(LEFT, TRUE_LINE, right, TRUE_LINE)], { paint: '--slate', width: 1, dash: [3, 4] }),
      lines([points], { paint: '--chalk', width: 2.5 }),
      ...[LEFT, right].map((x) => polygon(rectRing(x - 5, TRUE_LINE - 8, 10, 16), '--ink')),
      ...(bays === 2
        ? [polygon(ring(middle - 7, TRUE_LINE - 14, middle + 7, TRUE_LINE - 14, middle, TRUE_LINE), '--ink')]
        : []),
      ...sags.shapes,
      ...over.shapes,
    ],
    labels: [sags.label, over.label, labelAt(LEFT + 8, 13, 'dashed: the true line', 'start')],
  };
}
