import type { CrackStep } from '../failing/state/crack-steps';
import type { FailingWall } from '../failing/state/model';
import { parsePartId, type UnitId } from '../wall/part-id';

/** The units on both sides of a joint that has come apart, or the one that is cracked through. */
export function besideOf(
  { survey }: FailingWall,
  { kind, part, from, to, panel }: CrackStep,
): readonly UnitId[] {
  if (kind === 'unit') return [part as UnitId];
  const name = parsePartId(part);
  const placed = survey.panels.find((each) => each.panel.id === panel)?.placed ?? [];
  const x = (from[0] + to[0]) / 2;
  if (name?.kind === 'head') {
    const left = placed.find(({ unit }) => unit.course === name.course && unit.position === name.position);
    return left === undefined ? [] : [left.unit.id, ...(left.right === null ? [] : [left.right.unit.id])];
  }
  if (name?.kind !== 'bed') return [];
  const upper = placed.find(({ unit }) => unit.course === name.course && unit.position === name.position);
  if (upper === undefined) return [];
  const under = upper.below.filter(({ unit }) => unit.x <= x && x <= unit.x + unit.length);
  return [upper.unit.id, ...under.map(({ unit }) => unit.id)];
}
