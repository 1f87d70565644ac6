import { availableParallelism } from 'node:os';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** A test this long hangs, however busy the machine is. */
const HANGS_MS = 1_200_000;

/** What takes longest, longest first: begun last, one core would work on it while the others have nothing left to do. */
const LONG = [
  'tests/laws/agreement.test.ts',
  'tests/store/',
  'tests/laws/',
  'tests/lib/questions/properties.test.ts',
];

class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const rank = ({ moduleId }: TestSpecification) => {
      const at = LONG.findIndex((part) => moduleId.includes(part));
      return at < 0 ? LONG.length : at;
    };
    return sorted.sort((a, b) => rank(a) - rank(b));
  }
}

const node = {
  extends: true as const,
  test: {
    name: 'node',
    environment: 'node',
    setupFiles: ['tests/setup-node.ts'],
    // Nothing here leaves anything behind: a process of its own for each of a hundred files would take half of their time.
    isolate: false,
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
    isolate: false,
    include: ['tests/components/**/*.test.{ts,tsx}'],
  },
};

const browser = {
  extends: true as const,
  test: {
    name: 'browser',
    environment: 'node',
    // One browser for many files.
    isolate: false,
    // Much of a page's time is waiting, for answers and for what does not come: three at a time keep two cores busy.
    maxWorkers: Math.ceil(1.5 * availableParallelism()),
    // Pages that are drawn need all the cores: beside the other tests they would only wait.
    sequence: { groupOrder: 1 },
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
    sequence: { sequencer: LongestFirst },
    teardownTimeout: HANGS_MS,
    expect: { poll: { timeout: HANGS_MS / 4 } },
    projects: process.env.SITE_ADDRESS ? [node, dom, store, browser] : [node, dom, store],
  },
});
