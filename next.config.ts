import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { NextConfig } from 'next';

const config: NextConfig = {
  reactStrictMode: true,
  poweredByHeader: false,
  // Asked for by browsers that did not read the head of a page, such as of a page left halfway.
  redirects: async () => [{ source: '/favicon.ico', destination: '/icon.svg', permanent: true }],
  // Without this a lock file in a folder above the clone makes Next take that folder for the root.
  turbopack: { root: dirname(fileURLToPath(import.meta.url)) },
};

export default config;
