import { expect, test } from 'vitest';
import { LineFull, makeLine } from '../../app/serve/line';

/** Work that ends when told to, and tells when it begins. */
function job(begun: string[], name: string) {
  let end = () => {};
  const ended = new Promise<void>((resolve) => {
    end = resolve;
  });
  return {
    end,
    work: async (seat: number) => {
      begun.push(`${name} at ${seat}`);
      await ended;
      return name;
    },
  };
}

test('as many at once as there are seats; those who have begun go before other work, work before looks, each rank in the order it came', async () => {
  const begun: string[] = [];
  const line = makeLine(2, { begun: 5, work: 5, look: 5 });
  const ranks = ['look', 'look', 'look', 'look', 'work', 'work', 'begun'] as const;
  const jobs = ['look 1', 'look 2', 'look 3', 'look 4', 'work 1', 'work 2', 'begun 1'].map((name) =>
    job(begun, name),
  );
  const answers = jobs.map(({ work }, at) => line.wait(ranks[at] ?? 'look', work));
  await Promise.resolve();
  expect(begun).toEqual(['look 1 at 0', 'look 2 at 1']);
  for (const { end } of [...jobs].reverse()) end();
  expect(await Promise.all(answers)).toEqual([
    'look 1',
    'look 2',
    'look 3',
    'look 4',
    'work 1',
    'work 2',
    'begun 1',
  ]);
  const names = begun.map((each) => each.replace(/ at \d/, ''));
  expect(names).toEqual(['look 1', 'look 2', 'begun 1', 'work 1', 'work 2', 'look 3', 'look 4']);
});

test('a full rank is refused at once, the other one is not, and there is room again when one has begun', async () => {
  const begun: string[] = [];
  const line = makeLine(1, { begun: 1, work: 1, look: 1 });
  const first = job(begun, 'first');
  const under = line.wait('look', first.work);
  const second = line.wait('look', async () => 'second');
  await expect(line.wait('look', async () => 'third')).rejects.toThrow(LineFull);
  const learner = line.wait('work', async () => 'learner');
  first.end();
  expect(await Promise.all([under, learner, second])).toEqual(['first', 'learner', 'second']);
  expect(await line.wait('look', async () => 'later')).toBe('later');
});

test('work that fails leaves its seat', async () => {
  const line = makeLine(1, { begun: 1, work: 1, look: 1 });
  await expect(line.wait('look', () => Promise.reject(new Error('no such wall')))).rejects.toThrow(
    'no such wall',
  );
  expect(await line.wait('look', async () => 'next')).toBe('next');
});
