import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { CATALOGUE } from '../../../lib/inspect/catalogue';
import { CHECKS } from '../../../lib/inspect/finding';
import { passageOf } from '../../../lib/wall-page/fault-choices';

test.each(CHECKS)('%s leads to a lesson that speaks of it under what goes wrong', (check) => {
  const text = readFileSync(`content/lessons/${CATALOGUE[check].lesson}.mdx`, 'utf8');
  const passage = text.slice(text.indexOf('## What goes wrong'), text.indexOf('## What puts it right'));
  expect(passage).toContain(`<Fault id="${check}" />`);
  // The name of a fault bears the id that the address names: once in a lesson.
  expect(text.split(`<Fault id="${check}" />`)).toHaveLength(2);
  expect(passageOf(check)).toBe(`/lessons/${CATALOGUE[check].lesson}#fault-${check}`);
});
