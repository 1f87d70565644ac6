import { briefOfCode } from '../../lib/exercise/brief-of-code';
import type { Brief } from '../../lib/generate/brief';
import { bareOf, lookAt, type SiteWall } from '../../lib/site-drawn/site-wall';
import { UP_CLOSE } from '../../lib/views/viewing-conditions';
import { surveyedWall } from '../../lib/wall/surveyed';
import { layForSetWork, layToDraw, type WallToRead } from '../../lib/wall-page/wall-to-read';
import { kept, keptPacked } from './kept-files';
import { laidWall, measuredWall } from './laid-walls';

/** A learner looks at one wall again and again, and a class at a few. */
const MOST_KEPT = 60;
const inMemory = new Map<string, SiteWall>();

/** The wall of a code as the site draws it; null for a code of a newer version. The last sixty asked for are in memory. */
export function siteWallOf(code: string): SiteWall | null {
  const known = inMemory.get(code);
  if (known !== undefined) return known;
  const brief = briefOfCode(code);
  if (brief === null) return null;
  const wall = laidWall(brief, brief.rules);
  const site = { wall, bare: surveyedWall(kept(`bare ${code}`, () => bareOf(brief, wall.wall))) };
  const [oldest] = inMemory.keys();
  if (inMemory.size >= MOST_KEPT && oldest !== undefined) inMemory.delete(oldest);
  inMemory.set(code, site);
  return site;
}

/** A wall of set work as its page gets it, as JSON in gzip: whole, or to be drawn here; null for a code of a newer version. */
export function sentWall(code: string, offline: boolean): Buffer | null {
  const brief = briefOfCode(code);
  if (brief === null) return null;
  return offline
    ? keptPacked(`whole ${code}`, () => layForSetWork(brief, measuredWall(brief, brief.rules).wall))
    : keptPacked(`drawn ${code}`, () => laidToDraw(brief, code));
}

function laidToDraw(brief: Brief, code: string): WallToRead | null {
  const site = siteWallOf(code);
  const system = brief.rules === 'united-states' ? 'inches' : 'mm';
  return site && layToDraw(brief, site, lookAt(site, { kind: 'front' }, system, UP_CLOSE));
}
