'use client';

import { brickFaces } from '../../lib/drawing/brickwork';
import { cut } from '../../lib/drawing/cut';
import { ring, round, rounded, turnAbout, turnedAbout } from '../../lib/drawing/rings';
import { lines, type Pen, polygon, solid } from '../../lib/drawing/shape';
import { type Point, rectRing } from '../../lib/geometry/polygon';
import { slopeVerdict } from '../../lib/limits/bound';
import { formatAmount } from '../../lib/limits/format-amount';
import { limitOf } from '../../lib/limits/limits';
import { bubbleMove, reversalOf, steppedError, tiltOf } from '../../lib/trade/spirit-level';
import { formatLength, MM_PER_M, type Mm } from '../../lib/units';
import type { Picture } from '../drawing/kit-drawing';
import { DrawingFrame, type Working } from './drawing-frame';
import { useFields } from './fields/use-fields';
import { formatNumber } from './format-number';
import { VerdictItem } from './verdict-item';

/** A carpenter's vial is curved to about this. Second-hand; only for the drawing. */
const VIAL_RADIUS: Mm = 200;

const FIELDS = {
  slope: { label: 'The bed really slopes', slope: true, start: 1, least: -10, most: 10, step: 0.5 },
  error: { label: 'The level is wrong by', slope: true, start: 1, least: -5, most: 5, step: 0.5 },
  isTurned: { label: 'Turned end for end', start: false },
  long: { label: 'Length of the level', start: 1200, least: 300, most: 2400, step: 50 },
  placings: { label: 'Placed end to end', unit: 'times', whole: true, start: 5, least: 1, most: 20, step: 1 },
  above: { label: 'Bob: gap to the wall above', start: 50, least: 20, most: 120, step: 1 },
  below: { label: 'Bob: gap to the wall below', start: 54, least: 20, most: 120, step: 1 },
  high: { label: 'Height between the two', start: 2400, least: 500, most: 6000, step: 100 },
  rules: 'rules',
} as const;

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
  const given = useFields(FIELDS);
  const { system } = given;
  const { slope, error, isTurned, placings, long, above, below, high, rules } = given.values;
  const first = slope + error;
  const second = slope - error;
  const found = reversalOf(first, second);
  const shown = isTurned ? second : first;
  const run = placings * long;
  const each = (Math.abs(error) * long) / MM_PER_M;
  const per = (value: number) =>
    system === 'mm' ? `${formatNumber(value, 2)} mm in a metre` : formatAmount(value, 'mm per m', system);
  const length = (mm: Mm) => formatLength(mm, system);
  const judged = [
    ['course-level', `Level over ${length(run)}`, Math.abs(slope) / MM_PER_M, run],
    ['plumb', `Plumb over ${length(high)}`, Math.abs(below - above) / high, high],
  ] as const;
  return (
    <DrawingFrame
      title="Level and straightedge"
      given={given}
      sheet={levelSheet(`The level reads ${per(shown)}`, slope, bubbleMove(shown, VIAL_RADIUS), given.values)}
      note="Slopes and the move of the bubble are drawn 20 times too large. The dot marks the level's first end. Right: a bob beside the wall."
      result={[
        `${isTurned ? 'Turned, it' : 'It'} reads ${per(shown)}. First ${per(first)}, turned ${per(second)}.`,
        `So the bed slopes ${per(found.slope)} (${formatNumber(tiltOf(found.slope), 3)} degrees) and the level is wrong by ${per(found.error)}.`,
        `Stepped ${placings} times the same way round, its error grows to ${length(steppedError(each, placings, 'same way'))}; turned at each step, to ${length(steppedError(each, placings, 'turned'))}.`,
        below === above
          ? 'By the bob the wall is plumb.'
          : `By the bob the wall leans ${length(Math.abs(below - above))} ${below > above ? 'outward' : 'inward'} over ${length(high)}.`,
      ]}
      verdicts={judged.map(([id, what, lean, over]) => {
        const limit = limitOf(rules, id);
        if (limit === undefined) return null;
        const { passes, measured, limit: bound } = slopeVerdict(limit.bound, lean, over);
        const text = `${length(measured)}, at most ${length(bound)}.`;
        return <VerdictItem key={id} {...{ limit, what, passes, text }} />;
      })}
      working={WORKING}
      caution={[
        'A wall that leans may be about to move. Do not lean a ladder on it, and keep people away until someone competent has looked.',
      ]}
    />
  );
}

const DRAWN = 20;
const BED = 60;
/** The slope turns about this place on the bed. */
const HEEL: Point = [145, BED];
/** Where the string of the bob hangs, and pixels a mm of its gap to the wall. */
const BOB = 318;
const GAP_DRAWN = 0.6;
const INK: Pen = { paint: '--ink', width: 1.5 };

/** A level on a sloping bed with its vial, and a bob beside a wall. The bubble's `move` in mm is positive to the right. */
function levelSheet(
  name: string,
  slope: number,
  move: Mm,
  { isTurned, above, below }: { readonly isTurned: boolean; readonly above: Mm; readonly below: Mm },
): Picture {
  const degrees = (Math.atan((slope / MM_PER_M) * DRAWN) * 180) / Math.PI;
  const turned = (points: readonly Point[]) => turnedAbout(HEEL, degrees, points);
  const bubble = 145 + Math.max(-44, Math.min(44, move * DRAWN));
  const end = isTurned ? 250 : 40;
  return {
    name,
    box: { x: 0, y: 0, width: 420, height: 260 },
    shapes: [
      ...brickFaces(
        [10, 147].map((x) => ({ x, y: BED - 44, width: 133, height: 44 })),
        turnAbout(HEEL, degrees),
      ),
      solid(turned(rectRing(25, BED, 240, 40)), '--ochre-wash', INK),
      polygon(turned(round(end, BED + 20, 6)), '--ink'),
      solid(turned(rounded(90, BED + 9, 110, 22, 11)), '--raised', INK),
      solid(turned(round(bubble, BED + 20, 15, 8)), '--moss', INK, 0.6),
      lines(
        [129, 161].map((x) => turned(ring(x, BED + 8, x, BED + 32))),
        { paint: '--ink', width: 2 },
      ),
      cut(
        ring(412, 230, 412, 20, BOB + below * GAP_DRAWN, 20, BOB + above * GAP_DRAWN, 230),
        'url:cut-brick',
      ),
      lines([ring(BOB, 250, BOB, 44)], { paint: '--chalk', width: 2 }),
      polygon(ring(BOB - 7, 46, BOB + 7, 46, BOB, 22), '--chalk'),
    ],
  };
}
