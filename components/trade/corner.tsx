'use client';

import { useState } from 'react';
import { boundAt } from '../../lib/limits/bound';
import { formatAmount } from '../../lib/limits/format-amount';
import { limitOf } from '../../lib/limits/limits';
import { cornerOf, offAtEnd, squareDiagonal } from '../../lib/trade/corner-square';
import { formatLength, inches, type LengthSystem, type Mm } from '../../lib/units';
import { DrawingFrame, type Working } from './drawing-frame';
import { ChoiceField, RulesField } from './fields/choice-field';
import { LengthField } from './fields/length-field';
import { formatNumber } from './format-number';
import { useLengthsHere, useRulesHere } from './rules-here';
import { Sheet } from './sheets/sheet';
import { isWithin, VerdictItem } from './verdict-item';

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
  const system = useLengthsHere();
  const [size, setSize] = useState<number>(GREATEST);
  const [error, setError] = useState<Mm>(10);
  const [length, setLength] = useState<Mm>(8000);
  const [rules, setRules] = useRulesHere();
  const along = SIZES[system][size]?.[0] ?? SIZES[system][GREATEST][0];
  const across = (along * 4) / 3;
  const diagonal = squareDiagonal(along, across) + error;
  const corner = cornerOf(along, across, diagonal);
  const end = offAtEnd(length, corner);
  const limit = limitOf(rules, 'corner-square');
  const bound = limit && boundAt(limit, {});
  const show = (mm: Mm) => formatLength(mm, system);
  const way = end > 0 ? 'too open' : 'too closed';
  return (
    <DrawingFrame
      title="Corner"
      system={system}
      sheet={<CornerSheet {...{ offSquare: corner.offSquare, along, across, diagonal, end, system }} />}
      note="Seen from above. The turn is drawn up to 15 times too large. Dashed: the square line."
      controls={
        <>
          <ChoiceField
            label="Sides measured"
            value={String(size)}
            choices={SIZES[system].map(([, sides], index) => [String(index), sides] as const)}
            onChange={(index) => setSize(Number(index))}
          />
          <LengthField
            label="Diagonal too long by"
            {...{ system, value: error, least: -50, most: 50, step: 1, onChange: setError }}
          />
          <LengthField
            label="Length of the wall"
            {...{ system, value: length, least: 500, most: 20_000, step: 100, onChange: setLength }}
          />
          <RulesField value={rules} onChange={setRules} />
        </>
      }
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
        limit &&
        bound !== undefined && (
          <VerdictItem
            limit={limit}
            what="Off square"
            passes={isWithin(limit, Math.abs(corner.offSquare), bound)}
            text={`${formatAmount(Math.abs(corner.offSquare), limit.unit, system)}, at most ${formatAmount(bound, limit.unit, system)}.`}
          />
        )
      }
      working={WORKING}
    />
  );
}

const AT = { x: 70, y: 270 } as const;
const SHORT_SIDE = 165;
const LONG_SIDE = 220;
const TURN_DRAWN = 15;

function CornerSheet(props: {
  readonly offSquare: number;
  readonly along: Mm;
  readonly across: Mm;
  readonly diagonal: Mm;
  readonly end: Mm;
  readonly system: LengthSystem;
}) {
  const { offSquare, along, across, diagonal, end, system } = props;
  const turn = Math.max(-0.6, Math.min(0.6, (offSquare / 1000) * TURN_DRAWN));
  const tip = (reach: number) => ({ x: AT.x - reach * Math.sin(turn), y: AT.y - reach * Math.cos(turn) });
  const top = tip(SHORT_SIDE);
  const wallEnd = tip(SHORT_SIDE + 70);
  const show = (mm: Mm) => formatLength(mm, system);
  return (
    <Sheet
      label={`A corner whose diagonal is ${show(diagonal)}; the end of the wall is ${show(Math.abs(end))} off`}
      width={420}
      height={310}
    >
      <path d={`M${AT.x} ${AT.y}V20`} stroke="var(--slate)" strokeDasharray="6 5" />
      <path
        d={`M${AT.x + 330} ${AT.y}H${AT.x}L${wallEnd.x} ${wallEnd.y}`}
        stroke="var(--clay)"
        strokeWidth="12"
        fill="none"
        strokeLinejoin="round"
        strokeOpacity="0.6"
      />
      <path
        d={`M${AT.x} ${AT.y}L${top.x} ${top.y}L${AT.x + LONG_SIDE} ${AT.y}z`}
        stroke="var(--chalk)"
        strokeWidth="2.5"
        fill="none"
      />
      <text x={AT.x + 16} y={AT.y - SHORT_SIDE / 2}>
        {show(along)}
      </text>
      <text x={AT.x + LONG_SIDE / 2} y={AT.y + 26} textAnchor="middle">
        {show(across)}
      </text>
      <text x={AT.x + 130} y={AT.y - SHORT_SIDE / 2 - 14}>
        {show(diagonal)}
      </text>
    </Sheet>
  );
}
