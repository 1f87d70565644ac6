import type { SiteWall } from '../../../../../../lib/site-drawn/site-wall';
import type { Store } from '../../../../../../lib/store/database';
import { openWall } from '../../../../../../lib/store/instrument-uses';
import { openingsUpOf } from '../../../../../../lib/wall-page/open-wall';
import { Refusal } from '../../../../../request/refusal';
import { siteWallOf } from '../../../../../server/site-walls';

/** The wall that an address names, of an open attempt whose walls the site draws, and how many of its units may be lifted. @throws Refusal */
export async function wallAsked(
  store: Store,
  { attempt = '', place = '' }: Readonly<Record<string, string>>,
): Promise<{
  readonly on: { readonly attempt: string; readonly place: number };
  readonly site: SiteWall;
  readonly mayLift: number;
}> {
  const on = { attempt, place: Number(place) };
  const given = /^[1-9]\d?$/.test(place) ? await openWall(store, attempt, on.place) : undefined;
  const site = given && !given.offline && siteWallOf(given.code);
  if (!site) throw new Refusal(404, 'There is no such wall to draw, or its work is handed in.');
  return { on, site, mayLift: given.openingsUp ?? openingsUpOf(site.bare.wall) };
}
