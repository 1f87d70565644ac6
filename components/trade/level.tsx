'use client';

import { useState } from 'react';
import { slopeVerdict } from '../../lib/limits/bound';
import { formatAmount } from '../../lib/limits/format-amount';
import { limitOf } from '../../lib/limits/limits';
import { bubbleMove, reversalOf, steppedError, tiltOf } from '../../lib/trade/spirit-level';
import { formatLength, inches, type LengthSystem, MM_PER_M, type Mm } from '../../lib/units';
import { DrawingFrame, type Working } from './drawing-frame';
import { RulesField, TickField } from './fields/choice-field';
import { LengthField } from './fields/length-field';
import { NumberField } from './fields/number-field';
import { formatNumber } from './format-number';
import { useLengthsHere, useRulesHere } from './rules-here';
import { LevelSheet } from './sheets/level-sheet';
import { VerdictItem } from './verdict-item';

/** A carpenter's vial is curved to about this. Second-hand; only for the drawing. */
const VIAL_RADIUS: Mm = 200;
/** Slopes in inches are told over this run. */
const TEN_FEET: Mm = inches(0, 10);

const WORKING: readonly Working[] = [
  {
    what: 'Turn it end for end',
    formula:
      'Slope = (first + second) ÷ 2. Error of the level = (first − second) ÷ 2. Read both with + for the right end high.',
    source: 'reversal, the usual test of any level',
  },
  {
    what: 'The bubble',
    formula: 'It moves radius × tilt. Drawn for a vial curved to 200 mm (7 7/8 in).',
    source: 'geometry of a circle; the radius is second-hand',
  },
  {
    what: 'Stepping along',
    formula: 'A fixed error adds: placings × error. Turned at every step it cancels in pairs.',
    source: 'adding of errors',
  },
  {
    what: 'Plumb',
    formula:
      'A bob on a string has no error of its own. Lean = (gap below − gap above), over the height between.',
    source: 'gravity; let it come to rest, out of the wind',
  },
];

/** A level on a bed: what it shows, what it shows turned, and which of the two is its own fault. */
export function Level() {
  const system = useLengthsHere();
  const [slope, setSlope] = useState(1);
  const [error, setError] = useState(1);
  const [isTurned, setTurned] = useState(false);
  const [placings, setPlacings] = useState(5);
  const [long, setLong] = useState<Mm>(1200);
  const [above, setAbove] = useState<Mm>(50);
  const [below, setBelow] = useState<Mm>(54);
  const [high, setHigh] = useState<Mm>(2400);
  const [rules, setRules] = useRulesHere();
  const first = slope + error;
  const second = slope - error;
  const found = reversalOf(first, second);
  const shown = isTurned ? second : first;
  const run = placings * long;
  const each = (Math.abs(error) * long) / MM_PER_M;
  const per = (value: number) =>
    system === 'mm' ? `${formatNumber(value, 2)} mm in a metre` : formatAmount(value, 'mm per m', system);
  const length = (mm: Mm) => formatLength(mm, system);
  const level = limitOf(rules, 'course-level');
  const plumb = limitOf(rules, 'plumb');
  const bedSlope = level && slopeVerdict(level.bound, Math.abs(slope) / MM_PER_M, run);
  const lean = plumb && slopeVerdict(plumb.bound, Math.abs(below - above) / high, high);
  return (
    <DrawingFrame
      title="Level and straightedge"
      system={system}
      sheet={
        <LevelSheet
          slope={slope}
          reads={per(shown)}
          isTurned={isTurned}
          move={bubbleMove(shown, VIAL_RADIUS)}
          {...{ above, below }}
        />
      }
      note="Slopes and the move of the bubble are drawn 20 times too large. The dot marks the level's first end. Right: a bob beside the wall."
      controls={
        <>
          <SlopeField
            label="The bed really slopes"
            {...{ system, value: slope, least: -10, most: 10, onChange: setSlope }}
          />
          <SlopeField
            label="The level is wrong by"
            {...{ system, value: error, least: -5, most: 5, onChange: setError }}
          />
          <TickField label="Turned end for end" value={isTurned} onChange={setTurned} />
          <LengthField
            label="Length of the level"
            {...{ system, value: long, least: 300, most: 2400, step: 50, onChange: setLong }}
          />
          <NumberField
            label="Placed end to end"
            unit="times"
            value={placings}
            least={1}
            most={20}
            step={1}
            onChange={(value) => setPlacings(Math.round(value))}
          />
          <LengthField
            label="Bob: gap to the wall above"
            {...{ system, value: above, least: 20, most: 120, step: 1, onChange: setAbove }}
          />
          <LengthField
            label="Bob: gap to the wall below"
            {...{ system, value: below, least: 20, most: 120, step: 1, onChange: setBelow }}
          />
          <LengthField
            label="Height between the two"
            {...{ system, value: high, least: 500, most: 6000, step: 100, onChange: setHigh }}
          />
          <RulesField value={rules} onChange={setRules} />
        </>
      }
      result={[
        `${isTurned ? 'Turned, it' : 'It'} reads ${per(shown)}. First ${per(first)}, turned ${per(second)}.`,
        `So the bed slopes ${per(found.slope)} (${formatNumber(tiltOf(found.slope), 3)} degrees) and the level is wrong by ${per(found.error)}.`,
        `Stepped ${placings} times the same way round, its error grows to ${length(steppedError(each, placings, 'same way'))}; turned at each step, to ${length(steppedError(each, placings, 'turned'))}.`,
        below === above
          ? 'By the bob the wall is plumb.'
          : `By the bob the wall leans ${length(Math.abs(below - above))} ${below > above ? 'outward' : 'inward'} over ${length(high)}.`,
      ]}
      verdicts={
        <>
          {level && bedSlope && (
            <VerdictItem
              limit={level}
              what={`Level over ${length(run)}`}
              passes={bedSlope.passes}
              text={`${length(bedSlope.measured)}, at most ${length(bedSlope.limit)}.`}
            />
          )}
          {plumb && lean && (
            <VerdictItem
              limit={plumb}
              what={`Plumb over ${length(high)}`}
              passes={lean.passes}
              text={`${length(lean.measured)}, at most ${length(lean.limit)}.`}
            />
          )}
        </>
      }
      working={WORKING}
      caution={[
        'A wall that leans may be about to move. Do not lean a ladder on it, and keep people away until someone competent has looked.',
      ]}
    />
  );
}

/** A slope in mm a metre; in inches it is typed as the rise in 10 ft. */
function SlopeField(props: {
  readonly label: string;
  readonly system: LengthSystem;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly onChange: (value: number) => void;
}) {
  const { label, system, value, least, most, onChange } = props;
  if (system === 'mm') {
    return (
      <NumberField
        {...{ label, value, least, most, onChange }}
        unit="mm/m"
        step={0.5}
        written={(each) => formatNumber(each, 2)}
      />
    );
  }
  const over = TEN_FEET / MM_PER_M;
  return (
    <LengthField
      label={`${label}, in 10 ft`}
      {...{ system, value: value * over, least: least * over, most: most * over, step: 1 }}
      onChange={(rise) => onChange(rise / over)}
    />
  );
}
