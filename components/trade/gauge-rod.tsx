'use client';

import { brickFaces } from '../../lib/drawing/brickwork';
import { writtenDimension } from '../../lib/drawing/dimension';
import { ring } from '../../lib/drawing/rings';
import { labelAt, lines, solid } from '../../lib/drawing/shape';
import { rectRing } from '../../lib/geometry/polygon';
import {
  coursesInHeight,
  driftAfter,
  type Gauge,
  gaugeForCourses,
  nearestGauge,
} from '../../lib/trade/coursing';
import { formatLength, type LengthSystem, type Mm } from '../../lib/units';
import type { Picture } from '../drawing/kit-drawing';
import { DrawingFrame, type Working } from './drawing-frame';
import { useFields } from './fields/use-fields';
import { formatNumber } from './format-number';
import { RodStrips } from './rod-strips';
import { TradeTable } from './trade-table';
import { LimitVerdict } from './verdict-item';

const FIELDS = {
  height: { label: 'Height to fill', start: 3300, least: 300, most: 6000, step: 10 },
  unit: { label: 'Height of a unit', start: 76, least: 40, most: 250, step: 1 },
  joint: { label: 'Joint wished for', start: 10, least: 3, most: 25, step: 0.5 },
  off: { label: 'Each course too high by', start: 0.5, least: 0, most: 5, step: 0.1 },
  rules: 'rules',
  isPrinted: { label: 'Print the rod at full size, on strips', start: false },
} as const;

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
  const given = useFields(FIELDS);
  const { system } = given;
  const { height, unit, joint, off, rules, isPrinted } = given.values;
  const gauge = nearestGauge(height, unit, joint);
  const show = (mm: Mm) => formatLength(mm, system);
  const drift = driftAfter(gauge.courses, off);
  const judged = [
    ['bed-joint-least', 'Bed joint, not too thin', gauge.joint],
    ['bed-joint-most', 'Bed joint, not too thick', gauge.joint],
    ['gauge', 'Drift in 4 courses', driftAfter(4, off)],
  ] as const;
  return (
    <DrawingFrame
      title="Gauge rod"
      given={given}
      sheet={rodSheet(gauge, unit, height, show(height))}
      note="The rod with a mark at the top of every course. Bold: every fourth."
      result={[
        `${formatNumber(coursesInHeight(height, unit, joint), 2)} courses would fit at the joint wished for. Lay ${gauge.courses}.`,
        `Gauge ${inBoth(gauge.gauge, system)}, bed joint ${inBoth(gauge.joint, system)}.`,
        `${show(off)} too much in each course is ${show(drift)} at the top.`,
      ]}
      verdicts={judged.map(([id, what, measured]) => (
        <LimitVerdict key={id} {...{ rules, id, what, measured, show }} />
      ))}
      working={WORKING}
    >
      <OtherCounts {...{ gauge, unit, height, system }} />
      {isPrinted && <RodStrips gauge={gauge} />}
    </DrawingFrame>
  );
}

function OtherCounts(props: {
  readonly gauge: Gauge;
  readonly unit: Mm;
  readonly height: Mm;
  readonly system: LengthSystem;
}) {
  const { gauge, unit, height, system } = props;
  const counts = [gauge.courses - 1, gauge.courses, gauge.courses + 1].filter(
    (courses) => courses >= 1 && height / courses >= unit,
  );
  return (
    <TradeTable caption="One course less or more" heads={['Courses', 'Gauge', 'Bed joint']}>
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
    </TradeTable>
  );
}

/** A rod is marked in fractions of a mm, which add up: both, the reader's first. */
function inBoth(mm: Mm, system: LengthSystem): string {
  const both = [`${formatNumber(mm, 3)} mm`, formatLength(mm, 'inches')];
  const [first, second] = system === 'mm' ? both : both.toReversed();
  return `${first} (${second})`;
}

const HIGH = 460;
const FOOT = 30;

/** The rod beside the courses it marks. */
function rodSheet({ courses, gauge }: Gauge, unit: Mm, height: Mm, written: string): Picture {
  const perMm = HIGH / height;
  const marks = Array.from({ length: courses }, (_, index) => ({
    top: FOOT + (index + 1) * gauge * perMm,
    course: index + 1,
    isFourth: index % 4 === 3,
  }));
  const strokes = (bold: boolean, reach: number, width: number) =>
    lines(
      marks.filter(({ isFourth }) => isFourth === bold).map(({ top }) => ring(100, top, 100 + reach, top)),
      { paint: '--ink', width },
    );
  const over = writtenDimension([350, FOOT], [350, FOOT + HIGH], written);
  return {
    name: `Gauge rod of ${written} with ${courses} courses`,
    box: { x: 0, y: 0, width: 420, height: 520 },
    shapes: [
      ...brickFaces(
        marks.map(({ top }) => ({ x: 150, y: top - unit * perMm, width: 180, height: unit * perMm })),
      ),
      solid(rectRing(100, FOOT, 26, HIGH), '--ochre-wash', { paint: '--ink', width: 1 }),
      strokes(true, 26, 2.2),
      strokes(false, 14, 1),
      ...over.shapes,
    ],
    labels: [
      ...marks
        .filter(({ isFourth }) => isFourth)
        .map(({ top, course }) => labelAt(94, top, `${course}`, 'end')),
      over.label,
    ],
  };
}
