import type { FaceBox } from '../../lib/geometry/box';
import type { Finding } from '../../lib/inspect/finding';
import { takesPlaces } from '../../lib/marking/place';

/** Above this share of the markable area a blind mark hits too often, and the wall should be refused. Ours. */
const MOST_GUESS_SHARE = 0.2;

/** True when a wall may be used: the share is at or below MOST_GUESS_SHARE. */
export function isHardToGuess(share: number): boolean {
  return share <= MOST_GUESS_SHARE;
}

/**
 * Share (0 to 1) of the markable area on which a mark placed blindly would hit some finding: the union of the findings' regions, cut to the
 * markable rectangles. Overlaps count once. Findings that concern whole panels only are left out, for no place points to them.
 */
export function guessShare(findings: readonly Finding[], markable: readonly FaceBox[]): number {
  const hit = findings.filter(takesPlaces).map(({ region }) => region);
  let all = 0;
  let covered = 0;
  for (const panel of new Set(markable.map((area) => area.panel))) {
    const open = markable.filter((area) => area.panel === panel);
    const targets = hit.filter((area) => area.panel === panel);
    all += coveredBoth(open, open);
    covered += coveredBoth(open, targets);
  }
  return covered / all;
}

/** Area covered by some rectangle of `a` and some rectangle of `b`, exact: the plane is cut along all their edges. */
function coveredBoth(a: readonly FaceBox[], b: readonly FaceBox[]): number {
  const xs = edges([...a, ...b].flatMap(({ x, width }) => [x, x + width]));
  const ys = edges([...a, ...b].flatMap(({ y, height }) => [y, y + height]));
  let area = 0;
  for (let i = 0; i + 1 < xs.length; i += 1) {
    for (let j = 0; j + 1 < ys.length; j += 1) {
      const [left, right, low, high] = [xs[i] ?? 0, xs[i + 1] ?? 0, ys[j] ?? 0, ys[j + 1] ?? 0];
      const covers = (r: FaceBox) =>
        r.x <= left && right <= r.x + r.width && r.y <= low && high <= r.y + r.height;
      if (a.some(covers) && b.some(covers)) area += (right - left) * (high - low);
    }
  }
  return area;
}

function edges(values: readonly number[]): readonly number[] {
  return [...new Set(values)].sort((p, q) => p - q);
}
