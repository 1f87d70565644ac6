import { briefOfCode } from '../../lib/exercise/brief-of-code';
import { lookAt, type SiteWall, siteWall } from '../../lib/site-drawn/site-wall';
import { UP_CLOSE } from '../../lib/views/viewing-conditions';
import { layForSetWork, layToDraw, type WallToRead } from '../../lib/wall-page/wall-to-read';

/** A learner looks at one wall again and again, and a class at a few. */
const MOST_KEPT = 60;
const kept = new Map<string, SiteWall>();

/** The wall of a code as the site draws it; null for a code of a newer version. The last sixty asked for are kept. */
export function siteWallOf(code: string): SiteWall | null {
  const known = kept.get(code);
  if (known !== undefined) return known;
  const brief = briefOfCode(code);
  if (brief === null) return null;
  const laid = siteWall(brief);
  const [oldest] = kept.keys();
  if (kept.size >= MOST_KEPT && oldest !== undefined) kept.delete(oldest);
  kept.set(code, laid);
  return laid;
}

/** A wall of set work as its page gets it: whole, or to be drawn here; null for a code of a newer version. */
export function laidToDo(code: string, offline: boolean): WallToRead | null {
  const brief = briefOfCode(code);
  if (brief === null) return null;
  if (offline) return layForSetWork(brief);
  const site = siteWallOf(code);
  const system = brief.rules === 'united-states' ? 'inches' : 'mm';
  return site && layToDraw(brief, site, lookAt(site, { kind: 'front' }, system, UP_CLOSE));
}
