import type { Box } from '../../geometry/box';
import type { Point, Ring } from '../../geometry/polygon';
import type { Mm } from '../../units';
import type { Wall } from '../../wall/model';
import { bedId, courseId, parsePartId } from '../../wall/part-id';
import type { PanelSurvey } from '../../wall/survey';
import type { SurveyedWall } from '../../wall/surveyed';
import { onFace } from '../unit-outline';
import type { FindingDimension } from './finding-dimension';

/** Two points on the face between which something is measured. */
export interface Span {
  readonly from: Point;
  readonly to: Point;
  /** A line to measure from: level or plumb. */
  readonly base?: readonly [Point, Point];
  /** One of two places that are compared: it says what it measures itself, on this side of it. */
  readonly side?: 'left' | 'right';
}

/** Where a check measures on the face, if there are two ends to point at. */
export function spansOf({ wall, panels, parts }: SurveyedWall, dimension: FindingDimension): readonly Span[] {
  const { check, parts: ids, region, measured, unit } = dimension;
  const part = parts.get(ids[0] ?? '');
  switch (check) {
    case 'tapering-bed':
      return bedEnds(panels, ids[0] ?? '');
    case 'thick-joint':
    case 'thin-joint':
      if (part === undefined) return [];
      return [
        part.kind === 'head'
          ? across(part, part.y + part.height / 2)
          : upright(part, part.x + part.width / 2),
      ];
    case 'sliver-piece':
      return acrossUnit(panels, ids[0] ?? '');
    case 'course-off-level':
      return courseDrop(wall, ids[0] ?? '');
    case 'perpend-drift': {
      const middles = ids.flatMap((id): Ring => {
        const head = parts.get(id);
        return head?.kind === 'head' ? [[head.x + head.width / 2, head.y + head.height]] : [];
      });
      return gathered(middles, measured);
    }
    case 'no-tie-at-edge':
      return toNearestTie(wall, dimension);
    case 'short-lintel-bearing':
      return bearing(wall, ids[0] ?? '', ids[1] ?? '');
    default: {
      if (unit !== 'mm') return [];
      if (Math.abs(region.height - measured) < 1) return [upright(region, region.x + region.width / 2)];
      return Math.abs(region.width - measured) < 1 ? [across(region, region.y + region.height / 2)] : [];
    }
  }
}

function across({ x, width }: Box, y: Mm): Span {
  return { from: [x, y], to: [x + width, y] };
}

/** From end to end of a unit, halfway up. */
function acrossUnit(panels: readonly PanelSurvey[], id: string): readonly Span[] {
  const unit = panels.flatMap(({ placed }) => placed).find((each) => each.unit.id === id)?.unit;
  return unit === undefined ? [] : [{ from: onFace(unit, 0, 0.5), to: onFace(unit, 1, 0.5) }];
}

function upright({ y, height }: Box, x: Mm): Span {
  return { from: [x, y], to: [x, y + height] };
}

/** Both ends of a bed. */
function bedEnds(panels: readonly PanelSurvey[], bed: string): readonly Span[] {
  for (const { placed } of panels) {
    const each = placed.find(({ unit }) => bedId(unit.id) === bed);
    if (each?.bed == null) continue;
    const { unit } = each;
    const right = unit.x + unit.length;
    const low = unit.y - unit.fall;
    return [
      { from: [unit.x, unit.y - each.bed.left], to: [unit.x, unit.y], side: 'left' },
      { from: [right, low - each.bed.right], to: [right, low], side: 'right' },
    ];
  }
  return [];
}

/** From the level through one end of a course to its other end. */
function courseDrop(wall: Wall, course: string): readonly Span[] {
  const units = wall.units.filter(({ panel, course: row }) => courseId(panel, row) === course);
  const first = units[0];
  const last = units[units.length - 1];
  if (first === undefined || last === undefined) return [];
  const x = last.x + last.length;
  const level: Point = [x, first.y];
  return [{ from: level, to: [x, last.y - last.fall], base: [[first.x, first.y], level] }];
}

/** Of one chain of head joints, from the furthest left to the furthest right, with a plumb line through the first. */
function gathered(middles: Ring, measured: number): readonly Span[] {
  for (const left of middles) {
    const right = middles.find(([x]) => Math.abs(x - left[0] - measured) < 0.1);
    if (right === undefined) continue;
    const plumb: Point = [left[0], right[1]];
    return [{ from: plumb, to: right, base: [left, plumb] }];
  }
  return [];
}

/** From the end of a lintel to the jamb, on the side where less lies on the wall. */
function bearing(wall: Wall, lintel: string, opening: string): readonly Span[] {
  const steel = wall.supports.find(({ id }) => id === lintel);
  const gap = wall.openings.find(({ id }) => id === opening);
  if (steel === undefined || gap === undefined) return [];
  const end = gap.x + gap.width;
  return gap.x - steel.fromX <= steel.toX - end
    ? [{ from: [steel.fromX, steel.y], to: [gap.x, steel.y] }]
    : [{ from: [end, steel.y], to: [steel.toX, steel.y] }];
}

/** From an edge to the nearest tie along it; nothing where it is the gap between ties that was measured. */
function toNearestTie(
  wall: Wall,
  { parts: [edge = ''], region, measured }: FindingDimension,
): readonly Span[] {
  const opening = wall.openings.find(({ id }) => id === edge);
  const name = parsePartId(edge);
  const length = wall.panels.find(({ id }) => id === region.panel)?.length ?? 0;
  const [x, sense] = opening
    ? region.x < opening.x
      ? [opening.x, -1]
      : [opening.x + opening.width, 1]
    : name?.kind === 'edge' && name.end === 'left'
      ? [0, 1]
      : [length, -1];
  const tie = wall.ties.find(
    ({ panel, x: at, y }) =>
      panel === region.panel &&
      y >= region.y &&
      y <= region.y + region.height &&
      Math.abs((at - x) * sense - measured) < 0.2,
  );
  return tie ? [{ from: [x, tie.y], to: [tie.x, tie.y] }] : [];
}
