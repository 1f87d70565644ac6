import { expect, test } from 'vitest';
import { weightOf } from '../../app/serve/weight';

test.each([
  // Never behind a wall that is being drawn.
  ['/api/hand-in', 'light'],
  ['/api/health', 'light'],
  ['/api/people/sign-in', 'light'],
  ['/api/join/enter', 'light'],
  ['/my-work', 'light'],
  ['/desk', 'light'],
  ['/walls', 'light'],
  ['/', 'light'],
  // The same for everybody.
  ['/walls/AAA-AAAA-AAA', 'kept'],
  ['/practise/pair/AAA-AAAA-AAA', 'kept'],
  ['/practise/build', 'kept'],
  // Of one person.
  ['/my-work/work-1', 'heavy'],
  ['/my-work/work-1/2', 'heavy'],
  ['/desk/work/work-1/book', 'heavy'],
  ['/api/attempts', 'heavy'],
  ['/api/work', 'heavy'],
  ['/api/work/set', 'heavy'],
  ['/api/works', 'light'],
])('%s is %s', (path, weight) => {
  expect(weightOf(path)).toBe(weight);
});
