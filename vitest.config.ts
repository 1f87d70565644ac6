import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';

/** A test this long hangs, however busy the machine is. */
const HANGS_MS = 1_200_000;

const node = {
  extends: true as const,
  test: {
    name: 'node',
    environment: 'node',
    setupFiles: ['tests/setup-node.ts'],
    // Whatever is not for the DOM: a test in a new folder must not be left out.
    include: ['tests/**/*.test.{ts,mjs}'],
    exclude: ['tests/components/**', 'tests/store/**'],
  },
};

const store = {
  extends: true as const,
  test: {
    name: 'store',
    environment: 'node',
    setupFiles: ['tests/setup-node.ts'],
    // A PostgreSQL of our own; SQLite needs no server.
    globalSetup: ['tests/store/serve-postgres.ts'],
    include: ['tests/store/**/*.test.ts'],
  },
};

const dom = {
  extends: true as const,
  test: {
    name: 'dom',
    environment: 'jsdom',
    setupFiles: ['tests/setup-dom.ts'],
    include: ['tests/components/**/*.test.{ts,tsx}'],
  },
};

const browser = {
  extends: true as const,
  test: {
    name: 'browser',
    environment: 'node',
    include: ['tests/e2e/**/*.e2e.ts'],
  },
};

// The browser tests need a running site and a Chromium; `npm test` starts both and then sets SITE_ADDRESS.
// A plain `npx vitest run tests/lib/x` must work without either.
export default defineConfig({
  plugins: [react()],
  test: {
    // No test may fail because the machine is busy: these only end what hangs. No test sets limits of its own.
    testTimeout: HANGS_MS,
    hookTimeout: HANGS_MS,
    // All cores: of two, vitest would leave one idle.
    maxWorkers: '100%',
    teardownTimeout: HANGS_MS,
    expect: { poll: { timeout: HANGS_MS } },
    projects: process.env.SITE_ADDRESS ? [node, dom, store, browser] : [node, dom, store],
  },
});
