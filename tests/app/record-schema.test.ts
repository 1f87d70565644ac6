import Ajv from 'ajv/dist/2020';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { RECORD_SCHEMA } from '../../app/practise/record/record-schema';
import { formatRecord, mergedRecords } from '../../lib/learning/record';
import { attempts, tieWall } from '../lib/learning/samples';

const validate = new Ajv({ strict: false }).compile(RECORD_SCHEMA);

test('every record that is taken away follows the published schema', () => {
  fc.assert(
    fc.property(attempts, (all) => {
      const isValid = validate(JSON.parse(formatRecord(mergedRecords(all, []))));
      expect([isValid, validate.errors]).toEqual([true, null]);
    }),
    { numRuns: 100 },
  );
});

test.each([
  ['a difficulty of 6', { ...tieWall(1, 0, 'found'), difficulty: 6 }],
  ['a way that is none', { ...tieWall(1, 0, 'found'), kind: 'crossword' }],
  ['a fault that is none', { ...tieWall(1, 0, 'found'), falseCalls: [{ fault: 'ghost', sure: 1 }] }],
  ['what nobody knows', { ...tieWall(1, 0, 'found'), hologram: true }],
])('%s does not', (_, attempt) => {
  expect(validate({ ...JSON.parse(formatRecord([])), attempts: [attempt] })).toBe(false);
});
