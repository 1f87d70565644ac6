'use client';

import { useState } from 'react';
import { boundAt } from '../../lib/limits/bound';
import type { RuleSetId } from '../../lib/limits/limit';
import { limitOf } from '../../lib/limits/limits';
import { type Arrangement, arrangementsOf, type Bond, leastLapTurned } from '../../lib/trade/set-out';
import { formatLength, type Mm } from '../../lib/units';
import { DrawingFrame, type Working } from './drawing-frame';
import { ChoiceField, RulesField } from './fields/choice-field';
import { LengthField } from './fields/length-field';
import { useLengthsHere, useRulesHere } from './rules-here';
import { CourseSheet } from './sheets/course-sheet';
import styles from './trade.module.css';
import { isWithin, VerdictItem } from './verdict-item';

const BONDS = [
  ['half', 'Half bond'],
  ['third', 'Third bond'],
  ['quarter', 'Quarter bond'],
] as const;

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
  const system = useLengthsHere();
  const [wall, setWall] = useState<Mm>(3000);
  const [unit, setUnit] = useState<Mm>(215);
  const [joint, setJoint] = useState<Mm>(10);
  const [depth, setDepth] = useState<Mm>(102.5);
  const [bond, setBond] = useState<Bond>('half');
  const [chosen, setChosen] = useState<string | null>(null);
  const [rules, setRules] = useRulesHere();
  const ways = arrangementsOf({ wall, unit, joint, bond });
  const isGood = (way: Arrangement) => judged(way, rules, depth).every(({ passes }) => passes);
  const shown = ways.find((way) => keyOf(way) === chosen) ?? ways.find(isGood) ?? ways[0];
  const length = (mm: Mm) => formatLength(mm, system);
  const lap = shown ? leastLapTurned(shown) : 0;
  return (
    <DrawingFrame
      title="Set out a course"
      system={system}
      sheet={shown ? <CourseSheet way={shown} {...{ wall, unit, system }} /> : null}
      note="Below, the row as chosen; above it, the same row turned end for end. Dotted: pieces that are cut."
      controls={
        <>
          <LengthField
            label="Length of wall"
            {...{ system, value: wall, least: 600, most: 12_000, step: 5, onChange: setWall }}
          />
          <LengthField
            label="Length of a unit"
            {...{ system, value: unit, least: 150, most: 300, step: 0.5, onChange: setUnit }}
          />
          <LengthField
            label="Depth of a unit"
            {...{ system, value: depth, least: 50, most: 150, step: 0.5, onChange: setDepth }}
          />
          <LengthField
            label="Joint wished for"
            {...{ system, value: joint, least: 3, most: 20, step: 0.5, onChange: setJoint }}
          />
          <ChoiceField label="Bond" value={bond} choices={BONDS} onChange={setBond} />
          <RulesField value={rules} onChange={setRules} />
        </>
      }
      result={
        shown
          ? [
              `${shown.name[0]?.toUpperCase()}${shown.name.slice(1)}: ${shown.pieces.length} pieces, joints of ${length(shown.joint)}. The smallest piece is ${length(shown.smallest)}.`,
              lap < 1
                ? 'Turned end for end it stands joint over joint: begin the next row with another piece.'
                : `Turned end for end for the next row, its joints lap by ${length(lap)} at the least.`,
            ]
          : ['No way fills this wall with joints up to three times the wish.']
      }
      verdicts={
        shown &&
        judged(shown, rules, depth).map(({ limit, what, measured, bound, passes }) => (
          <VerdictItem
            key={limit.id}
            limit={limit}
            what={what}
            passes={passes}
            text={`${length(measured)}, ${limit.end} ${length(bound)}.`}
          />
        ))
      }
      working={WORKING}
    >
      <div className={styles.table}>
        <table>
          <caption>Ways to fill it, largest smallest piece first</caption>
          <thead>
            <tr>
              <th scope="col">Way</th>
              <th scope="col">Pieces</th>
              <th scope="col">Joint</th>
              <th scope="col">Smallest</th>
              <th scope="col">Limits</th>
            </tr>
          </thead>
          <tbody>
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
          </tbody>
        </table>
      </div>
    </DrawingFrame>
  );
}

function keyOf({ name, pieces }: Arrangement): string {
  return `${name} ${pieces.length}`;
}

function judged(way: Arrangement, rules: RuleSetId, depth: Mm) {
  const rows = [
    ['head-joint-least', 'Head joint, not too thin', way.joint],
    ['head-joint-most', 'Head joint, not too thick', way.joint],
    ['smallest-piece', 'Smallest piece', way.smallest],
  ] as const;
  return rows.flatMap(([id, what, measured]) => {
    const limit = limitOf(rules, id);
    if (limit === undefined) return [];
    const bound = boundAt(limit, { depth });
    return [{ limit, what, measured, bound, passes: isWithin(limit, measured, bound) }];
  });
}
