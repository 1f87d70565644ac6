import { layWall } from '../../lib/generate/generate';
import { pictureOf } from '../../lib/views/print-svg';
import { surveyedWall } from '../../lib/wall/surveyed';
import { HOME_WALL } from '../home-wall';

export const dynamic = 'force-static';

/** The picture of the start page's wall, without dimensions: it is shown too small to read them. Made once at build time. */
export function GET(): Response {
  return new Response(pictureOf(surveyedWall(layWall(HOME_WALL))), {
    headers: { 'content-type': 'image/svg+xml; charset=utf-8' },
  });
}
