import type { Brief } from '../../../lib/generate/brief';
import { drawingOfLook } from '../../../lib/site-drawn/sent-look';
import { lookAt, siteWall } from '../../../lib/site-drawn/site-wall';
import { targetRows } from '../../../lib/views/pointing/targets';
import { UP_CLOSE } from '../../../lib/views/viewing-conditions';
import { openWallOf } from '../../../lib/wall-page/open-wall';
import { viewChoices, viewOf } from '../../../lib/wall-page/view-choices';
import { layForSetWork, layToDraw } from '../../../lib/wall-page/wall-to-read';

/** What the page of a test receives of a wall: the wall, every look, and the names that are read aloud. No instrument is used. */
export function sentOfTest(brief: Brief): unknown {
  const site = siteWall(brief);
  const { wall } = site.bare;
  const { firstUnit } = openWallOf(wall);
  const looks = viewChoices(wall).map(({ value }) => {
    const view = viewOf(value, firstUnit, wall);
    const look = lookAt(site, view, 'mm', UP_CLOSE);
    const names = (['units', 'joints', 'fixings'] as const).map((layer) =>
      targetRows(site.bare, view, drawingOfLook(look), layer, 'mm', 'nothing'),
    );
    return { [view.kind]: { look, names } };
  });
  return { laid: layToDraw(brief, site, lookAt(site, { kind: 'front' }, 'mm', UP_CLOSE)), looks };
}

/** What the page of practice receives: the whole wall. */
export function sentOfPractice(brief: Brief): unknown {
  return { laid: layForSetWork(brief) };
}
