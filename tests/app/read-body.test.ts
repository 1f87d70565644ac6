import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readBody } from '../../app/request/read-body';
import { Refusal } from '../../app/request/refusal';

function sent(body: string | ReadableStream, type = 'application/json'): Request {
  return new Request('http://walls.test/x', {
    method: 'POST',
    headers: { 'content-type': type },
    body,
    // A stream has to say that it is not answered while it is sent.
    ...({ duplex: 'half' } as object),
  });
}

async function outcome(request: Request, most = 100): Promise<unknown> {
  try {
    return await readBody(request, most);
  } catch (error) {
    return error instanceof Refusal ? error.status : error;
  }
}

describe('a body', () => {
  test.each([
    ['a record', '{"a":[1,"b"]}', { a: [1, 'b'] }],
    ['as long as may be', JSON.stringify('x'.repeat(98)), 'x'.repeat(98)],
    ['one byte longer', JSON.stringify('x'.repeat(99)), 413],
    ['no JSON', '{a:1}', 400],
    ['nothing', '', 400],
    ['a NUL in a text', '{"a":"b\\u0000"}', 400],
    [
      'as deep as may be',
      `${'['.repeat(32)}${']'.repeat(32)}`,
      JSON.parse(`${'['.repeat(32)}${']'.repeat(32)}`),
    ],
    ['one deeper', `${'['.repeat(33)}${']'.repeat(33)}`, 400],
    ['brackets in a text', JSON.stringify('['.repeat(60)), '['.repeat(60)],
    ['a quote in a text', '{"a":"\\"[[["}', { a: '"[[[' }],
  ])('of %s', async (_, text, expected) => {
    expect(await outcome(sent(text))).toEqual(expected);
  });

  test('of another kind is refused', async () => {
    expect(await outcome(sent('a=1', 'application/x-www-form-urlencoded'))).toBe(415);
    expect(await outcome(sent('{}', 'text/plain'))).toBe(415);
    expect(await outcome(sent('{}', 'application/json-patch+json'))).toBe(415);
    expect(await outcome(sent('{}', 'application/json; charset=utf-16'))).toBe(415);
    expect(await outcome(sent('{}', 'application/json; charset=utf-8'))).toEqual({});
  });

  test('without end is left at the cap', async () => {
    let chunks = 0;
    const endless = new ReadableStream({
      pull(controller) {
        chunks += 1;
        controller.enqueue(new Uint8Array(10).fill(32));
      },
    });
    expect(await outcome(sent(endless))).toBe(413);
    expect(chunks).toBeLessThan(20);
  });

  test('of any text is read or refused, never worse', async () => {
    await fc.assert(
      fc.asyncProperty(fc.oneof(fc.string({ unit: 'binary' }), fc.json()), async (text) => {
        const found = await outcome(sent(text), 10_000);
        expect(found).not.toBeInstanceOf(Error);
      }),
    );
  });
});
