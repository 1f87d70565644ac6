import type { Finding } from '../inspect/finding';
import { assign, type Option } from './assign';
import { HAZARD_WEIGHT } from './hazard-weight';
import type { PlacedMark, Sure } from './mark';
import { groupMarks, type MarkGroup } from './mark-groups';
import { MarkingError, requireFinite, requireNotNegative } from './marking-error';
import { canMean, distanceInSteps } from './place';

/** What became of one finding. Indices point into the marks as handed in. */
export interface FindingResult {
  readonly outcome: 'found' | 'missed';
  /** The mark paired with it; null when missed. */
  readonly mark: number | null;
  /** Further marks that went to it: ignored, not penalised. */
  readonly repeats: readonly number[];
  /** Found, and some mark that can mean it names its fault. */
  readonly rightName: boolean;
  /** The most certain of its marks; null when missed. */
  readonly sure: Sure | null;
}

/** What became of one mark. */
export interface MarkResult {
  readonly outcome: 'found' | 'wrong name' | 'repeat' | 'false';
  /** Index of the finding it went to; null when it points at nothing. */
  readonly finding: number | null;
}

export interface MatchResult {
  /** In the order of the findings given. */
  readonly findings: readonly FindingResult[];
  /** In the order of the marks given. */
  readonly marks: readonly MarkResult[];
  /** How many marks are 'false'. */
  readonly falseMarks: number;
}

/**
 * Matches marks with findings one to one: most findings found, then most right names, then least distance.
 * `slack` (mm) is how far beside a region a mark still means it.
 *
 * Marks that say the same thing (one part, one fault) count once; the rest of them are 'repeat', and so is
 * every mark that can only mean a finding already taken. A mark that can mean no finding is 'false'.
 * A name counts for every fault at its place: where regions overlap, a mark paired with one finding still
 * names the other. Without that, one more right mark could push others to a worse name and lower the score.
 *
 * Neither the order of marks nor that of findings changes what is found. Throws MarkingError for a slack or a
 * number that is negative or not finite, or a `sure` outside 1 to 3.
 */
export function matchMarks(
  findings: readonly Finding[],
  marks: readonly PlacedMark[],
  slack: number,
): MatchResult {
  requireSensible(findings, marks, slack);
  const groups = groupMarks(marks);
  const options = optionsOf(findings, marks, groups, slack);
  const named = findings.map((_, f) => options.some((option) => option.finding === f && option.rightName));
  const stakes = findings.map(({ hazard }, f) => ({
    couldFall: hazard === 'could fall',
    value: HAZARD_WEIGHT[hazard] * (named[f] ? 2 : 1),
  }));
  const groupOf = assign(groups.length, stakes, options);
  const own = new Map<number, number>();
  groupOf.forEach((group, finding) => {
    if (group !== null) own.set(group, finding);
  });

  const markResults = new Array<MarkResult>(marks.length).fill({ outcome: 'false', finding: null });
  groups.forEach((group, g) => {
    const mine = options.filter((option) => option.group === g);
    const finding = own.get(g) ?? nearest(mine)?.finding ?? null;
    const first = mine.find((option) => option.finding === finding)?.mark ?? group.marks[0];
    for (const mark of group.marks) markResults[mark] = { outcome: 'repeat', finding };
    if (first === undefined) return;
    if (finding === null) markResults[first] = { outcome: 'false', finding };
    else if (own.has(g)) {
      const isRight = mine.some((option) => option.rightName && groupOf[option.finding] !== null);
      markResults[first] = { outcome: isRight ? 'found' : 'wrong name', finding };
    }
  });
  return {
    findings: findings.map((_, f) => findingResult(f, named[f] ?? false, marks, markResults)),
    marks: markResults,
    falseMarks: markResults.filter(({ outcome }) => outcome === 'false').length,
  };
}

interface PlacedOption extends Option {
  /** The mark of the group that stands for it here: the nearest of those that can mean the finding. */
  readonly mark: number;
}

function optionsOf(
  findings: readonly Finding[],
  marks: readonly PlacedMark[],
  groups: readonly MarkGroup[],
  slack: number,
): readonly PlacedOption[] {
  const options: PlacedOption[] = [];
  groups.forEach((group, g) => {
    findings.forEach((finding, f) => {
      let best: PlacedOption | null = null;
      for (const index of group.marks) {
        const mark = marks[index];
        if (!mark || !canMean(mark, finding, slack)) continue;
        const distance = distanceInSteps(mark, finding);
        if (best && best.distance <= distance) continue;
        best = { group: g, finding: f, mark: index, distance, rightName: group.fault === finding.check };
      }
      if (best) options.push(best);
    });
  });
  return options;
}

/** Of a surplus group's findings (all of them found, or it would have been paired) the one it names, then the nearest. */
function nearest(options: readonly PlacedOption[]): PlacedOption | undefined {
  return [...options].sort(
    (a, b) => Number(b.rightName) - Number(a.rightName) || a.distance - b.distance || a.finding - b.finding,
  )[0];
}

const SURE_FIRST = [3, 2, 1] as const satisfies readonly Sure[];

function findingResult(
  finding: number,
  named: boolean,
  marks: readonly PlacedMark[],
  results: readonly MarkResult[],
): FindingResult {
  const mine = [...results.keys()].filter((index) => results[index]?.finding === finding);
  const mark = mine.find((index) => results[index]?.outcome !== 'repeat');
  if (mark === undefined) return { outcome: 'missed', mark: null, repeats: [], rightName: false, sure: null };
  const sure = SURE_FIRST.find((level) => mine.some((index) => marks[index]?.sure === level)) ?? null;
  return { outcome: 'found', mark, repeats: mine.filter((index) => index !== mark), rightName: named, sure };
}

function requireSensible(findings: readonly Finding[], marks: readonly PlacedMark[], slack: number): void {
  requireNotNegative('slack', slack);
  findings.forEach(({ region }, f) => {
    requireFinite(`findings.${f}.region.x`, region.x);
    requireFinite(`findings.${f}.region.y`, region.y);
    requireNotNegative(`findings.${f}.region.width`, region.width);
    requireNotNegative(`findings.${f}.region.height`, region.height);
  });
  marks.forEach((mark, m) => {
    requireFinite(`marks.${m}.x`, mark.x);
    requireFinite(`marks.${m}.y`, mark.y);
    if (!SURE_FIRST.includes(mark.sure))
      throw new MarkingError(`marks.${m}.sure: ${mark.sure} is not 1, 2 or 3`);
  });
}
