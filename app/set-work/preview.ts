import { measuredInBoth } from '../../components/result/finding-measure';
import { isFine, measureInBoth } from '../../components/result/format-measure';
import { layByCode } from '../../lib/engines/engines';
import { type Key, keyOf } from '../../lib/exercise/key';
import type { Brief } from '../../lib/generate/brief';
import { codeOf } from '../../lib/generate/wall-code';
import { CATALOGUE } from '../../lib/inspect/catalogue';
import type { Finding } from '../../lib/inspect/finding';
import type { Wall } from '../../lib/wall/model';
import { partName } from '../../lib/wall/part-names';
import { surveyedWall } from '../../lib/wall/surveyed';
import { KIND_TITLES } from '../../lib/wall-page/brief-words';

/** One fault of the key, in words. */
export interface KeyLine {
  readonly fault: string;
  readonly place: string;
  /** "14 mm (9/16 in), at most 12 mm (1/2 in)". */
  readonly measured: string;
  readonly couldFall: boolean;
}

export interface PreviewWall {
  /** From 1. */
  readonly place: number;
  readonly code: string;
  readonly kind: string;
  readonly wall: Wall;
  /** Empty for a sound wall. */
  readonly key: readonly KeyLine[];
}

/** The walls of a form with their key, for the instructor alone. */
export function previewOf(briefs: readonly Brief[]): readonly PreviewWall[] {
  return briefs.map((brief, index) => {
    const key = keyOf(surveyedWall(layByCode(brief).wall), brief.rules);
    return {
      place: index + 1,
      code: codeOf(brief),
      kind: KIND_TITLES[brief.kind],
      wall: key.wall,
      key: key.findings.map((finding) => keyLine(finding, key)),
    };
  });
}

function keyLine(finding: Finding, { wall, parts: all }: Key): KeyLine {
  const { check, parts, measured, limit, unit, hazard } = finding;
  const fine = isFine(limit, unit);
  const part = all.get(parts[0] ?? '');
  const end = measured > limit ? 'at most' : 'at least';
  return {
    fault: CATALOGUE[check].name,
    place: part ? partName(part, wall) : (parts[0] ?? ''),
    measured:
      unit === 'there or not'
        ? measureInBoth(measured, unit)
        : `${measuredInBoth(finding)}, ${end} ${measureInBoth(limit, unit, fine)}`,
    couldFall: hazard === 'could fall',
  };
}
