import type { MetadataRoute } from 'next';

export const dynamic = 'force-static';

const MANIFEST: MetadataRoute.Manifest = {
  id: '/',
  name: 'Read the Wall',
  short_name: 'Read the Wall',
  description: 'Learn to read masonry: look at a wall, measure it, and say what is wrong with it.',
  start_url: '/',
  display: 'standalone',
  background_color: '#f4f0e8',
  theme_color: '#f4f0e8',
  icons: [
    { src: '/icon.svg', sizes: 'any', type: 'image/svg+xml' },
    { src: '/apple-icon.png', sizes: '180x180', type: 'image/png' },
  ],
};

/** With it a phone can keep the site on its home screen. */
export function GET(): Response {
  return new Response(JSON.stringify(MANIFEST), {
    headers: { 'content-type': 'application/manifest+json; charset=utf-8' },
  });
}
