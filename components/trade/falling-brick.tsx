'use client';

import { useState } from 'react';
import { isBraced, KEEP_OUT, keepOutOf } from '../../lib/limits/keep-out';
import { sourceOf } from '../../lib/limits/limits';
import { fallEnergy, impactSpeed } from '../../lib/trade/falling';
import { PUBLISHED_IMPACTS } from '../../lib/trade/published-impacts';
import { formatLength, type LengthSystem, type Mm } from '../../lib/units';
import { DrawingFrame, type Working } from './drawing-frame';
import { LengthField } from './fields/length-field';
import { QuantityField } from './fields/quantity-field';
import { formatQuantity } from './format-number';
import { useLengthsHere } from './rules-here';
import { Sheet } from './sheets/sheet';
import styles from './trade.module.css';

const KM_PER_H_PER_M_PER_S = 3.6;

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
  const system = useLengthsHere();
  const [mass, setMass] = useState(1.9);
  const [height, setHeight] = useState<Mm>(2000);
  const energy = fallEnergy(mass, height);
  const speed = impactSpeed(height);
  const zone = keepOutOf(height);
  return (
    <DrawingFrame
      title="Falling brick"
      system={system}
      sheet={<FallSheet {...{ height, zone, energy, system }} />}
      note="The wall, how far to stay away, and the energy against published ones. Bars are to scale; the longest is at least 80 J (59 ft·lbf)."
      controls={
        <>
          <QuantityField
            label="Mass of the unit"
            unit="kg"
            {...{ system, value: mass, least: 0.2, most: 25, steps: [0.1, 0.1], onChange: setMass }}
          />
          <LengthField
            label="Height of the fall"
            {...{ system, value: height, least: 250, most: 12_000, step: 50, onChange: setHeight }}
          />
        </>
      }
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
      <div className={styles.table}>
        <table>
          <caption>Published energies</caption>
          <thead>
            <tr>
              <th scope="col">Energy</th>
              <th scope="col">What it is</th>
              <th scope="col">Source</th>
            </tr>
          </thead>
          <tbody>
            {PUBLISHED_IMPACTS.map((impact) => (
              <tr key={impact.energy}>
                <th scope="row">{formatQuantity(impact.energy, 'J', system, 2).replace(' ', '\u00a0')}</th>
                <td>{impact.what}</td>
                <td>{impact.source}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </DrawingFrame>
  );
}

const GROUND = 190;

function FallSheet(props: {
  readonly height: Mm;
  readonly zone: Mm;
  readonly energy: number;
  readonly system: LengthSystem;
}) {
  const { height, zone, energy, system } = props;
  const scale = Math.min(150 / height, 330 / zone);
  const top = GROUND - height * scale;
  const most = Math.max(80, energy);
  const bars = [
    { energy, what: 'this one', isOwn: true },
    ...PUBLISHED_IMPACTS.map((impact) => ({
      energy: impact.energy,
      what: SHORT[impact.energy] ?? '',
      isOwn: false,
    })),
  ];
  return (
    <Sheet
      label={`A unit falls ${formatLength(height, system)}: ${formatQuantity(energy, 'J', system)}; keep ${formatLength(zone, system)} away`}
      width={420}
      height={420}
    >
      <path d={`M0 ${GROUND}H420`} stroke="var(--ink)" strokeWidth="2" />
      <rect
        x="30"
        y={top}
        width="14"
        height={GROUND - top}
        fill="var(--clay)"
        fillOpacity="0.6"
        stroke="var(--ink)"
      />
      <path
        d={`M46 ${GROUND - 4}H${44 + zone * scale}`}
        stroke="var(--ochre)"
        strokeWidth="6"
        strokeDasharray="10 6"
      />
      <path d={`M${44 + zone * scale} ${GROUND}v-34`} stroke="var(--ochre)" strokeWidth="5" />
      <rect x="52" y={top - 5} width="16" height="8" fill="var(--clay)" stroke="var(--ink)" />
      <path
        d={`M60 ${top + 8}V${GROUND - 12}m-5 -9l5 9l5 -9`}
        stroke="var(--chalk)"
        strokeWidth="2.5"
        fill="none"
      />
      <text x="76" y={(top + GROUND) / 2}>
        {formatLength(height, system)}
      </text>
      <text x={44 + (zone * scale) / 2} y={GROUND + 20} textAnchor="middle">
        stay out: {formatLength(zone, system)}
      </text>
      {bars.map((bar, index) => (
        <g key={bar.what}>
          <rect
            x="150"
            y={228 + index * 26}
            width={(230 * bar.energy) / most}
            height="18"
            fill={bar.isOwn ? 'var(--clay)' : 'none'}
            stroke={bar.isOwn ? 'var(--clay)' : 'var(--slate)'}
            strokeWidth="1.5"
          />
          <text x="142" y={242 + index * 26} textAnchor="end">
            {bar.what}, {formatQuantity(bar.energy, 'J', system, 0)}
          </text>
        </g>
      ))}
    </Sheet>
  );
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
