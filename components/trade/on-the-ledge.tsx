'use client';

import { useState } from 'react';
import { boundAt } from '../../lib/limits/bound';
import type { RuleSetId } from '../../lib/limits/limit';
import { namedLimitOf } from '../../lib/limits/limits';
import { bearingPressure } from '../../lib/trade/lintel-bending';
import { overhangMarksOf, peakStressRatio, pressedLengthOf, standingOf } from '../../lib/trade/overhang';
import { formatLength, type LengthSystem, type Mm } from '../../lib/units';
import { DrawingFrame, type Working } from './drawing-frame';
import { RulesField } from './fields/choice-field';
import { LengthField } from './fields/length-field';
import { formatNumber, formatQuantity } from './format-number';
import { useLengthsHere, useRulesHere } from './rules-here';
import { LedgeSheet } from './sheets/ledge-sheet';
import { isWithin, VerdictItem } from './verdict-item';

/** Brick veneer of about 90 mm, N/mm² of face: 40 lb/ft² (1.915 kPa), the usual figure of American tables. */
const WALL_WEIGHT = 1.915e-3;

const WORKING: readonly Working[] = [
  {
    what: 'The moment it tips',
    formula: 'The weight acts in the middle of the depth b. Past the edge by b ÷ 2, it has nothing below it.',
    source: 'statics of a block on a bed that takes no tension',
  },
  {
    what: 'Stress at the edge',
    formula:
      'Bearing a = b − e. Up to e = b ÷ 4: (b ÷ a)(1 + 3e ÷ a) times the even stress. Beyond, the inner edge lifts: 2b ÷ pressed length, which is 3(a − e) ÷ 2.',
    source: 'the same statics. At a third it is 4 times.',
  },
  {
    what: 'Even stress',
    formula: 'Weight of wall × height ÷ depth, with 1.915 kPa of face (40 lb/ft²).',
    source: 'usual weight of 4 in brick veneer in American tables',
  },
];

/** A unit pushed over its support. Ties, which hold a real veneer back, are left out. */
export function OnTheLedge() {
  const system = useLengthsHere();
  const [depth, setDepth] = useState<Mm>(90);
  const [pushed, setPushed] = useState<Mm>(20);
  const [high, setHigh] = useState<Mm>(2400);
  const [rules, setRules] = useRulesHere();
  const overhang = Math.min(pushed, depth - 1);
  const length = (mm: Mm) => formatLength(mm, system);
  const stands = standingOf(depth, overhang);
  const even = bearingPressure(WALL_WEIGHT * high, depth, 1);
  return (
    <DrawingFrame
      title="On the ledge"
      system={system}
      sheet={<LedgeSheet {...{ depth, overhang, system }} />}
      note="A cut through the foot of the wall, outside to the right. Ties and mortar are left out: the unit stands alone."
      controls={
        <>
          <LengthField
            label="Depth of the unit"
            {...{ system, value: depth, least: 50, most: 150, step: 1, onChange: setDepth }}
          />
          <LengthField
            label="Past the edge of the ledge"
            {...{ system, value: overhang, least: 0, most: depth - 1, step: 1, onChange: setPushed }}
          />
          <LengthField
            label="Height of wall above"
            {...{ system, value: high, least: 100, most: 9000, step: 100, onChange: setHigh }}
          />
          <RulesField value={rules} onChange={setRules} />
        </>
      }
      result={[
        `${length(depth - overhang)} stand on the ledge, ${length(overhang)} hang over: ${formatNumber((100 * overhang) / depth, 0)} % of the depth.`,
        standingWords(stands, depth, overhang, length),
        stands === 'tipping'
          ? 'No bed carries it any more, so there is no stress to state.'
          : `The edge is pressed ${formatNumber(peakStressRatio(depth, overhang))} times the even stress: ${formatQuantity(even * peakStressRatio(depth, overhang), 'MPa', system, 3)}, against ${formatQuantity(even, 'MPa', system, 3)}.`,
      ]}
      verdicts={<Verdicts {...{ rules, depth, overhang, system }} />}
      working={WORKING}
      caution={[
        'Masonry that hangs over too far can fall. Keep people away. Do not push it back: a competent person decides how it is held.',
      ]}
    />
  );
}

function standingWords(
  stands: ReturnType<typeof standingOf>,
  depth: Mm,
  overhang: Mm,
  length: (mm: Mm) => string,
): string {
  const left = overhangMarksOf(depth).tipping - overhang;
  switch (stands) {
    case 'tipping':
      return 'It tips. The middle of its weight is at the edge or beyond.';
    case 'lifting':
      return `Its inner edge has lifted: only ${length(pressedLengthOf(depth, overhang))} are pressed. It tips ${length(left)} further on.`;
    case 'pressed':
      return `The whole bearing is pressed. It tips ${length(left)} further on.`;
  }
}

function Verdicts(props: {
  readonly rules: RuleSetId;
  readonly depth: Mm;
  readonly overhang: Mm;
  readonly system: LengthSystem;
}) {
  const { rules, depth, overhang, system } = props;
  return ['overhang-share', 'overhang-fixed'].map((id) => {
    const limit = namedLimitOf(rules, id);
    if (limit === undefined) return null;
    const bound = boundAt(limit, { depth });
    return (
      <VerdictItem
        key={id}
        limit={limit}
        what={id === 'overhang-share' ? 'Overhang, by share of the depth' : 'Overhang, by length'}
        passes={isWithin(limit, overhang, bound)}
        text={`${formatLength(overhang, system)}, at most ${formatLength(bound, system)}.`}
      />
    );
  });
}
