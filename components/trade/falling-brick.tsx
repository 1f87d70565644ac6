'use client';

import { brickFaces } from '../../lib/drawing/brickwork';
import { ring } from '../../lib/drawing/rings';
import { labelAt, lines, type Pen, solid } from '../../lib/drawing/shape';
import { rectRing } from '../../lib/geometry/polygon';
import { isBraced, KEEP_OUT, keepOutOf } from '../../lib/limits/keep-out';
import { sourceOf } from '../../lib/limits/limits';
import { fallEnergy, impactSpeed } from '../../lib/trade/falling';
import { PUBLISHED_IMPACTS } from '../../lib/trade/published-impacts';
import { formatLength, type LengthSystem, type Mm } from '../../lib/units';
import type { Picture } from '../drawing/kit-drawing';
import { DrawingFrame, type Working } from './drawing-frame';
import { useFields } from './fields/use-fields';
import { formatQuantity } from './format-number';
import { TradeTable } from './trade-table';

const KM_PER_H_PER_M_PER_S = 3.6;

const FIELDS = {
  mass: { label: 'Mass of the unit', quantity: 'kg', start: 1.9, least: 0.2, most: 25, step: 0.1 },
  height: { label: 'Height of the fall', start: 2000, least: 250, most: 12_000, step: 50 },
} as const;

const WORKING: readonly Working[] = [
  {
    what: 'Energy',
    formula: 'mass × g × height, g = 9.80665 m/s² (32.174 ft/s²).',
    source: 'mechanics of a body dropped from rest, no air',
  },
  { what: 'Speed', formula: '√(2 × g × height). The mass does not matter.', source: 'the same' },
  {
    what: 'Keep-out zone',
    formula:
      'Height of the wall + 4 ft (1219 mm), along the whole wall, on the side without scaffold. Braced above 8 ft (2438 mm).',
    source: `${sourceOf(KEEP_OUT).title}, ${KEEP_OUT.clause}; second-hand. Your place may ask more.`,
  },
];

/** A unit that falls: energy and speed, beside energies that others measured or test with. */
export function FallingBrick() {
  const given = useFields(FIELDS);
  const { system } = given;
  const { mass, height } = given.values;
  const energy = fallEnergy(mass, height);
  const speed = impactSpeed(height);
  const zone = keepOutOf(height);
  return (
    <DrawingFrame
      title="Falling brick"
      given={given}
      sheet={fallSheet(height, zone, energy, system)}
      note="The wall, how far to stay away, and the energy against published ones. Bars are to scale; the longest is at least 80 J (59 ft·lbf)."
      result={[
        `${formatQuantity(energy, 'J', system, 2)} on landing, at ${formatQuantity(speed, 'm/s', system, 3)} (${formatQuantity(speed * KM_PER_H_PER_M_PER_S, 'km/h', system, 0)}).`,
        `Keep people ${formatLength(zone, system)} away from a wall so high that is being built.${isBraced(height) ? ' It has to be braced until the building holds it.' : ''}`,
        'No energy here is a safe one. A helmet test says what a helmet was tried with, not what a head bears.',
      ]}
      working={WORKING}
      caution={[
        'Nobody stands below loose masonry or below people laying it. Close the place off first, then call a competent person.',
      ]}
    >
      <TradeTable caption="Published energies" heads={['Energy', 'What it is', 'Source']}>
        {PUBLISHED_IMPACTS.map((impact) => (
          <tr key={impact.energy}>
            <th scope="row">{formatQuantity(impact.energy, 'J', system, 2).replace(' ', '\u00a0')}</th>
            <td>{impact.what}</td>
            <td>{impact.source}</td>
          </tr>
        ))}
      </TradeTable>
    </DrawingFrame>
  );
}

const GROUND = 230;
const INK: Pen = { paint: '--ink', width: 1 };

function fallSheet(height: Mm, zone: Mm, energy: number, system: LengthSystem): Picture {
  const scale = Math.min(150 / height, 330 / zone);
  const top = GROUND + height * scale;
  const end = 44 + zone * scale;
  const most = Math.max(80, energy);
  const bars = [
    { energy, what: 'this one', fill: '--clay', pen: { paint: '--clay', width: 1.5 } },
    ...PUBLISHED_IMPACTS.map((impact) => ({
      energy: impact.energy,
      what: SHORT[impact.energy] ?? '',
      fill: 'none',
      pen: { paint: '--slate', width: 1.5 },
    })),
  ];
  return {
    name: `A unit falls ${formatLength(height, system)}: ${formatQuantity(energy, 'J', system)}; keep ${formatLength(zone, system)} away`,
    box: { x: 0, y: 0, width: 420, height: 420 },
    shapes: [
      lines([ring(0, GROUND, 420, GROUND)], { paint: '--ink', width: 2 }),
      solid(rectRing(30, GROUND, 14, top - GROUND), '--clay', INK, 0.6),
      lines([ring(46, GROUND + 4, end, GROUND + 4)], { paint: '--ochre', width: 6, dash: [10, 6] }),
      lines([ring(end, GROUND, end, GROUND + 34)], { paint: '--ochre', width: 5 }),
      ...brickFaces([{ x: 52, y: top - 3, width: 16, height: 8 }]),
      lines([ring(60, top - 8, 60, GROUND + 12), ring(55, GROUND + 21, 60, GROUND + 12, 65, GROUND + 21)], {
        paint: '--chalk',
        width: 2.5,
      }),
      ...bars.map((bar, index) =>
        solid(rectRing(150, 174 - index * 26, (230 * bar.energy) / most, 18), bar.fill, bar.pen),
      ),
    ],
    labels: [
      labelAt(76, (top + GROUND) / 2 + 5, formatLength(height, system), 'start'),
      labelAt((44 + end) / 2, GROUND - 15, `stay out: ${formatLength(zone, system)}`),
      ...bars.map((bar, index) =>
        labelAt(142, 183 - index * 26, `${bar.what}, ${formatQuantity(bar.energy, 'J', system, 0)}`, 'end'),
      ),
    ],
  };
}

/** Names short enough for a bar; the table has the whole. */
const SHORT: Readonly<Record<number, string>> = {
  14.1: 'least, skull',
  28: 'mean, skull',
  32.6: 'under helmet',
  49: 'EN 397 test',
  54.45: 'Z89.1 test',
  68.5: 'most, skull',
};
