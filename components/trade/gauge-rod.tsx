'use client';

import { useState } from 'react';
import { boundAt } from '../../lib/limits/bound';
import type { RuleSetId } from '../../lib/limits/limit';
import { limitOf } from '../../lib/limits/limits';
import {
  coursesInHeight,
  driftAfter,
  type Gauge,
  gaugeForCourses,
  nearestGauge,
} from '../../lib/trade/coursing';
import { formatLength, type LengthSystem, type Mm } from '../../lib/units';
import { DrawingFrame, type Working } from './drawing-frame';
import { RulesField, TickField } from './fields/choice-field';
import { LengthField } from './fields/length-field';
import { formatNumber } from './format-number';
import { useLengthsHere, useRulesHere } from './rules-here';
import { RodSheet } from './sheets/rod-sheet';
import { RodStrips } from './sheets/rod-strips';
import styles from './trade.module.css';
import { isWithin, VerdictItem } from './verdict-item';

const WORKING: readonly Working[] = [
  {
    what: 'Courses and joint',
    formula:
      'Courses = height ÷ (unit + joint), rounded. Gauge = height ÷ courses. Joint = gauge − unit, one bed under each course.',
    source: 'trade arithmetic; a published example makes 38 or 39 of 3300 mm with units of 76 mm',
  },
  {
    what: 'An error that repeats',
    formula: 'Courses × error of one course.',
    source: 'the same',
  },
];

/** A rod for a height: how many courses, which joint, and what a small error comes to. */
export function GaugeRod() {
  const system = useLengthsHere();
  const [height, setHeight] = useState<Mm>(3300);
  const [unit, setUnit] = useState<Mm>(76);
  const [joint, setJoint] = useState<Mm>(10);
  const [off, setOff] = useState<Mm>(0.5);
  const [isPrinted, setPrinted] = useState(false);
  const [rules, setRules] = useRulesHere();
  const gauge = nearestGauge(height, unit, joint);
  const length = (mm: Mm) => formatLength(mm, system);
  const drift = driftAfter(gauge.courses, off);
  return (
    <DrawingFrame
      title="Gauge rod"
      system={system}
      sheet={<RodSheet {...{ gauge, unit, height, system }} />}
      note="The rod with a mark at the top of every course. Bold: every fourth."
      controls={
        <>
          <LengthField
            label="Height to fill"
            {...{ system, value: height, least: 300, most: 6000, step: 10, onChange: setHeight }}
          />
          <LengthField
            label="Height of a unit"
            {...{ system, value: unit, least: 40, most: 250, step: 1, onChange: setUnit }}
          />
          <LengthField
            label="Joint wished for"
            {...{ system, value: joint, least: 3, most: 25, step: 0.5, onChange: setJoint }}
          />
          <LengthField
            label="Each course too high by"
            {...{ system, value: off, least: 0, most: 5, step: 0.1, onChange: setOff }}
          />
          <RulesField value={rules} onChange={setRules} />
          <TickField label="Print the rod at full size, on strips" value={isPrinted} onChange={setPrinted} />
        </>
      }
      result={[
        `${formatNumber(coursesInHeight(height, unit, joint), 2)} courses would fit at the joint wished for. Lay ${gauge.courses}.`,
        `Gauge ${inBoth(gauge.gauge, system)}, bed joint ${inBoth(gauge.joint, system)}.`,
        `${length(off)} too much in each course is ${length(drift)} at the top.`,
      ]}
      verdicts={<Verdicts {...{ rules, gauge, off, system }} />}
      working={WORKING}
    >
      <OtherCounts {...{ gauge, unit, height, system }} />
      {isPrinted && <RodStrips gauge={gauge} />}
    </DrawingFrame>
  );
}

function OtherCounts({
  gauge,
  unit,
  height,
  system,
}: {
  readonly gauge: Gauge;
  readonly unit: Mm;
  readonly height: Mm;
  readonly system: LengthSystem;
}) {
  const counts = [gauge.courses - 1, gauge.courses, gauge.courses + 1].filter(
    (courses) => courses >= 1 && height / courses >= unit,
  );
  return (
    <div className={styles.table}>
      <table>
        <caption>One course less or more</caption>
        <thead>
          <tr>
            <th scope="col">Courses</th>
            <th scope="col">Gauge</th>
            <th scope="col">Bed joint</th>
          </tr>
        </thead>
        <tbody>
          {counts.map((courses) => {
            const each = gaugeForCourses(height, courses, unit);
            return (
              <tr key={courses}>
                <th scope="row">{courses}</th>
                <td>{inBoth(each.gauge, system)}</td>
                <td>{inBoth(each.joint, system)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}

/** A rod is marked in fractions of a mm, which add up: both, the reader's first. */
function inBoth(mm: Mm, system: LengthSystem): string {
  const both = [`${formatNumber(mm, 3)} mm`, formatLength(mm, 'inches')];
  const [first, second] = system === 'mm' ? both : both.toReversed();
  return `${first} (${second})`;
}

function Verdicts(props: {
  readonly rules: RuleSetId;
  readonly gauge: Gauge;
  readonly off: Mm;
  readonly system: LengthSystem;
}) {
  const { rules, gauge, off, system } = props;
  const rows = [
    ['bed-joint-least', 'Bed joint, not too thin', gauge.joint],
    ['bed-joint-most', 'Bed joint, not too thick', gauge.joint],
    ['gauge', 'Drift in 4 courses', driftAfter(4, off)],
  ] as const;
  return rows.map(([id, what, measured]) => {
    const limit = limitOf(rules, id);
    if (limit === undefined) return null;
    const bound = boundAt(limit, {});
    return (
      <VerdictItem
        key={id}
        limit={limit}
        what={what}
        passes={isWithin(limit, measured, bound)}
        text={`${formatLength(measured, system)}, ${limit.end} ${formatLength(bound, system)}.`}
      />
    );
  });
}
