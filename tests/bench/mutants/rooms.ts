/** A room that is mutated, how many mutants of it are tried, and the tests that must notice, the quick ones first. */
export interface MutatedRoom {
  readonly room: string;
  readonly count: number;
  readonly project: 'node' | 'store';
  readonly tests: readonly string[];
}

export const ROOMS: readonly MutatedRoom[] = [
  {
    room: 'inspect',
    count: 24,
    project: 'node',
    tests: [
      'tests/naive',
      'tests/lib/inspect',
      'tests/lib/exercise',
      'tests/lib/views/finding-dimensions.test.ts',
      'tests/lib/instruments/findings.test.ts',
      'tests/frozen',
      'tests/laws/agreement.test.ts',
    ],
  },
  {
    room: 'limits',
    count: 22,
    project: 'node',
    tests: [
      'tests/reference/deciding-limits.test.ts',
      'tests/reference/limits',
      'tests/lib/limits',
      'tests/naive',
    ],
  },
  {
    room: 'marking',
    count: 20,
    project: 'node',
    tests: ['tests/lib/marking', 'tests/reference/marking.test.ts', 'tests/lib/exercise'],
  },
  {
    room: 'exercise',
    count: 10,
    project: 'node',
    tests: ['tests/lib/exercise', 'tests/app/grade-walls.test.ts', 'tests/app/export/json.test.ts'],
  },
  {
    room: 'views',
    count: 24,
    project: 'node',
    tests: ['tests/lib/views', 'tests/lib/views-mark-shapes.test.ts', 'tests/walls'],
  },
  {
    room: 'store',
    count: 14,
    project: 'store',
    // Those over HTTP and those that kill processes take minutes: what they alone would notice counts as a survivor.
    tests: [
      'audit',
      'backup',
      'hand-in',
      'people/learner-data',
      'people/sessions-and-parts',
      'mark-book',
      'people/roster-order',
      'set-work',
      'storage',
    ].map((name) => `tests/store/${name}.test.ts`),
  },
];

/** Of tests that take many walls in blocks or rounds, the first is enough here. */
export const FIRST_BLOCK = /^(?!.*\b(?:block|round) [1-9])/;
