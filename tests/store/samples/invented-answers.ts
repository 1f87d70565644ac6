import { CATALOGUE } from '../../../lib/inspect/catalogue';
import { CHECKS, type CheckId, type Finding } from '../../../lib/inspect/finding';
import { inspect } from '../../../lib/inspect/inspect';
import type { RuleSetId } from '../../../lib/limits/limit';
import type { RawMark } from '../../../lib/marking/mark';
import type { Wall } from '../../../lib/wall/model';

/** A learner who does not exist. */
export interface InventedLearner {
  readonly name: string;
  /** On the scale of lib/classes/statistics/rasch.ts. */
  readonly ability: number;
}

/** Numbers from 0 to 1, the same for the same seed. */
export function invented(seed: number): () => number {
  let state = (seed * 2_654_435_761 + 1) >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 4_294_967_296;
  };
}

/** How hard each fault is to see: spread evenly from -1.5 to 1.5 in the order of the catalogue. Invented. */
function hardness(check: CheckId): number {
  return (CHECKS.indexOf(check) / (CHECKS.length - 1)) * 3 - 1.5;
}

/** What such a learner would hand in for a wall: finds, wrong names and false marks by chance, more of the good ones the abler. */
export function inventedMarks(
  { ability }: InventedLearner,
  wall: Wall,
  rules: RuleSetId,
  chance: () => number,
): readonly RawMark[] {
  const marks = inspect(wall, rules).flatMap((finding) => markOn(finding, ability, chance));
  const falseMark = chance() < 0.35 / (1 + Math.exp(ability)) ? randomMark(wall, chance) : [];
  return [...marks, ...falseMark];
}

function markOn(finding: Finding, ability: number, chance: () => number): readonly RawMark[] {
  const [part] = finding.parts;
  const find = 1 / (1 + Math.exp(hardness(finding.check) - ability));
  if (part === undefined || chance() > find) return [];
  const others = CATALOGUE[finding.check].mistakenFor.filter((name): name is CheckId =>
    CHECKS.some((check) => check === name),
  );
  const other = others[Math.floor(chance() * others.length)];
  const isRight = other === undefined || chance() < 0.6 + 0.3 * find;
  return [
    {
      part,
      fault: isRight ? finding.check : other,
      sure: isRight ? (chance() < find ? 3 : 2) : sureAtAll(chance),
    },
  ];
}

function sureAtAll(chance: () => number): 1 | 2 | 3 {
  const draw = chance();
  return draw < 0.5 ? 1 : draw < 0.85 ? 2 : 3;
}

function randomMark(wall: Wall, chance: () => number): readonly RawMark[] {
  const unit = wall.units[Math.floor(chance() * wall.units.length)];
  const fault = chance() < 0.5 ? 'proud-unit' : 'twisted-unit';
  return unit ? [{ part: unit.id, fault, sure: sureAtAll(chance) }] : [];
}
