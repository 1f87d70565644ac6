import pino from 'pino';
import { expect, test } from 'vitest';
import { LOG_OPTIONS } from '../../app/server/log';

test('a line is JSON with time and ids, and without secrets and names, three records deep', () => {
  const lines: string[] = [];
  const log = pino(LOG_OPTIONS, { write: (line: string) => void lines.push(line) });
  const secrets = { password: 'hunter2', pin: '4711', token: 'abc', email: 'a@b.example', name: 'Amal' };
  log.warn(
    { route: 'POST /api/join', learner: 'an id', ...secrets, body: { ...secrets, deeper: secrets } },
    'refused',
  );
  const [line = ''] = lines;
  expect(JSON.parse(line)).toMatchObject({
    level: 40,
    time: expect.stringMatching(/^\d{4}-\d\d-\d\dT[\d:.]+Z$/),
    route: 'POST /api/join',
    learner: 'an id',
    msg: 'refused',
    body: { pin: '[left out]', deeper: { name: '[left out]' } },
  });
  expect(line).not.toMatch(/hunter2|4711|abc|a@b|Amal/);
});
