import type { Point } from '../../geometry/polygon';
import type { Mm } from '../../units';
import { topLeft, topRight } from '../../wall/cut';
import type { Support, Unit } from '../../wall/model';
import { bedId, headId, type PanelId, type PartId } from '../../wall/part-id';
import type { PanelSurvey, Placed } from '../../wall/survey';
import { undersideAt } from '../../wall/survey';
import type { Contact, FailingWall, WallState } from './model';
import { bedOpening, headOpening, movedPoint, moveOf } from './moves';

/** Narrower than this a crack is not seen: the first of the BRE widths, and what a reading over time is recorded to (BRE Digests 251 and 343). */
export const SEEN: Mm = 0.1;

/** One joint, or one unit, that has come apart. */
export interface CrackStep {
  readonly kind: 'bed' | 'head' | 'unit';
  readonly part: PartId;
  readonly panel: PanelId;
  readonly from: Point;
  readonly to: Point;
  /** How wide it stands open at its two ends, mm. */
  readonly widths: readonly [Mm, Mm];
  /** How far its right or upper side has gone from the other, along, up and out, mm. */
  readonly u: Mm;
  readonly v: Mm;
  readonly w: Mm;
  /** How far its middle has gone along and up from where it was laid: the mean of its two sides. */
  readonly gone: { readonly u: Mm; readonly v: Mm };
}

/** Every joint and unit whose sides have gone from each other far enough to be seen: opened, or slid. */
export function crackSteps({ survey, state }: FailingWall): readonly CrackStep[] {
  const broken = new Map<string, Contact[]>();
  for (const contact of state.contacts) {
    if (contact.state === 'bonded' || contact.kind === 'back' || contact.kind === 'tie') continue;
    const of = broken.get(contact.unit);
    if (of) of.push(contact);
    else broken.set(contact.unit, [contact]);
  }
  return survey.panels.flatMap((panel) =>
    panel.placed.flatMap((placed) => {
      if (state.missing.has(placed.unit.id)) return [];
      const contacts = broken.get(placed.unit.id) ?? [];
      return [
        ...splitStep(state, placed, panel),
        ...contacts.flatMap((contact) => stepOf(state, placed, contact, panel)),
      ].filter(({ widths, u, v, w }) => Math.max(...widths, Math.abs(u), Math.abs(v), Math.abs(w)) >= SEEN);
    }),
  );
}

function stepOf(
  state: WallState,
  placed: Placed,
  contact: Contact,
  panel: PanelSurvey,
): readonly CrackStep[] {
  const { unit } = placed;
  if (contact.kind === 'head') {
    const right = placed.right?.unit;
    return right === undefined || state.missing.has(right.id) ? [] : [headStep(state, unit, right, panel)];
  }
  if (contact.kind === 'bearing') return bearingStep(state, placed, panel);
  const lower = placed.below.find((each) => each.unit.id === contact.other)?.unit;
  return lower === undefined || state.missing.has(lower.id) ? [] : bedSteps(state, unit, lower, panel);
}

function headStep(state: WallState, left: Unit, right: Unit, { panel }: PanelSurvey): CrackStep {
  const x = (left.x + left.length + right.x) / 2;
  const low = Math.max(left.y - left.fall, right.y);
  const high = Math.min(left.y - left.fall + left.height, right.y + right.height);
  const middle = (low + high) / 2;
  return {
    kind: 'head',
    part: headId(left.id, right.position),
    panel: panel.id,
    from: [x, low],
    to: [x, high],
    widths: [headOpening(state, left, right, low), headOpening(state, left, right, high)],
    u: headOpening(state, left, right, middle),
    v: movedPoint(state, right, right.x, middle).v - movedPoint(state, left, x, middle).v,
    w: moveOf(state, right, right.x).w - moveOf(state, left, x).w,
    gone: halfway(
      movedPoint(state, left, left.x + left.length, middle),
      movedPoint(state, right, right.x, middle),
    ),
  };
}

