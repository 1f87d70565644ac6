import { layWall } from '../../lib/generate/generate';
import { svgOf } from '../../lib/views/print-svg';
import { HOME_WALL } from '../home-wall';

export const dynamic = 'force-static';

/** The drawing of the start page's wall, made once at build time. */
export function GET(): Response {
  return new Response(svgOf(layWall(HOME_WALL), { kind: 'front' }), {
    headers: { 'content-type': 'image/svg+xml; charset=utf-8' },
  });
}
