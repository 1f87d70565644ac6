import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { NextConfig } from 'next';

const config: NextConfig = {
  reactStrictMode: true,
  poweredByHeader: false,
  // One copy for all pages, from its own folder; the drivers are on Next's own list of such packages.
  serverExternalPackages: ['kysely', '@zxcvbn-ts/language-common'],
  // `npm test` and `npm run check` look at the types by themselves; once is enough.
  typescript: { ignoreBuildErrors: true },
  // app/serve does.
  compress: false,
  // Asked for by browsers that did not read the head of a page, such as of a page left halfway.
  redirects: async () => [{ source: '/favicon.ico', destination: '/icon.svg', permanent: true }],
  // The address of an earlier release: a page that was open through the change still posts there.
  rewrites: async () => [{ source: '/api/groups/take-off', destination: '/api/groups/remove-learner' }],
  // Without this a lock file in a folder above the clone makes Next take that folder for the root.
  turbopack: { root: dirname(fileURLToPath(import.meta.url)) },
};

export default config;
