import { boundAt } from '../../../limits/bound';
import type { Limit, Limits } from '../../../limits/limit';
import type { BackContact } from '../../../wall/back-contact';
import type { PanelSurvey, Placed, Survey } from '../../../wall/survey';
import { type Measurement, passes, type Report } from '../../check';
import type { CheckId } from '../../finding';
import { boxOf } from '../../places';

type Named = Extract<CheckId, 'missing-back-mortar' | 'ring-buttered-back'>;

interface Lifted {
  readonly placed: Placed;
  readonly measurement: Measurement;
}

/** Contact and largest bare area of every back. A bare middle closed all round is a ring; any other bare area is missing mortar. */
export function measureBacks({ wall, panels }: Survey, limits: Limits, named: Named, report: Report): void {
  const contact = limits('back-contact');
  const bare = limits('back-void');
  if (wall.masonry !== 'adhered' || contact === undefined || bare === undefined) return;
  for (const panel of panels) {
    const failing = new Map<Placed, Lifted>();
    for (const placed of panel.placed) {
      if (placed.back === null) continue;
      const measurement = lift(placed, placed.back, contact, bare);
      const ring = placed.back.closed;
      if (passes(measurement)) {
        if (named === 'missing-back-mortar') report(measurement);
      } else if (ring === (named === 'ring-buttered-back')) {
        failing.set(placed, { placed, measurement });
      }
    }
    if (failing.size > 0) for (const patch of patchesOf(panel, failing)) report(patchMeasurement(patch));
  }
}

function lift(placed: Placed, back: BackContact, contact: Limit, bare: Limit): Measurement {
  const at = placed.unit.id;
  const place = () => ({ parts: [at], region: boxOf([placed]) });
  const share = (back.covered / back.area) * 100;
  const leastShare = boundAt(contact, {});
  const mostBare = boundAt(bare, {});
  if (share >= leastShare && back.largestBare > mostBare) {
    return { limit: bare, end: 'at most', measured: back.largestBare, bound: mostBare, at, place };
  }
  return { limit: contact, end: 'at least', measured: share, bound: leastShare, at, place };
}

/** Failing units that touch: one mason, one habit, one thing seen. */
function patchesOf(
  { placed }: PanelSurvey,
  failing: ReadonlyMap<Placed, Lifted>,
): readonly (readonly Lifted[])[] {
  const seen = new Set<Placed>();
  const patches: Lifted[][] = [];
  for (const start of placed) {
    if (!failing.has(start) || seen.has(start)) continue;
    seen.add(start);
    const reached = new Set<Placed>();
    const waiting = [start];
    for (let each = waiting.pop(); each !== undefined; each = waiting.pop()) {
      reached.add(each);
      for (const next of [each.left, each.right, ...each.below, ...each.above]) {
        if (next === null || !failing.has(next) || seen.has(next)) continue;
        seen.add(next);
        waiting.push(next);
      }
    }
    patches.push(placed.flatMap((each) => (reached.has(each) ? (failing.get(each) ?? []) : [])));
  }
  return patches;
}

function patchMeasurement(patch: readonly Lifted[]): Measurement {
  const worst = patch.reduce((most, each) => (isWorse(each.measurement, most.measurement) ? each : most));
  const parts = [
    worst.measurement.at,
    ...patch.filter((each) => each !== worst).map(({ measurement }) => measurement.at),
  ];
  return { ...worst.measurement, place: () => ({ parts, region: boxOf(patch.map(({ placed }) => placed)) }) };
}

function isWorse(a: Measurement, b: Measurement): boolean {
  if (a.end !== b.end) return a.end === 'at least';
  return a.end === 'at least' ? a.measured < b.measured : a.measured > b.measured;
}
