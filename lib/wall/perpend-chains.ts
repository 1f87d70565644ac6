import type { Mm } from '../units';
import { type Bond, isTall } from './model';
import type { PanelSurvey, Placed } from './survey';

/** A head joint lines up with one two (or three) courses up if its middle is within this of it. */
const IN_LINE: Mm = 12;
const LEAST_HEADS = 4;

/**
 * A line of head joints up the wall: every second course in running bond; every third in third bond, or every second where it goes back and
 * forth and no line runs up every third. A joint beside a tall unit is of no line.
 */
export interface PerpendChain {
  /** Units to the left of each head, bottom up. */
  readonly lefts: readonly Placed[];
  /** Greatest less least middle, mm. */
  readonly drift: Mm;
}

export function perpendChainsOf(survey: PanelSurvey, bond: Bond): readonly PerpendChain[] {
  const third = bond === 'third' ? chainsOf(survey, 3) : [];
  return third.length > 0 ? third : chainsOf(survey, 2);
}

function chainsOf(survey: PanelSurvey, everyCourses: number): readonly PerpendChain[] {
  const chains: PerpendChain[] = [];
  const open: { lefts: Placed[]; last: Mm; least: Mm; most: Mm; course: number }[][] = Array.from(
    { length: everyCourses },
    () => [],
  );
  for (const [index, course] of survey.courses.entries()) {
    const going = open[index % everyCourses] ?? [];
    const next: typeof going = [];
    const taken = new Set<(typeof going)[number]>();
    let first = 0;
    for (const left of course) {
      if (left.right === null || isTall(left.unit) || isTall(left.right.unit)) continue;
      const x = (left.unit.x + left.unit.length + left.right.unit.x) / 2;
      let chain: (typeof going)[number] | null = null;
      while (first < going.length && (going[first]?.last ?? 0) < x - IN_LINE) first += 1;
      for (let near = first; near < going.length; near++) {
        const each = going[near];
        if (each === undefined || each.last > x + IN_LINE) break;
        const nearer = chain === null || Math.abs(each.last - x) < Math.abs(chain.last - x);
        if (nearer && !taken.has(each)) chain = each;
      }
      if (chain === null) {
        next.push({ lefts: [left], last: x, least: x, most: x, course: index });
      } else {
        taken.add(chain);
        chain.lefts.push(left);
        chain.last = x;
        chain.least = Math.min(chain.least, x);
        chain.most = Math.max(chain.most, x);
        next.push(chain);
      }
    }
    for (const each of going) if (!taken.has(each)) close(each);
    open[index % everyCourses] = next;
  }
  for (const going of open) for (const each of going) close(each);
  return chains;

  function close(chain: { lefts: Placed[]; least: Mm; most: Mm }): void {
    if (chain.lefts.length >= LEAST_HEADS)
      chains.push({ lefts: chain.lefts, drift: chain.most - chain.least });
  }
}