/** The stretch of a bed between two units; in two where either of them is cracked through over it. */
function bedSteps(state: WallState, upper: Unit, lower: Unit, { panel }: PanelSurvey): readonly CrackStep[] {
  const from = Math.max(upper.x, topLeft(lower));
  const to = Math.min(upper.x + upper.length, topRight(lower));
  const cuts = [upper, lower]
    .flatMap(({ id }) => state.splits.get(id)?.x ?? [])
    .filter((x) => x > from && x < to)
    .sort((a, b) => a - b);
  const ends = [from, ...cuts, to];
  return ends.slice(1).flatMap((end, index) => {
    const start = ends[index] ?? from;
    const middle = (start + end) / 2;
    const inside = Math.min(1, (end - start) / 4);
    const y = undersideAt(upper, middle);
    const lowerTop = undersideAt(lower, middle) + lower.height;
    return {
      kind: 'bed' as const,
      part: bedId(upper.id),
      panel: panel.id,
      from: [start, (y + lowerTop) / 2] as Point,
      to: [end, (y + lowerTop) / 2] as Point,
      widths: [
        bedOpening(state, upper, lower, start + inside),
        bedOpening(state, upper, lower, end - inside),
      ] as const,
      u: movedPoint(state, upper, middle, y).u - movedPoint(state, lower, middle, y).u,
      v: bedOpening(state, upper, lower, middle),
      w: moveOf(state, upper, middle).w - moveOf(state, lower, middle).w,
      gone: halfway(movedPoint(state, upper, middle, y), movedPoint(state, lower, middle, y)),
    };
  });
}

/** Between a unit and the ledge or lintel under it: how far it has risen from that. */
function bearingStep(
  state: WallState,
  { unit, support }: Placed,
  { panel }: PanelSurvey,
): readonly CrackStep[] {
  if (support === null) return [];
  const from = Math.max(unit.x, support.fromX);
  const to = Math.min(unit.x + unit.length, support.toX);
  if (to <= from) return [];
  const rise = (x: Mm) => movedPoint(state, unit, x, unit.y).v - supportRise(state, support, x);
  const y = (unit.y + support.y) / 2;
  const middle = (from + to) / 2;
  return [
    {
      kind: 'bed',
      part: bedId(unit.id),
      panel: panel.id,
      from: [from, y],
      to: [to, y],
      widths: [rise(from), rise(to)],
      u: movedPoint(state, unit, middle, unit.y).u,
      v: rise(middle),
      w: moveOf(state, unit, middle).w,
      gone: halfway(
        { u: 0, v: supportRise(state, support, middle) },
        movedPoint(state, unit, middle, unit.y),
      ),
    },
  ];
}

/** How far the top of a support has gone up at x, mm: straight from each end to its middle. */
export function supportRise(state: WallState, support: Support, x: Mm): Mm {
  const move = state.supports.get(support.id);
  if (move === undefined) return 0;
  const along = (2 * (x - support.fromX)) / (support.toX - support.fromX);
  return along < 1
    ? move.left + (move.middle - move.left) * along
    : move.middle + (move.right - move.middle) * (along - 1);
}

/** A unit cracked through: a line from bed to bed, as wide as its two pieces have parted. */
function splitStep(state: WallState, { unit }: Placed, { panel }: PanelSurvey): readonly CrackStep[] {
  const split = state.splits.get(unit.id);
  if (split === undefined) return [];
  const left = moveOf(state, unit, unit.x);
  const gap = (height: Mm) => {
    const turn = (split.right.turn - left.turn) / 1000;
    return split.right.u - left.u - turn * (height - unit.height / 2);
  };
  return [
    {
      kind: 'unit',
      part: unit.id,
      panel: panel.id,
      from: [split.x, undersideAt(unit, split.x)],
      to: [split.x, undersideAt(unit, split.x) + unit.height],
      widths: [gap(0), gap(unit.height)],
      u: gap(unit.height / 2),
      v: split.right.v - left.v,
      w: split.right.w - left.w,
      gone: halfway(
        movedPoint(state, unit, split.x, unit.y + unit.height / 2),
        movedPoint(state, unit, split.x + 1, unit.y + unit.height / 2),
      ),
    },
  ];
}

function halfway(one: CrackStep['gone'], other: CrackStep['gone']): CrackStep['gone'] {
  return { u: (one.u + other.u) / 2, v: (one.v + other.v) / 2 };
}
