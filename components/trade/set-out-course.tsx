'use client';

import { useState } from 'react';
import { brickFaces } from '../../lib/drawing/brickwork';
import { writtenDimension } from '../../lib/drawing/dimension';
import type { Shape } from '../../lib/drawing/shape';
import { rectRing } from '../../lib/geometry/polygon';
import { capital } from '../../lib/limits/format-amount';
import { type Arrangement, arrangementsOf, leastLapTurned } from '../../lib/trade/set-out';
import { formatLength, type Mm } from '../../lib/units';
import type { Picture } from '../drawing/kit-drawing';
import { DrawingFrame, type Working } from './drawing-frame';
import { useFields } from './fields/use-fields';
import styles from './trade.module.css';
import { TradeTable } from './trade-table';
import { heldTo, LimitVerdict } from './verdict-item';

const FIELDS = {
  wall: { label: 'Length of wall', start: 3000, least: 600, most: 12_000, step: 5 },
  unit: { label: 'Length of a unit', start: 215, least: 150, most: 300, step: 0.5 },
  depth: { label: 'Depth of a unit', start: 102.5, least: 50, most: 150, step: 0.5 },
  joint: { label: 'Joint wished for', start: 10, least: 3, most: 20, step: 0.5 },
  bond: {
    label: 'Bond',
    start: 'half',
    choices: [
      ['half', 'Half bond'],
      ['third', 'Third bond'],
      ['quarter', 'Quarter bond'],
    ],
  },
  rules: 'rules',
} as const;

const WORKING: readonly Working[] = [
  {
    what: 'Joint',
    formula: '(wall − all pieces) ÷ (pieces − 1), both ends free.',
    source: 'bond arithmetic',
  },
  {
    what: 'Cut pieces',
    formula:
      'Half (L − j) ÷ 2, third (L − 2j) ÷ 3, two thirds 2 thirds + j, quarter (L − 3j) ÷ 4, three quarters 3 quarters + 2j.',
    source: 'bond arithmetic: the pieces and their joints make whole units',
  },
  {
    what: 'Which is better',
    formula:
      'The way with the largest smallest piece stands first; among equals the joint nearest to the one wished for.',
    source: 'our ranking; small pieces hold and look badly',
  },
];

/** A row of units between free ends: the ways to fill it, best first. */
export function SetOutCourse() {
  const given = useFields(FIELDS);
  const { system } = given;
  const { wall, unit, depth, joint, bond, rules } = given.values;
  const [chosen, setChosen] = useState<string | null>(null);
  const ways = arrangementsOf({ wall, unit, joint, bond });
  const isGood = (way: Arrangement) =>
    judged(way).every(([id, , measured]) => heldTo(rules, id, measured, { depth })?.passes ?? true);
  const shown = ways.find((way) => keyOf(way) === chosen) ?? ways.find(isGood) ?? ways[0];
  const length = (mm: Mm) => formatLength(mm, system);
  const lap = shown ? leastLapTurned(shown) : 0;
  return (
    <DrawingFrame
      title="Set out a course"
      given={given}
      sheet={shown ? courseSheet(shown, wall, unit, length(wall)) : null}
      note="Below, the row as chosen; above it, the same row turned end for end. Dotted: pieces that are cut."
      result={
        shown
          ? [
              `${capital(shown.name)}: ${shown.pieces.length} pieces, joints of ${length(shown.joint)}. The smallest piece is ${length(shown.smallest)}.`,
              lap < 1
                ? 'Turned end for end it stands joint over joint: begin the next row with another piece.'
                : `Turned end for end for the next row, its joints lap by ${length(lap)} at the least.`,
            ]
          : ['No way fills this wall with joints up to three times the wish.']
      }
      verdicts={
        shown &&
        judged(shown).map(([id, what, measured]) => (
          <LimitVerdict key={id} {...{ rules, id, what, measured, show: length }} at={{ depth }} />
        ))
      }
      working={WORKING}
    >
      <TradeTable
        caption="Ways to fill it, largest smallest piece first"
        heads={['Way', 'Pieces', 'Joint', 'Smallest', 'Limits']}
      >
        {ways.map((way) => (
          <tr key={keyOf(way)}>
            <th scope="row">
              <button
                type="button"
                className={styles.choose}
                aria-pressed={way === shown}
                onClick={() => setChosen(keyOf(way))}
              >
                {way.name}
              </button>
            </th>
            <td>{way.pieces.length}</td>
            <td>{length(way.joint)}</td>
            <td>{length(way.smallest)}</td>
            <td>{isGood(way) ? '✓ within' : '✗ outside'}</td>
          </tr>
        ))}
      </TradeTable>
    </DrawingFrame>
  );
}

function keyOf({ name, pieces }: Arrangement): string {
  return `${name} ${pieces.length}`;
}

function judged(way: Arrangement) {
  return [
    ['head-joint-least', 'Head joint, not too thin', way.joint],
    ['head-joint-most', 'Head joint, not too thick', way.joint],
    ['smallest-piece', 'Smallest piece', way.smallest],
  ] as const;
}

const LEFT = 10;
const WIDE = 400;
const ROW = 46;

/** A row of units and, above it, the same row turned end for end. */
function courseSheet(way: Arrangement, wall: Mm, unit: Mm, written: string): Picture {
  const over = writtenDimension([LEFT, 130], [LEFT + WIDE, 130], written);
  const row = (pieces: readonly Mm[], y: number): readonly Shape[] => {
    let at = 0;
    const boxes = pieces.map((piece) => {
      const x = LEFT + (at * WIDE) / wall;
      at += piece + way.joint;
      return { x, y, width: (piece * WIDE) / wall, height: ROW, isCut: piece < unit };
    });
    const cutRings = boxes.filter(({ isCut }) => isCut).map((box) => rectRing(box.x, y, box.width, ROW));
    const pen = { paint: '--ink', width: 2, dash: [2, 2] };
    return [...brickFaces(boxes), { kind: 'area', rings: cutRings, fill: 'none', pen }];
  };
  return {
    name: `A row of ${way.pieces.length} pieces on ${written}, and the same turned`,
    box: { x: 0, y: 0, width: 420, height: 170 },
    shapes: [...row([...way.pieces].reverse(), 64), ...row(way.pieces, 14), ...over.shapes],
    labels: [over.label],
  };
}
