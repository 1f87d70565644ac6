import { describe, expect, test } from 'vitest';
import { patternsOf } from './code-of';
import { verdictOn } from './pattern-verdict';
import { filesUnder, isScript } from './source-files';

const scripts = ['app', 'components', 'lib'].flatMap(filesUnder).filter(isScript);
const patterns = [...new Set(scripts.flatMap(({ text }) => patternsOf(text)))];

describe('no pattern takes longer than a text is long', () => {
  test('there are patterns to look at', () => {
    expect(patterns.length).toBeGreaterThan(50);
  });

  test.each(patterns)('%s', (pattern) => {
    expect(verdictOn(pattern)).toBe('safe');
  });

  // The first froze the site for eight minutes.
  test.each(['/\\s*%$/', '/"(?:[^"\\\\]|\\\\.)*"/g', '/^(a|aa)*$/'])('%s would be found', (pattern) => {
    expect(verdictOn(pattern)).toMatch(/^vulnerable: /);
  });
});
