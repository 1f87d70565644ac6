import type { Finding } from '../inspect/finding';
import { assign, type Option } from './assign';
import { HAZARD_WEIGHT } from './hazard-weight';
import type { PlacedMark, Sure } from './mark';
import { MarkingError, requireFinite, requireNotNegative } from './marking-error';
import { canMean, distanceInSteps } from './place';

/** What became of one finding. Indices point into the marks as handed in. */
export interface MatchedFinding {
  /** 'one joint off': missed, but a mark names it on a joint that meets it (`withOneJointOff`). */
  readonly outcome: 'found' | 'one joint off' | 'missed';
  /** The mark paired with it, or one joint off it; null when missed. */
  readonly mark: number | null;
  /** Further marks that went to it: ignored, not penalised. */
  readonly repeats: readonly number[];
  /** Found, and some mark that can mean it names its fault. */
  readonly rightName: boolean;
  /** The most certain of its marks; null when missed. */
  readonly sure: Sure | null;
}

/** What became of one mark. */
export interface MatchedMark {
  readonly outcome: 'found' | 'wrong name' | 'one joint off' | 'repeat' | 'false';
  /** Index of the finding it went to; null when it points at nothing. */
  readonly finding: number | null;
}

export interface MatchResult {
  /** In the order of the findings given. */
  readonly findings: readonly MatchedFinding[];
  /** In the order of the marks given. */
  readonly marks: readonly MatchedMark[];
  /** How many marks are 'false'. */
  readonly falseMarks: number;
}

/**
 * Matches marks with findings one to one: most findings found, then most right names, then least distance.
 * `slack` (mm) is how far beside a region a mark still means it.
 *
 * A mark that can mean no finding is 'false'. Marks of one part and fault are false at most once, and not at all
 * when one of them can mean a finding; the rest of them are 'repeat', and so is every mark that can only mean
 * findings already taken.
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

  const results = new Array<MatchedMark>(marks.length).fill({ outcome: 'repeat', finding: null });
  groups.forEach((group, g) => {
    const mine = options.filter((option) => option.group === g);
    const own = groupOf.indexOf(g);
    const finding = own >= 0 ? own : (nearest(mine)?.finding ?? null);
    for (const mark of [group.first, ...group.rest]) results[mark] = { outcome: 'repeat', finding };
    if (own < 0) return;
    const isRight = mine.some((option) => option.rightName && groupOf[option.finding] !== null);
    results[group.first] = { outcome: isRight ? 'found' : 'wrong name', finding };
  });
  for (const mark of falseMarksOf(marks, groups, options))
    results[mark] = { outcome: 'false', finding: null };
  return {
    findings: findings.map((_, f) => findingResult(f, named[f] ?? false, marks, results)),
    marks: results,
    falseMarks: results.filter(({ outcome }) => outcome === 'false').length,
  };
}

function optionsOf(
  findings: readonly Finding[],
  marks: readonly PlacedMark[],
  groups: readonly MarkGroup[],
  slack: number,
): readonly Option[] {
  return groups.flatMap(({ first, fault }, group) => {
    const mark = marks[first];
    if (!mark) return [];
    return findings.flatMap((finding, index) =>
      canMean(mark, finding, slack)
        ? {
            group,
            finding: index,
            rightName: fault === finding.check,
            distance: distanceInSteps(mark, finding),
          }
        : [],
    );
  });
}

/** The surest mark of each part and fault of which no mark can mean a finding. */
function falseMarksOf(
  marks: readonly PlacedMark[],
  groups: readonly MarkGroup[],
  options: readonly Option[],
): readonly number[] {
  const meant = new Set(options.map((option) => option.group));
  const said = groups.filter((_, g) => meant.has(g));
  const surest: MarkGroup[] = [];
  for (const group of groups) {
    const isLike = (other: MarkGroup) => other.part === group.part && other.fault === group.fault;
    if (said.some(isLike)) continue;
    const rival = surest.findIndex(isLike);
    const known = surest[rival];
    if (!known) surest.push(group);
    else if ((marks[group.first]?.sure ?? 0) > (marks[known.first]?.sure ?? 0)) surest[rival] = group;
  }
  return surest.map(({ first }) => first);
}

/** Of a surplus group's findings (all of them found, or it would have been paired) the one it names, then the nearest. */
function nearest(options: readonly Option[]): Option | undefined {
  return [...options].sort(
    (a, b) => Number(b.rightName) - Number(a.rightName) || a.distance - b.distance || a.finding - b.finding,
  )[0];
}

const SURE_FIRST = [3, 2, 1] as const satisfies readonly Sure[];

function findingResult(
  finding: number,
  named: boolean,
  marks: readonly PlacedMark[],
  results: readonly MatchedMark[],
): MatchedFinding {
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

/** Marks that say the same of the same place: one part, one fault, one point. They count once. */
interface MarkGroup {
  readonly part: string;
  readonly fault: string;
  /** Stands for the group: the most certain. Index into the marks as handed in. */
  readonly first: number;
  /** The others, surest first. */
  readonly rest: readonly number[];
}

/**
 * Gathers equal marks into groups. Groups, and the marks in each, come out in an order that depends on what the
 * marks say and not on the order in which they were handed in.
 */
function groupMarks(marks: readonly PlacedMark[]): readonly MarkGroup[] {
  const sorted = marks
    .map((mark, index) => ({ mark, index }))
    .sort((a, b) => comparePlaces(a.mark, b.mark) || b.mark.sure - a.mark.sure);
  const groups: { part: string; fault: string; first: number; rest: number[] }[] = [];
  let before: PlacedMark | null = null;
  for (const { mark, index } of sorted) {
    const group = groups.at(-1);
    if (group && before && comparePlaces(before, mark) === 0) group.rest.push(index);
    else groups.push({ part: mark.part, fault: mark.fault, first: index, rest: [] });
    before = mark;
  }
  return groups;
}

function comparePlaces(a: PlacedMark, b: PlacedMark): number {
  return (
    compareText(a.part, b.part) ||
    compareText(a.fault, b.fault) ||
    compareText(a.panel, b.panel) ||
    a.x - b.x ||
    a.y - b.y
  );
}

// By code unit: localeCompare differs between engines and settings.
function compareText(a: string, b: string): number {
  if (a < b) return -1;
  return a > b ? 1 : 0;
}
