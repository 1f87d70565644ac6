import { expect, test } from 'vitest';
import { briefOfCode } from '../../../lib/exercise/brief-of-code';
import { ENGINE } from '../../../lib/generate/brief';
import { codeOf } from '../../../lib/generate/wall-code';

const BRIEF = { topic: 'ties', kind: 'gable-end', difficulty: 3, rules: 'canada', seed: 42 } as const;

test('a stored code of this engine is read', () => {
  expect(briefOfCode(codeOf(BRIEF))).toEqual(BRIEF);
});

test('a code that the first engine gave out is read as such', () => {
  expect(briefOfCode('492-SJMH-3U5')).toEqual({ ...BRIEF, engine: 1 });
});

test('a code that a newer engine gave out is of no wall of ours, and no error', () => {
  expect(briefOfCode(codeOf({ ...BRIEF, engine: ENGINE + 1 }))).toBeNull();
});
