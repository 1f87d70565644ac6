import { readdirSync, readFileSync } from 'node:fs';
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { ContentError } from '../app/content/compile-mdx';
import { ContentText } from '../app/content/content-text';
import { parseContent } from '../app/content/read-content';

const FILES = readdirSync('content').filter((name) => name.endsWith('.mdx'));

const sourceOf = (name: string): string => readFileSync(`content/${name}`, 'utf8');

const refusal = async (source: string): Promise<string> => {
  try {
    await parseContent('content/some-page.mdx', source);
  } catch (error) {
    if (error instanceof ContentError) return error.message;
    throw error;
  }
  return 'not refused';
};

describe.each(FILES)('content/%s', (name) => {
  test('has its front matter and compiles', async () => {
    const { meta } = await parseContent(`content/${name}`, sourceOf(name));
    expect(meta.summary.endsWith('.')).toBe(true);
  });

  test('holds no figure typed by hand', () => {
    // A figure in prose could part from the one the check uses.
    const prose = sourceOf(name).replace(/^ *\d+\. /gm, '');
    expect(prose.match(/\d+/g) ?? []).toEqual([]);
  });
});

test('the safety page shows the danger first, then what to do', async () => {
  const { code } = await parseContent('content/safety.mdx', sourceOf('safety.mdx'));
  const html = renderToStaticMarkup(createElement(ContentText, { code }));
  expect(html.startsWith('<div class="caution" role="note">')).toBe(true);
  expect(html).toContain('Keep people away. Do not touch it. Ask a competent person.');
  expect(html).toContain('<h2>Do this now</h2>\n<ol>');
  expect(html).toContain('<li>Do not pull, push, hit or shake it to find out if it is loose.</li>');
});

describe('a content file that cannot be used is refused with its name', () => {
  const body = '\n\nText.\n';
  test.each([
    [
      'no front matter',
      'Text.',
      'content/some-page.mdx:1: title: Invalid input: expected string, received undefined\ncontent/some-page.mdx:1: summary: Invalid input: expected string, received undefined',
    ],
    [
      'a title that is a number',
      `---\ntitle: 12\nsummary: One.\n---${body}`,
      'content/some-page.mdx:2: title: Invalid input: expected string, received number',
    ],
    [
      'an entry nobody reads',
      `---\ntitle: One\nsummary: One.\nauthor: me\n---${body}`,
      'content/some-page.mdx:1: front matter: Unrecognized key: "author"',
    ],
    [
      'an import',
      `---\ntitle: One\nsummary: One.\n---\nimport x from 'y';${body}`,
      'content/some-page.mdx:5: no import or export; name a component from the map',
    ],
  ])('%s', async (_, source, message) => {
    expect(await refusal(source)).toBe(message);
  });

  test('broken MDX', async () => {
    const message = await refusal(`---\ntitle: One\nsummary: One.\n---\n\n<Caution>never closed\n`);
    expect(message).toMatch(/^content\/some-page\.mdx:\d+: [\s\S]*Caution/);
  });
});
