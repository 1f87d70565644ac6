import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { NextConfig } from 'next';

const config: NextConfig = {
  reactStrictMode: true,
  poweredByHeader: false,
  // Without this a lock file in a folder above the clone makes Next take that folder for the root.
  turbopack: { root: dirname(fileURLToPath(import.meta.url)) },
};

export default config;
