import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Brief, ENGINE, MAX_SEED, parseBrief } from '../../../lib/generate/brief';
import { TOPICS } from '../../../lib/generate/topics';
import { codeOf, parseCode } from '../../../lib/generate/wall-code';
import { RULE_SETS } from '../../../lib/limits/limit';
import { WALL_KINDS } from '../../../lib/wall/model';

const SIGNS = '23456789ABCDEFGHJKMNPQRSTUVWXYZ';

const briefs: fc.Arbitrary<Brief> = fc.record({
  topic: fc.constantFrom(...TOPICS),
  kind: fc.constantFrom(...WALL_KINDS),
  difficulty: fc.integer({ min: 1, max: 5 }),
  rules: fc.constantFrom(...RULE_SETS),
  seed: fc.integer({ min: 0, max: MAX_SEED }),
});

describe('wall code', () => {
  test('a brief survives its code, however it is typed', () => {
    fc.assert(
      fc.property(briefs, (brief) => {
        const code = codeOf(brief);
        expect(code).toMatch(/^[2-9A-HJKMNP-Z]{3}-[2-9A-HJKMNP-Z]{4}-[2-9A-HJKMNP-Z]{3}$/);
        expect(parseCode(code)).toEqual(brief);
        expect(parseCode(` ${code.toLowerCase().replaceAll('-', ' ')} `)).toEqual(brief);
      }),
      { numRuns: 500 },
    );
  });

  test('no single wrong sign opens another wall', () => {
    fc.assert(
      fc.property(briefs, fc.nat({ max: 9 }), fc.nat({ max: 29 }), (brief, place, step) => {
        const signs = codeOf(brief).replaceAll('-', '');
        const at = SIGNS.indexOf(signs.charAt(place));
        const wrong = SIGNS.charAt((at + 1 + step) % SIGNS.length);
        const typed = signs.slice(0, place) + wrong + signs.slice(place + 1);
        expect(() => parseCode(typed)).toThrow('mistyped');
      }),
      { numRuns: 1000 },
    );
  });

  test('no two signs that change places open another wall', () => {
    fc.assert(
      fc.property(briefs, fc.nat({ max: 9 }), fc.nat({ max: 9 }), (brief, a, b) => {
        const signs = [...codeOf(brief).replaceAll('-', '')];
        fc.pre(signs[a] !== signs[b]);
        [signs[a], signs[b]] = [signs[b] ?? '', signs[a] ?? ''];
        expect(() => parseCode(signs.join(''))).toThrow('mistyped');
      }),
      { numRuns: 1000 },
    );
  });

  test.each([
    ['', 'has 0 signs'],
    ['3K7-Q2WF', 'has 7 signs'],
    ['3K7-Q2WF-9TB-9', 'has 11 signs'],
    ['3O7-Q2WF-9TB', '"O" is never used'],
    ['3K7-Q2WF-9T!', '"!" is never used'],
    ['é'.repeat(10), 'is never used'],
    ['2'.repeat(5000), 'too long'],
  ])('%j is refused: %s', (code, message) => {
    expect(() => parseCode(code)).toThrow(message);
  });

  test('a code of a newer engine says so', () => {
    const code = codeOf({ topic: 'ties', kind: 'gable-end', difficulty: 3, rules: 'canada', seed: 43 });
    const signs = code.replaceAll('-', '').slice(0, 9);
    const other = shifted(signs);
    expect(() => parseCode(other)).toThrow(`made for engine ${ENGINE + 1}`);
  });

  test('a code of an earlier engine names it, and is printed as it was read', () => {
    expect(parseCode('492-SJMH-3U5')).toEqual({
      topic: 'ties',
      kind: 'gable-end',
      difficulty: 3,
      rules: 'canada',
      seed: 42,
      engine: 1,
    });
    expect(codeOf(parseCode('492-SJMH-3U5'))).toBe('492-SJMH-3U5');
  });
});

describe('brief', () => {
  const good = { topic: 'ties', kind: 'gable-end', difficulty: '3', rules: 'canada', seed: '42' };

  test('text values are read', () => {
    expect(parseBrief(good)).toEqual({
      topic: 'ties',
      kind: 'gable-end',
      difficulty: 3,
      rules: 'canada',
      seed: 42,
    });
  });

  test.each([
    [{ topic: 'roofs' }, 'topic: "roofs" is not one of back-mortar, joints'],
    [{ kind: 'pier' }, 'kind: "pier" is not one of plain-panel'],
    [{ difficulty: '0' }, 'difficulty: "0" is not a whole number from 1 to 5'],
    [{ difficulty: '2.5' }, 'difficulty: "2.5" is not a whole number from 1 to 5'],
    [{ rules: 'mars' }, 'rules: "mars" is not one of canada'],
    [{ seed: '-1' }, 'seed: "-1" is not a whole number from 0 to 134217727'],
    [{ seed: '134217728' }, 'seed: "134217728" is not a whole number'],
    [{ seed: Number.NaN }, 'seed: "NaN" is not a whole number'],
    [{ seed: Number.POSITIVE_INFINITY }, 'seed: "Infinity" is not a whole number'],
    [{ seed: '9'.repeat(500) }, 'is not a whole number'],
    [{ topic: undefined }, 'topic: "undefined" is not one of'],
  ])('%j is refused', (wrong, message) => {
    expect(() => parseBrief({ ...good, ...wrong })).toThrow(message);
  });
});

/** The same body with the engine one up, and its own check sign: written out here so as not to use the code under test. */
function shifted(body: string): string {
  const values = [...body].map((sign) => SIGNS.indexOf(sign));
  values[8] = (values[8] ?? 0) + 1;
  const sum = values.reduce((total, value, place) => total + (place + 2) * value, 0);
  return values.map((value) => SIGNS.charAt(value)).join('') + SIGNS.charAt((31 - (sum % 31)) % 31);
}
