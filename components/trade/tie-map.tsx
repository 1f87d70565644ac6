'use client';

import { useMemo } from 'react';
import { ring } from '../../lib/drawing/rings';
import { type Area, lines, rect, solid } from '../../lib/drawing/shape';
import { type Box, grown } from '../../lib/geometry/box';
import { type Ring, rectRing } from '../../lib/geometry/polygon';
import { boundAt, spacingVerdict } from '../../lib/limits/bound';
import { type Bound, RULE_SETS, type RuleSetId } from '../../lib/limits/limit';
import { limitOf, ruleSetTitle } from '../../lib/limits/limits';
import { areaEach, tieDensity } from '../../lib/trade/tie-field';
import { firstTieBeside, type TieMap as MappedTies, tieMapOf } from '../../lib/trade/tie-map';
import { formatLength, type LengthSystem, type Mm, squareFeet } from '../../lib/units';
import type { Picture } from '../drawing/kit-drawing';
import { DrawingFrame, type Working } from './drawing-frame';
import { useFields } from './fields/use-fields';
import { formatNumber, formatQuantity } from './format-number';
import { isWithin, VerdictItem } from './verdict-item';

const PANEL: Box = { x: 0, y: 0, width: 3600, height: 2400 };
const OPENING: Box = { x: 1200, y: 800, width: 1200, height: 1200 };
const SQUARE_MM_PER_SQUARE_M = 1e6;

const FIELDS = {
  stud: { label: 'Stud spacing', start: 400, least: 300, most: 610, step: 5 },
  every: {
    label: 'Ties on',
    start: '1',
    choices: [
      ['1', 'every stud'],
      ['2', 'every second stud'],
    ],
  },
  up: { label: 'Spacing up', start: 600, least: 200, most: 900, step: 10 },
  hasOpening: { label: 'A window in the panel', start: true },
  rules: 'rules',
} as const;

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
  const given = useFields(FIELDS);
  const { system, change } = given;
  const { stud, every, up, hasOpening, rules } = given.values;
  const length = (mm: Mm) => formatLength(mm, system);
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
    if (greatest) change({ stud: greatest.across / 2, every: '2', up: greatest.up });
  }
  return (
    <DrawingFrame
      title="Tie map"
      given={given}
      sheet={tieSheet(
        `${map.ties.length} ties on a panel of ${length(PANEL.width)} by ${length(PANEL.height)}`,
        map,
        hasOpening,
      )}
      note="Each tie with the patch of wall that leans on it. Crossed: the tie that holds most."
      button={
        <button type="button" className="button button-plain" onClick={takeBothGreatest}>
          Take both greatest spacings at once
        </button>
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
    width: PANEL.width,
    height: PANEL.height,
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

/** A panel with its ties, the borders of the patches of wall they hold, and the patch of the busiest. */
function tieSheet(name: string, { ties, columns, rows, owners }: MappedTies, hasOpening: boolean): Picture {
  const wide = PANEL.width / columns;
  const high = PANEL.height / rows;
  const most = Math.max(...ties.map(({ area }) => area));
  const busiest = ties.findIndex(({ area }) => area === most);
  const squares = owners.map((owner, index) => {
    const column = index % columns;
    const row = Math.floor(index / columns);
    return { owner, column, row, right: (column + 1) * wide, top: (row + 1) * high };
  });
  const patch = squares
    .filter(({ owner }) => owner === busiest)
    .map(({ right, top }) => rectRing(right - wide, top - high, wide, high));
  const borders = squares.flatMap(({ owner, column, row, right, top }, index): readonly Ring[] => [
    ...(column + 1 < columns && owners[index + 1] !== owner ? [ring(right, top - high, right, top)] : []),
    ...(row + 1 < rows && owners[index + columns] !== owner ? [ring(right - wide, top, right, top)] : []),
  ]);
  const outline: Area = { kind: 'area', rings: [ringOf(PANEL)], pen: { paint: '--ink', width: 14 } };
  const marks = ties.flatMap(({ x, y }) => [ring(x - 45, y, x + 45, y), ring(x, y - 28, x, y + 28)]);
  return {
    name,
    box: grown(PANEL, 90),
    shapes: [
      rect(PANEL, '--clay', 0.16),
      { kind: 'area', rings: patch, fill: '--ochre', opacity: 0.55 },
      lines(borders, { paint: '--slate', width: 9 }),
      ...(hasOpening ? [solid(ringOf(OPENING), '--paper', { paint: '--ink', width: 14 })] : []),
      outline,
      lines(marks, { paint: '--chalk', width: 24 }),
      ...ties
        .filter((_, index) => index === busiest)
        .map(({ x, y }) =>
          lines([ring(x - 80, y - 80, x + 80, y + 80), ring(x - 80, y + 80, x + 80, y - 80)], {
            paint: '--ink',
            width: 16,
          }),
        ),
    ],
  };
}

function ringOf({ x, y, width, height }: Box): Ring {
  return rectRing(x, y, width, height);
}
