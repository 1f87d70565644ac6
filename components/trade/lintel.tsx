'use client';

import { useState } from 'react';
import { boundAt } from '../../lib/limits/bound';
import { formatFineLength } from '../../lib/limits/format-amount';
import { limitOf } from '../../lib/limits/limits';
import { spanToDeflection } from '../../lib/trade/lintel-bending';
import type { Angle } from '../../lib/trade/steel-angle';
import { formatInches, formatLength, type LengthSystem, type Mm } from '../../lib/units';
import { DrawingFrame } from './drawing-frame';
import { ChoiceField, RulesField } from './fields/choice-field';
import { LengthField } from './fields/length-field';
import { NumberField } from './fields/number-field';
import { formatNumber, formatQuantity } from './format-number';
import { bendingOf, LINTEL_WORKING, type LoadWay } from './lintel-load';
import { LintelTable } from './lintel-table';
import { useLengthsHere, useRulesHere } from './rules-here';
import { LintelSheet } from './sheets/lintel-sheet';
import { isWithin, VerdictItem } from './verdict-item';

const ANGLES: readonly (readonly [name: string, angle: Angle])[] = [
  ['L89 × 89 × 6.4', { upright: 88.9, level: 88.9, thickness: 6.35 }],
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

const WAYS = [
  ['triangle', 'The triangle above it: the wall arches'],
  ['full height', 'Its full height: fresh mortar, or no room to arch'],
] as const;

/** An opening: which angles the table of a rule set gives; and, apart from it, what a load does to one angle. */
export function Lintel() {
  const system = useLengthsHere();
  const [clear, setClear] = useState<Mm>(1800);
  const [depth, setDepth] = useState<Mm>(90);
  const [storeys, setStoreys] = useState(0);
  const [high, setHigh] = useState<Mm>(2400);
  const [way, setWay] = useState<LoadWay>('triangle');
  const [chosen, setChosen] = useState('L89 × 89 × 6.4');
  const [rules, setRules] = useRulesHere();
  const bearing = limitOf(rules, 'lintel-bearing');
  const least = bearing ? boundAt(bearing, { span: clear, depth }) : 0;
  const [end, setEnd] = useState<Mm>(100);
  const angle = ANGLES.find(([name]) => name === chosen)?.[1] ?? {
    upright: 88.9,
    level: 88.9,
    thickness: 6.35,
  };
  const { bending, stress, span, wall } = bendingOf({ clear, end, depth, high, way, angle });
  const length = (mm: Mm) => formatLength(mm, system);
  return (
    <DrawingFrame
      title="Lintel"
      system={system}
      sheet={<LintelSheet {...{ clear, end, high, way, system, deflection: bending.deflection }} />}
      note="Shaded: the wall that the lintel is taken to carry. The bend is drawn up to 100 times too large."
      controls={
        <>
          <LengthField
            label="Clear opening"
            {...{ system, value: clear, least: 600, most: 6000, step: 10, onChange: setClear }}
          />
          <LengthField
            label="Depth of the veneer"
            {...{ system, value: depth, least: 70, most: 100, step: 1, onChange: setDepth }}
          />
          <NumberField
            label="Storeys above"
            unit="storeys"
            value={storeys}
            least={0}
            most={2}
            step={1}
            onChange={(value) => setStoreys(Math.round(value))}
          />
          <LengthField
            label="Bearing at each end"
            {...{ system, value: end, least: 50, most: 300, step: 5, onChange: setEnd }}
          />
          <RulesField value={rules} onChange={setRules} />
          <LengthField
            label="Height of wall above"
            {...{ system, value: high, least: 200, most: 9000, step: 50, onChange: setHigh }}
          />
          <ChoiceField label="It carries" value={way} choices={WAYS} onChange={setWay} />
          <ChoiceField
            label="Angle to look at"
            value={chosen}
            choices={ANGLES.map(([name, sizes]) => [name, nameIn(system, name, sizes)] as const)}
            onChange={setChosen}
          />
        </>
      }
      result={[
        'The table of your code or an engineer decides. The sums below only show why.',
        `${nameIn(system, chosen, angle)} over ${length(span)} from middle to middle of its bearings carries ${formatQuantity(wall / 1000, 'kN', system, 2)} of wall. Moment ${formatQuantity(bending.moment / 1e6, 'kN·m', system, 3)}, stress ${formatQuantity(stress, 'MPa', system)}.`,
        `It bends ${formatFineLength(bending.deflection, system)}, 1/${formatNumber(spanToDeflection(span, bending.deflection), 0)} of its span.`,
      ]}
      verdicts={
        bearing && (
          <VerdictItem
            limit={bearing}
            what="Bearing at each end"
            passes={isWithin(bearing, end, least)}
            text={`${length(end)}, at least ${length(least)}.`}
          />
        )
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
