import { readdirSync, readFileSync } from 'node:fs';
import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';
import { describe, expect, test } from 'vitest';
import { GLOSSARY } from '../app/glossary/glossary';
import { DRAWERS, STEPS_OF } from '../lib/household/drawers';
import { DO_NOT, FIRST_WORDS, SAFETY_FIRST, WHOM } from '../lib/household/first-words';
import { LIMIT_OF_LOOKING, ROWS } from '../lib/household/note';
import { NO_PAPERS, PAPER_SETS } from '../lib/household/papers';
import { STOPS } from '../lib/household/stops';
import { groundLimits } from '../lib/household/ten-limits';
import { CATALOGUE } from '../lib/inspect/catalogue';

/**
 * School grade by the formula of Flesch and Kincaid (Navy report 8-75, 1975), as the package `flesch-kincaid` has it. A goal for
 * a general reader is grade 8 or lower, and no sentence over 25 words on the average page of public guidance.
 */
const GOAL = 8;
/** Words a sentence may have before a reader on a ladder loses it; ours to choose. */
const LONGEST = 36;

const wordsOf = (text: string) => text.match(/[\p{L}’'-]+/gu) ?? [];
const sentencesOf = (text: string) => text.split(/(?<=[.!?])\s+|\n+/).filter((part) => /\p{L}/u.test(part));

function gradeOf(text: string): number {
  const words = wordsOf(text);
  const syllables = words.reduce((sum, word) => sum + syllable(word), 0);
  return fleschKincaid({ sentence: sentencesOf(text).length, word: words.length, syllable: syllables });
}

/**
 * Words of a page's average sentence, and the share of its sentences that may be of SHORT words or fewer. Fewer or more than that
 * and a text reads as chopped or as tiring: ours to choose, after three readers stumbled over lessons with 7 words and one in two short.
 */
const MEAN = { least: 12, most: 17 };
const SHORT = 6;
const SHORT_SHARE = 0.2;

/** What a reader reads of MDX: no front matter, no headings (they have no full stop), no markup. */
function proseOf(mdx: string): string {
  return mdx
    .replace(/^---[\s\S]*?\n---/, '')
    .replace(/^#+ .*$/gm, '')
    .replace(/<[^>]+>/g, ' ')
    .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/[*_`]/g, '');
}

const LESSONS = readdirSync('content/lessons').map((file): [string, string] => [
  `lesson ${file.replace('.mdx', '')}`,
  proseOf(readFileSync(`content/lessons/${file}`, 'utf8')),
]);
const STEPS = DRAWERS.flatMap((drawer) => Object.values(STEPS_OF[drawer]).flat());
const PAGES = ['', 'limits/', 'look-round/', 'papers/'].map((page) => `app/your-wall/${page}page.tsx`);
/** What stands between the tags of the pages. */
const said = (file: string) =>
  [...readFileSync(file, 'utf8').matchAll(/>([^<>{}]*[a-z][^<>{}]*)</g)].map(([, text = '']) =>
    text.replace(/\s+/g, ' ').trim(),
  );
/** What a homeowner is asked, told and given to ask. */
const HOUSEHOLD: readonly (readonly [string, readonly string[]])[] = [
  ['household: first words', [FIRST_WORDS, ...SAFETY_FIRST, ...WHOM.flat(), ...DO_NOT]],
  ['household: pages', PAGES.flatMap(said)],
  [
    'household: look round',
    STOPS.flatMap(({ stand, questions }) => [
      stand,
      ...questions.flatMap((each) => [each.ask, ...('how' in each ? [each.how] : [])]),
    ]),
  ],
  ['household: note', [...ROWS.flatMap(({ saw, maybe, ask }) => [saw, ...maybe, ask]), LIMIT_OF_LOOKING]],
  ['household: steps', STEPS],
  ...PAPER_SETS.map(({ id, lead, papers }): [string, readonly string[]] => [
    `household: papers, ${id}`,
    [lead, NO_PAPERS, ...papers.flatMap(({ ask, good }) => [ask, good])],
  ]),
  ['household: ten limits', groundLimits('canada', 'mm').flatMap(({ title, how }) => [title, how])],
];
const TEXTS: readonly (readonly [string, string])[] = [
  ...LESSONS,
  ['safety page', proseOf(readFileSync('content/safety.mdx', 'utf8'))],
  ...HOUSEHOLD.map(([name, lines]): [string, string] => [name, lines.join('\n')]),
  ['glossary', GLOSSARY.map(({ means }) => means).join('\n')],
  [
    'fault catalogue',
    Object.values(CATALOGUE)
      .flatMap(({ looksLike, measuredBy, whyItMatters, putsRight }) => [
        looksLike,
        measuredBy,
        whyItMatters,
        putsRight,
      ])
      .join('\n'),
  ],
];

// Worked by hand from the printed formula: 0.39 × 10 + 11.8 × 1.5 − 15.59 = 6.01.
test('the formula is the published one', () => {
  expect(fleschKincaid({ sentence: 10, word: 100, syllable: 150 })).toBeCloseTo(6.01, 6);
});

describe('reading age', () => {
  test.each(TEXTS)('%s reads at the goal or below', (name, text) => {
    const grade = gradeOf(text);
    process.stdout.write(`reading grade ${grade.toFixed(1).padStart(5)}  ${name}\n`);
    expect(wordsOf(text).length).toBeGreaterThan(100);
    expect(grade).toBeLessThanOrEqual(GOAL);
  });

  test.each([...LESSONS, ...TEXTS.filter(([name]) => name === 'safety page' || name === 'glossary')])(
    '%s is neither chopped nor winding',
    (_, text) => {
      const lengths = sentencesOf(text).map((sentence) => wordsOf(sentence).length);
      const mean = lengths.reduce((sum, length) => sum + length, 0) / lengths.length;
      expect(mean).toBeGreaterThanOrEqual(MEAN.least);
      expect(mean).toBeLessThanOrEqual(MEAN.most);
      expect(lengths.filter((length) => length <= SHORT).length / lengths.length).toBeLessThan(SHORT_SHARE);
    },
  );

  test.each(TEXTS)('%s has no sentence that goes on for ever', (_, text) => {
    expect(sentencesOf(text).filter((sentence) => wordsOf(sentence).length > LONGEST)).toEqual([]);
  });
});
