'use client';

import { useState } from 'react';
import { departureBound } from '../../lib/limits/departure-bound';
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
import { formatLength, inches, type LengthSystem, type Mm } from '../../lib/units';
import { DrawingFrame, type Working } from './drawing-frame';
import { RulesField, TickField } from './fields/choice-field';
import { LengthField } from './fields/length-field';
import { QuantityField } from './fields/quantity-field';
import { formatNumber } from './format-number';
import { useLengthsHere, useRulesHere } from './rules-here';
import { DimensionLine, Sheet } from './sheets/sheet';
import { isWithin, VerdictItem } from './verdict-item';

/** The line is drawn as if it were so thick for the wind, mm. */
const LINE_DIAMETER: Mm = 1.5;

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
  const system = useLengthsHere();
  const [length, setLength] = useState<Mm>(20_000);
  const [pull, setPull] = useState(100);
  const [mass, setMass] = useState<number>(USUAL_LINE_MASS);
  const [wind, setWind] = useState(0);
  const [hasSupport, setSupport] = useState(false);
  const [rules, setRules] = useRulesHere();
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
      system={system}
      sheet={<LineSheet {...{ length, weight, pull, bays, sag, system }} text={fine(sag)} />}
      note={`Heights are drawn ${formatNumber((sagScaleOf(sag) * length) / WIDE, 0)} times too large, so that the sag can be seen.`}
      controls={
        <>
          <LengthField
            label="Length between the leads"
            {...{ system, value: length, least: 1000, most: 40_000, step: 500, onChange: setLength }}
          />
          <QuantityField
            label="Pull"
            unit="N"
            {...{ system, value: pull, least: 5, most: 200, steps: [5, 1], onChange: setPull }}
          />
          <QuantityField
            label="Weight of the line"
            unit="g/m"
            {...{ system, value: mass, least: 0.2, most: 5, steps: [0.1, 0.1], onChange: setMass }}
          />
          <QuantityField
            label="Side wind"
            unit="m/s"
            {...{ system, value: wind, least: 0, most: 15, steps: [1, 1], onChange: setWind }}
          />
          <TickField
            label="A support in the middle, on the true line"
            value={hasSupport}
            onChange={setSupport}
          />
          <RulesField value={rules} onChange={setRules} />
        </>
      }
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
const TRUE_LINE = 60;
const SCALE_MM = 3;

/** Pixels a mm of sag. Deep sags are drawn flatter, or they would leave the sheet. */
function sagScaleOf(sag: Mm): number {
  return Math.min(SCALE_MM, 120 / Math.max(sag, 1));
}

function LineSheet(props: {
  readonly length: Mm;
  readonly weight: number;
  readonly pull: number;
  readonly bays: number;
  readonly sag: Mm;
  readonly text: string;
  readonly system: LengthSystem;
}) {
  const { length, weight, pull, bays, sag, text, system } = props;
  const perMm = sagScaleOf(sag);
  const points = Array.from({ length: 81 }, (_, index) => {
    const x = (length * index) / 80;
    const bay = length / bays;
    const dip = dipAt(Math.min(x % bay, bay), weight, bay, pull);
    return [LEFT + (WIDE * index) / 80, TRUE_LINE + dip * perMm] as const;
  });
  const line = points
    .map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${x.toFixed(2)} ${y.toFixed(2)}`)
    .join('');
  const low = LEFT + (bays === 1 ? WIDE / 2 : WIDE / 4);
  return (
    <Sheet label={`A line of ${formatLength(length, system)} that sags ${text}`} width={420} height={270}>
      <path
        d={`${line}L${LEFT + WIDE} 240L${LEFT} 240z`}
        fill="var(--clay)"
        fillOpacity="0.25"
        stroke="none"
      />
      {Array.from({ length: 19 }, (_, index) => {
        const [x, y] = points[(index + 1) * 4] ?? [0, 0];
        return <path key={x} d={`M${x} ${y + 2}V240`} stroke="var(--raised)" strokeWidth="2" />;
      })}
      <path d={`M${LEFT} ${TRUE_LINE}H${LEFT + WIDE}`} stroke="var(--slate)" strokeDasharray="3 4" />
      <path d={line} fill="none" stroke="var(--chalk)" strokeWidth="2.5" />
      {[LEFT, LEFT + WIDE].map((x) => (
        <rect key={x} x={x - 5} y={TRUE_LINE - 8} width="10" height="16" fill="var(--ink)" />
      ))}
      {bays === 2 && <path d={`M${LEFT + WIDE / 2 - 7} ${TRUE_LINE + 14}h14l-7 -14z`} fill="var(--ink)" />}
      <DimensionLine x1={low} y1={TRUE_LINE} x2={low} y2={TRUE_LINE + sag * perMm} text={text} gap={10} />
      <DimensionLine x1={LEFT} y1={30} x2={LEFT + WIDE} y2={30} text={formatLength(length, system)} />
      <text x={LEFT + 8} y="262" className="quiet">
        dashed: the true line
      </text>
    </Sheet>
  );
}
