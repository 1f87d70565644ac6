import type { RuleSetId } from '../../lib/limits/limit';
import type { Wall } from '../../lib/wall/model';
import { measureBacks } from './back';
import { measureBond } from './bond';
import { measureFaces } from './face';
import { measureJoints } from './joints';
import { measureLines } from './line';
import { measureMortar } from './mortar';
import type { NaiveFinding } from './naive-finding';
import { regionOfParts } from './regions';
import { measureSupports } from './support';
import { measureTies } from './ties';
import { measureWater } from './water';

/**
 * A second opinion on every wall, worked out from the definitions alone with plain loops. It shares nothing
 * with the inspection but the model; its figures are typed from the sources, so that a slip in either shows. In no particular order.
 */
export function measureNaively(wall: Wall, rules: RuleSetId): readonly Required<NaiveFinding>[] {
  const findings = [
    ...measureBacks(wall, rules),
    ...measureJoints(wall, rules),
    ...measureLines(wall, rules),
    ...measureFaces(wall, rules),
    ...measureBond(wall, rules),
    ...measureSupports(wall, rules),
    ...measureTies(wall, rules),
    ...measureWater(wall, rules),
    ...measureMortar(wall, rules),
  ];
  return findings.map((finding) => ({
    ...finding,
    region: finding.region ?? regionOfParts(wall, finding.parts, finding.check),
  }));
}
