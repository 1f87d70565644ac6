import { Ajv2020 } from 'ajv/dist/2020';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { csvOf } from '../../../app/api/export/book-csv';
import { recordOf } from '../../../app/api/export/book-json';
import { BOOK_SCHEMA, BOOK_SCHEMA_PATH } from '../../../app/api/export/book-schema';
import { STEPS, type Tally } from '../../../lib/classes/statistics/wall-answer';
import type { ExportedHandIn, ExportedLearner } from '../../../lib/store/book/book-export';

const RUNS = 2000;
const validate = new Ajv2020({ strict: true }).compile(BOOK_SCHEMA);

const share = fc.double({ min: 0, max: 1, noNaN: true });
const sure = fc.constantFrom<1 | 2 | 3>(1, 2, 3);
const tally: fc.Arbitrary<Tally> = fc
  .tuple(fc.nat(9), fc.nat(9))
  .map(([got, more]) => ({ got, of: got + more + 1 }));

const wall = fc.record({
  learner: fc.constant('l'),
  work: fc.constant('w'),
  place: fc.integer({ min: 1, max: 30 }),
  code: fc.string(),
  score: share,
  saysSound: fc.boolean(),
  answered: fc.boolean(),
  faults: fc.array(
    fc.record({
      fault: fc.string(),
      hazard: fc.constant<'looks'>('looks'),
      found: fc.boolean(),
      named: fc.option(fc.string()),
      sure: fc.option(sure),
    }),
    { maxLength: 3 },
  ),
  falseMarks: fc.array(fc.record({ fault: fc.string(), part: fc.string(), sure }), { maxLength: 3 }),
  steps: fc.dictionary(fc.constantFrom(...STEPS), tally),
});

const handIn: fc.Arbitrary<ExportedHandIn> = fc.record({
  work: fc.constantFrom('w', 'gone'),
  attempt: fc.uuid(),
  number: fc.integer({ min: 1, max: 9 }),
  state: fc.constantFrom('handed in' as const, 'marked' as const, 'released' as const),
  late: fc.boolean(),
  handedInAt: fc.option(fc.integer({ min: 0, max: 4_000_000_000_000 })),
  score: fc.option(share),
  overridden: fc.boolean(),
  version: fc.nat(5),
  walls: fc.array(wall, { maxLength: 4 }),
});

const learner: fc.Arbitrary<ExportedLearner> = fc.record({
  id: fc.uuid(),
  name: fc.string({ unit: 'binary' }),
  handIns: fc.array(handIn, { maxLength: 4 }),
});

test(`${RUNS} learners of any kind keep to the published schema`, () => {
  fc.assert(
    fc.property(learner, (given) => {
      const book = {
        $schema: BOOK_SCHEMA_PATH,
        schemaVersion: 1,
        exportedAt: '2026-11-25T00:00:00.000Z',
        group: { id: 'g', name: given.name },
        works: [],
        learners: [recordOf(given, new Map([['w', 4]]))],
      };
      validate(JSON.parse(JSON.stringify(book)));
      expect(validate.errors ?? null).toBe(null);
    }),
    { numRuns: RUNS },
  );
});

test(`${RUNS} tables come back from CSV as they were, but for the sign before a formula`, () => {
  const cell = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.constantFrom('=1', '+2', '-3', '@a', '\r\n', '"', ',', "'"),
  );
  const table = fc.array(fc.array(cell, { minLength: 3, maxLength: 3 }), { minLength: 1, maxLength: 5 });
  fc.assert(
    fc.property(table, (rows) => {
      const read = parse(csvOf(rows), { record_delimiter: '\r\n' }) as string[][];
      const expected = rows.map((row) =>
        row.map((text) => {
          const clean = text.replaceAll('\0', '');
          return /^[=+\-@\t\r\uFF1D\uFF0B\uFF0D\uFF20]/.test(clean) ? `'${clean}` : clean;
        }),
      );
      expect(read).toEqual(expected);
    }),
    { numRuns: RUNS },
  );
});
