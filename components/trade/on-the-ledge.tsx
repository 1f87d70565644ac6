'use client';

import { cut } from '../../lib/drawing/cut';
import { writtenDimension } from '../../lib/drawing/dimension';
import { ring, turnedAbout } from '../../lib/drawing/rings';
import { labelAt, lines, polygon } from '../../lib/drawing/shape';
import { type Point, rectRing } from '../../lib/geometry/polygon';
import { bearingPressure } from '../../lib/trade/lintel-bending';
import { overhangMarksOf, peakStressRatio, pressedLengthOf, standingOf } from '../../lib/trade/overhang';
import { formatLength, type Mm } from '../../lib/units';
import type { Picture } from '../drawing/kit-drawing';
import { DrawingFrame, type Working } from './drawing-frame';
import { useFields } from './fields/use-fields';
import { formatNumber, formatQuantity } from './format-number';
import { LimitVerdict } from './verdict-item';

/** Brick veneer of about 90 mm, N/mm² of face: 40 lb/ft² (1.915 kPa), the usual figure of American tables. */
const WALL_WEIGHT = 1.915e-3;

const FIELDS = {
  depth: { label: 'Depth of the unit', start: 90, least: 50, most: 150, step: 1 },
  pushed: { label: 'Past the edge of the ledge', start: 20, least: 0, most: 149, step: 1 },
  high: { label: 'Height of wall above', start: 2400, least: 100, most: 9000, step: 100 },
  rules: 'rules',
} as const;

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
  const given = useFields(FIELDS);
  const { system } = given;
  const { depth, pushed, high, rules } = given.values;
  const overhang = Math.min(pushed, depth - 1);
  const length = (mm: Mm) => formatLength(mm, system);
  const stands = standingOf(depth, overhang);
  const even = bearingPressure(WALL_WEIGHT * high, depth, 1);
  const judged = [
    ['overhang-share', 'Overhang, by share of the depth'],
    ['overhang-fixed', 'Overhang, by length'],
  ] as const;
  return (
    <DrawingFrame
      title="On the ledge"
      given={{
        ...given,
        fields: { ...FIELDS, pushed: { ...FIELDS.pushed, most: depth - 1 } },
        values: { ...given.values, pushed: overhang },
      }}
      sheet={ledgeSheet(depth, overhang, length)}
      note="A cut through the foot of the wall, outside to the right. Ties and mortar are left out: the unit stands alone."
      result={[
        `${length(depth - overhang)} stand on the ledge, ${length(overhang)} hang over: ${formatNumber((100 * overhang) / depth, 0)} % of the depth.`,
        standingWords(stands, depth, overhang, length),
        stands === 'tipping'
          ? 'No bed carries it any more, so there is no stress to state.'
          : `The edge is pressed ${formatNumber(peakStressRatio(depth, overhang))} times the even stress: ${formatQuantity(even * peakStressRatio(depth, overhang), 'MPa', system, 3)}, against ${formatQuantity(even, 'MPa', system, 3)}.`,
      ]}
      verdicts={judged.map(([id, what]) => (
        <LimitVerdict key={id} {...{ rules, id, what, measured: overhang, show: length }} at={{ depth }} />
      ))}
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

const EDGE = 205;
const BED = 126;
const UNIT_HIGH = 114;
/** Degrees, once it tips; for looks. */
const TIPPED = 14;
/** Drawn on brick and concrete, which are as light by night as by day. */
const WEIGHT = '#2a5c8f';

/** A cut through a ledge and the unit on it, its weight straight down from its middle. */
function ledgeSheet(depth: Mm, overhang: Mm, length: (mm: Mm) => string): Picture {
  const { kern, third, tipping } = overhangMarksOf(depth);
  const perMm = Math.min(2, 185 / depth);
  const face = EDGE + overhang * perMm;
  const wide = depth * perMm;
  const tips = overhang >= tipping;
  const laid = (points: readonly Point[]) => (tips ? turnedAbout([EDGE, BED], -TIPPED, points) : points);
  const [weight = [0, 0]] = laid([[face - wide / 2, BED + UNIT_HIGH / 2]]);
  const [x, y] = weight;
  const over = writtenDimension([EDGE, 262], [face, 262], length(overhang));
  const marks = (
    [
      [kern, 'quarter'],
      [third, 'third'],
      [tipping, 'half: tips'],
    ] as const
  ).map(([at, name], index) => ({
    ...{ x: EDGE + at * perMm, y: 34 + index * 26 },
    text: `${name}, ${length(at)}`,
  }));
  return {
    name: `Unit ${length(depth)} deep, ${length(overhang)} past the edge of its ledge${tips ? ', tipping' : ''}`,
    box: { x: 0, y: 0, width: 420, height: 300 },
    shapes: [
      cut(rectRing(-100, BED - 130, EDGE + 100, 130), 'url:concrete'),
      cut(laid(rectRing(face - wide, BED, wide, UNIT_HIGH)), 'url:cut-brick'),
      lines([ring(x, y, x, y - 72)], { paint: WEIGHT, width: 2.5, dash: [6, 4] }),
      polygon(ring(x - 6, y - 70, x + 6, y - 70, x, y - 82), WEIGHT),
      { kind: 'dot', at: weight, radius: 5, fill: WEIGHT, pen: { paint: '#ffffff', width: 1 } },
      lines([ring(EDGE, 284, EDGE, BED)], { paint: '--slate', width: 1, dash: [2, 3] }),
      lines(
        marks.map((mark) => ring(mark.x, BED - 4, mark.x, mark.y, mark.x + 6, mark.y)),
        { paint: '--slate', width: 1 },
      ),
      ...(overhang > 0 ? over.shapes : []),
    ],
    labels: [
      ...(overhang > 0 ? [over.label] : []),
      ...marks.map((mark) => labelAt(mark.x + 10, mark.y, mark.text, 'start')),
      labelAt(10, 71, 'ledge', 'start'),
    ],
  };
}
