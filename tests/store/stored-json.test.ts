import { expect, test } from 'vitest';
import { TEMPLATES } from '../../lib/classes/templates';
import { readStored, StoredJsonError } from '../../lib/store/stored-json';

test.each(TEMPLATES)('the spec of "$id" reads back as it was written', ({ spec }) => {
  expect(readStored('spec', JSON.stringify(spec))).toEqual(spec);
});

test('a spec from before severities and time limits reads, without either', () => {
  const [{ spec } = { spec: {} }] = TEMPLATES;
  const { minutes: _, ...old } = { ...spec, minutes: null };
  expect(readStored('spec', JSON.stringify(old))).toEqual(spec);
  expect(readStored('spec: minutes', '{}')).toEqual({ minutes: null });
});

test.each([
  ['spec', JSON.stringify({ ...TEMPLATES[0]?.spec, topics: ['cooking'] }), /^spec\.topics\.0: /],
  ['spec: walls', '{"walls":"2","sameForAll":true}', /^spec: walls\.walls: /],
  ['marks', '[{"part":"A1.1","fault":"proud-unit","sure":7}]', /^marks\.0\.sure: /],
  ['opened', '["A1.1",4]', /^opened\.1: /],
  ['readings', '{"cut short', /^readings: /],
  ['walls', '[{"place":1}]', /^walls\.0\.code: /],
] as const)('of %s, %s is refused with its place', (column, json, place) => {
  expect(() => readStored(column, json)).toThrow(StoredJsonError);
  expect(() => readStored(column, json)).toThrow(place);
});
