'use client';

import { useMemo, useState } from 'react';
import type { Box } from '../../lib/geometry/box';
import { boundAt, spacingVerdict } from '../../lib/limits/bound';
import { type Bound, RULE_SETS, type RuleSetId } from '../../lib/limits/limit';
import { limitOf, ruleSetTitle } from '../../lib/limits/limits';
import { areaEach, tieDensity } from '../../lib/trade/tie-field';
import { firstTieBeside, tieMapOf } from '../../lib/trade/tie-map';
import { formatLength, type LengthSystem, type Mm, squareFeet } from '../../lib/units';
import { DrawingFrame, type Working } from './drawing-frame';
import { ChoiceField, RulesField, TickField } from './fields/choice-field';
import { LengthField } from './fields/length-field';
import { formatNumber, formatQuantity } from './format-number';
import { useLengthsHere, useRulesHere } from './rules-here';
import { TieSheet } from './sheets/tie-sheet';
import { isWithin, VerdictItem } from './verdict-item';

const WIDTH: Mm = 3600;
const HEIGHT: Mm = 2400;
const OPENING: Box = { x: 1200, y: 800, width: 1200, height: 1200 };
const SQUARE_MM_PER_SQUARE_M = 1e6;

const WORKING: readonly Working[] = [
  {
    what: 'What a tie holds',
    formula:
      'Inside the field: spacing across × spacing up. At an opening: all points of the wall that are nearer to it than to any other tie.',
    source: 'tributary area, counted in squares of about 50 mm (2 in)',
  },
  {
    what: 'Two spacings, one limit',
    formula: 'Most codes limit the pair or the area, not each spacing alone. Wider across means closer up.',
    source: 'the tie limits of each rule set below',
  },
];

/** Ties on studs: rows, the wall each holds, and what each rule set says of the pair of spacings. */
export function TieMap() {
  const system = useLengthsHere();
  const [stud, setStud] = useState<Mm>(400);
  const [every, setEvery] = useState<'1' | '2'>('1');
  const [up, setUp] = useState<Mm>(600);
  const [hasOpening, setOpening] = useState(true);
  const [rules, setRules] = useRulesHere();
  const across = stud * Number(every);
  const map = useMemo(() => mapOf(across, up, hasOpening), [across, up, hasOpening]);
  const most = Math.max(...map.ties.map(({ area }) => area));
  const area = (mm2: number) => formatQuantity(mm2 / SQUARE_MM_PER_SQUARE_M, 'm²', system, 2);
  const perSquareMetre = tieDensity(across, up);
  const density =
    system === 'mm'
      ? `${formatNumber(perSquareMetre, 2)} in a square metre`
      : `${formatNumber((perSquareMetre * squareFeet(100)) / SQUARE_MM_PER_SQUARE_M, 1)} in 100 square feet`;
  const bound = limitOf(rules, 'tie-spacing')?.bound;
  function takeBothGreatest(): void {
    const greatest = bound && greatestOf(bound);
    if (!greatest) return;
    setStud(greatest.across / 2);
    setEvery('2');
    setUp(greatest.up);
  }
  return (
    <DrawingFrame
      title="Tie map"
      system={system}
      sheet={
        <TieSheet
          map={map}
          width={WIDTH}
          height={HEIGHT}
          opening={hasOpening ? OPENING : null}
          label={`${map.ties.length} ties on a panel of ${formatLength(WIDTH, system)} by ${formatLength(HEIGHT, system)}`}
        />
      }
      note="Each tie with the patch of wall that leans on it. Crossed: the tie that holds most."
      controls={
        <>
          <LengthField
            label="Stud spacing"
            {...{ system, value: stud, least: 300, most: 610, step: 5, onChange: setStud }}
          />
          <ChoiceField
            label="Ties on"
            value={every}
            choices={[
              ['1', 'every stud'],
              ['2', 'every second stud'],
            ]}
            onChange={setEvery}
          />
          <LengthField
            label="Spacing up"
            {...{ system, value: up, least: 200, most: 900, step: 10, onChange: setUp }}
          />
          <TickField label="A window in the panel" value={hasOpening} onChange={setOpening} />
          <RulesField value={rules} onChange={setRules} />
          <button type="button" className="button button-plain" onClick={takeBothGreatest}>
            Take both greatest spacings at once
          </button>
        </>
      }
      result={[
        `${map.ties.length} ties, ${formatLength(across, system)} across and ${formatLength(up, system)} up: ${density}.`,
        `In the field each tie holds ${area(areaEach(across, up))}. The busiest holds ${area(most)}.`,
      ]}
      verdicts={
        <>
          {RULE_SETS.map((each) => (
            <SpacingItem key={each} {...{ rules: each, up, across, system }} />
          ))}
          {hasOpening && <EdgeItem rules={rules} away={firstTieBeside(OPENING, map.ties)} system={system} />}
        </>
      }
      working={WORKING}
      caution={[
        'A wall with too few ties can fall outward in wind. What holds a real one, an engineer finds out.',
      ]}
    />
  );
}

function mapOf(across: Mm, up: Mm, hasOpening: boolean) {
  return tieMapOf({
    width: WIDTH,
    height: HEIGHT,
    across,
    up,
    firstAcross: across / 2,
    firstUp: up / 2,
    opening: hasOpening ? OPENING : null,
  });
}

/** The greatest spacing across and up that a bound names, each taken alone. */
function greatestOf(bound: Bound): { readonly across: Mm; readonly up: Mm } | undefined {
  if (bound.form === 'tie-area') return { across: bound.horizontal, up: bound.vertical };
  if (bound.form !== 'tie-rows') return undefined;
  return {
    across: Math.max(...bound.rows.map(({ horizontal }) => horizontal)),
    up: Math.max(...bound.rows.map(({ vertical }) => vertical)),
  };
}

function SpacingItem(props: {
  readonly rules: RuleSetId;
  readonly up: Mm;
  readonly across: Mm;
  readonly system: LengthSystem;
}) {
  const { rules, up, across, system } = props;
  const limit = limitOf(rules, 'tie-spacing');
  if (limit === undefined) return null;
  const { passes, which, limit: bound } = spacingVerdict(limit.bound, up, across);
  const at = which === 'vertical' ? `up at ${formatLength(across, system)} across` : 'across';
  return (
    <VerdictItem
      limit={limit}
      what={`Spacing, ${ruleSetTitle(rules)}`}
      passes={passes}
      text={`${formatLength(which === 'vertical' ? up : across, system)} ${at}, at most ${formatLength(bound, system)}.`}
    />
  );
}

function EdgeItem(props: { readonly rules: RuleSetId; readonly away: Mm; readonly system: LengthSystem }) {
  const { rules, away, system } = props;
  const limit = limitOf(rules, 'tie-edge-distance');
  if (limit === undefined) return null;
  const bound = boundAt(limit, {});
  const isThere = Number.isFinite(away);
  return (
    <VerdictItem
      limit={limit}
      what="Nearest tie beside the window"
      passes={isThere && isWithin(limit, away, bound)}
      text={`${isThere ? `${formatLength(away, system)} from it` : 'None'}, at most ${formatLength(bound, system)}.`}
    />
  );
}
