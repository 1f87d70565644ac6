import { describe, expect, test } from 'vitest';
import { ContentError } from '../app/content/compile-mdx';
import { STEPS, typedMeasurements } from '../app/lessons/check-lesson';
import { parseLesson } from '../app/lessons/parse-lesson';

const FRONT = `---
title: One
summary: One.
order: 1
topic: One
able:
  - see it
  - say it
sources: [tms-602]
readers: [apprentice]
---
`;

/** Line 13 is the first heading, line 15 the wall, line 17 the text. */
const good = (text: string) =>
  `${FRONT}\n## Look first\n\n<Wall of="ties" />\n\n${text}\n\n${STEPS.slice(1)
    .map((step) => `## ${step}\n\nText.\n`)
    .join('\n')}`;

const refusal = async (source: string): Promise<string> => {
  try {
    await parseLesson('one', source, ['one', 'other']);
  } catch (error) {
    if (error instanceof ContentError) return error.message;
    throw error;
  }
  return 'not refused';
};

test('a lesson in order is taken', async () => {
  const lesson = await parseLesson('one', good('A <Term id="tie">tie</Term>. [On](/lessons/other)'), [
    'one',
    'other',
  ]);
  expect(lesson.terms).toEqual(['tie']);
  expect(lesson.pictures).toEqual([
    { family: 'ties', state: 'sound', view: 'front', ringed: false, close: false },
  ]);
  expect(lesson.meta.order).toBe(1);
});

describe('refused with file and line', () => {
  test.each([
    ['a component', '<Bogus />', 'there is no component <Bogus>'],
    ['an element of HTML', '<div>x</div>', 'there is no component <div>'],
    ['a limit', '<Limit id="tie-with" />', 'there is no limit "tie-with"'],
    ['a rule set', '<Limit id="tie-width" rules="mars" />', 'there is no rule set "mars"'],
    ['a fault', '<Fault id="ghost" />', 'there is no fault "ghost"'],
    ['a source', '<Source id="my-uncle" />', 'there is no source "my-uncle"'],
    ['a kind of caution', '<Caution of="weather">Rain.</Caution>', 'there is no kind of caution "weather"'],
    ['a term', 'A <Term id="tye">tie</Term>.', 'there is no term "tye"'],
    ['a family of walls', '<Wall of="tyes" />', '"tyes" is not a family of walls'],
    [
      'a view',
      '<Wall of="ties" view="top" />',
      'view "top" is not one of front, section, behind, before-cover',
    ],
    ['a word on a wall', '<Wall of="ties" rounded />', '"rounded" is not said of a wall'],
    ['a pair without an answer', '<Pair of="ties" />', 'faulty has to be first or second'],
    ['a topic', '<Practise topic="magic">Go</Practise>', 'there is no topic "magic"'],
    ['a link to no lesson', '[x](/lessons/gone)', 'there is no page /lessons/gone'],
    ['a link to no word', '[x](/glossary#gone)', 'there is no page /glossary#gone'],
    ['a link elsewhere', '[x](https://example.org)', 'there is no page https://example.org'],
    ['code', 'Twice {1 + 1}.', 'no code in a lesson; name a component from the map'],
    ['an import', "import x from 'y';", 'no import or export; name a component from the map'],
    ['a figure', 'At most 15 mm.', 'a figure typed by hand: 15'],
    ['a figure in words', 'It takes two hours.', 'a figure typed by hand: two hours'],
  ])('%s', async (_, text, says) => {
    expect(await refusal(good(text))).toBe(`content/lessons/one.mdx:17: ${says}`);
  });

  test.each([
    ['order: 1', 'order: 0', 'content/lessons/one.mdx:4: order: Too small: expected number to be >=1'],
    [
      'summary: One.',
      'summary: One',
      'content/lessons/one.mdx:3: summary: Invalid string: must end with "."',
    ],
  ])('%s as %s', async (right, wrong, message) => {
    expect(await refusal(good('Text.').replace(right, wrong))).toBe(message);
  });

  test('an entry nobody reads', async () => {
    expect(await refusal(good('Text.').replace('order: 1', 'order: 1\nauthor: me'))).toMatch(
      /^content\/lessons\/one\.mdx:1: front matter: Unrecognized key: "author"/,
    );
  });

  test('a source that is not in the bibliography', async () => {
    expect(await refusal(good('Text.').replace('[tms-602]', '[hearsay]'))).toMatch(
      /^content\/lessons\/one\.mdx:9: sources: /,
    );
  });

  test('a step out of order', async () => {
    expect(await refusal(good('Text.').replace('## How it is measured', '## Measuring'))).toMatch(
      /^content\/lessons\/one\.mdx:\d+: step 4 has to be "## How it is measured"$/,
    );
  });

  test('words before the wall', async () => {
    expect(await refusal(good('Text.').replace('<Wall of="ties" />', 'Look.'))).toMatch(
      /^content\/lessons\/one\.mdx:15: a wall to look at has to stand before any words$/,
    );
  });

  test('text that does not compile', async () => {
    expect(await refusal(good('<Caution>never closed'))).toMatch(/^content\/lessons\/one\.mdx:\d+: /);
  });
});

describe('typed figures', () => {
  test.each([
    ['at most 10 mm', ['10']],
    ['3/8 in', ['3/8']],
    ['ten millimetres', ['ten millimetres']],
    ['half an inch', ['half an inch']],
    ['a third of the unit', ['a third']],
    ['two thirds', ['two thirds']],
    ['twenty per cent', ['twenty per cent']],
  ])('%s', (text, found) => {
    expect(typedMeasurements(text)).toEqual(found);
  });

  test.each(['One unit stands out.', 'Two walls from one plan.', 'three, four and five units of any length'])(
    'not: %s',
    (text) => {
      expect(typedMeasurements(text)).toEqual([]);
    },
  );
});
