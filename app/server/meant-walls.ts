import { isRecord } from '../../lib/json/read-json';
import { meantMarks, meantParts } from '../../lib/site-drawn/meant-parts';
import type { WallToGrade } from '../../lib/store/hand-in';
import { siteWallOf } from './site-walls';

/** A wall as it was handed in, by the names of the bare wall that its device had, in those of the wall itself. */
export function meantWall(handedIn: WallToGrade): WallToGrade {
  const { code, marks, opened, readings } = handedIn;
  const site = marks.length + opened.length + readings.length === 0 ? null : siteWallOf(code);
  if (site === null) return handedIn;
  const { wall, bare } = site;
  const meant = (id: string) => meantParts(bare, wall, id).at(-1)?.id ?? id;
  return {
    ...handedIn,
    marks: meantMarks(bare, wall, marks),
    opened: opened.map(meant),
    readings: readings.map((each) =>
      isRecord(each) && typeof each.part === 'string' ? { ...each, part: meant(each.part) } : each,
    ),
  };
}
