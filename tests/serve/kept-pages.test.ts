import { createServer, type IncomingMessage, type RequestListener, request } from 'node:http';
import type { AddressInfo } from 'node:net';
import { brotliDecompressSync } from 'node:zlib';
import { expect, onTestFinished, test } from 'vitest';
import { makeKeptPages, questionFor } from '../../app/serve/kept-pages';
import { hashSource } from '../../app/server/content-policy';

/** Asks a server of the test's own, and counts. */
async function askable(listener: RequestListener) {
  const server = createServer(listener);
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  onTestFinished(() => void server.close());
  const { port } = server.address() as AddressInfo;
  const asked: string[] = [];
  const ask = (path: string) => () => {
    asked.push(path);
    return new Promise<IncomingMessage>((resolve, reject) => {
      request({ port, path, agent: false }, resolve).once('error', reject).end();
    });
  };
  return { asked, ask };
}

const textOf = ({ body }: { readonly body: Buffer }) => brotliDecompressSync(body).toString('utf8');

test('a page is made once, also for those who ask while it is being made', async () => {
  const { asked, ask } = await askable((_, response) => void response.end('a wall'));
  const pages = makeKeptPages();
  const three = await Promise.all([1, 2, 3].map(() => pages.page('wall', ask('/wall'))));
  const later = await pages.page('wall', ask('/wall'));
  expect([...three, later].map(textOf)).toEqual(['a wall', 'a wall', 'a wall', 'a wall']);
  expect(asked).toEqual(['/wall']);
});

test('what is no page is not kept, and a failure is not either', async () => {
  const { asked, ask } = await askable((_, response) => void response.writeHead(404).end('no such wall'));
  const pages = makeKeptPages();
  expect((await pages.page('x', ask('/x'))).status).toBe(404);
  expect((await pages.page('x', ask('/x'))).status).toBe(404);
  expect(asked).toEqual(['/x', '/x']);
  await expect(pages.page('y', () => Promise.reject(new Error('gone')))).rejects.toThrow('gone');
  expect((await pages.page('y', ask('/y'))).status).toBe(404);
});

test('when the memory is full the page longest unasked for goes', async () => {
  const { asked, ask } = await askable(({ url }, response) => void response.end(`page ${url}`));
  const [size] = await Promise.all([
    makeKeptPages()
      .page('a', ask('/a'))
      .then(({ body }) => body.length),
  ]);
  asked.length = 0;
  const pages = makeKeptPages(2 * size);
  for (const path of ['/a', '/b', '/a', '/c', '/a', '/b']) await pages.page(path, ask(path));
  expect(asked).toEqual(['/a', '/b', '/c', '/b']);
});

test('a nonce is taken out, each inline script named by its hash; what is of one reader is not kept', async () => {
  const { ask } = await askable((_, response) => {
    response.writeHead(200, {
      'content-type': 'text/html; charset=utf-8',
      'content-security-policy': "script-src 'self' 'nonce-AbC+/12=='",
      'set-cookie': 'learner=x',
      'x-frame-options': 'DENY',
      link: '</a.woff2>; rel=preload; as="font"; nonce="AbC+/12=="; type="font/woff2"',
    });
    response.end('<script nonce="AbC+/12==">wall(1)</script><script nonce="AbC+/12==" src="/a.js"></script>');
  });
  const page = await makeKeptPages().page('wall', ask('/wall'));
  expect(textOf(page)).toBe('<script>wall(1)</script><script src="/a.js"></script>');
  const policy = page.headers['content-security-policy'];
  expect(policy).toContain(hashSource('wall(1)'));
  expect(policy).not.toContain('nonce');
  expect(page.headers.link).toBe('</a.woff2>; rel=preload; as="font"; type="font/woff2"');
  expect(page.headers['x-frame-options']).toBe('DENY');
  expect(page.headers['set-cookie']).toBe(undefined);
});

test('nothing that tells one reader from another reaches a kept page; another part of the page is another answer', () => {
  const plain = questionFor('/walls/X', { host: 'walls', cookie: 'learner=x', 'x-peer-address': '10.0.0.1' });
  expect(plain).toEqual(questionFor('/walls/X', { host: 'walls', 'accept-language': 'fr' }));
  expect(plain.headers).toEqual({ host: 'walls' });
  expect(questionFor('/walls/X', { host: 'walls', rsc: '1' }).key).not.toBe(plain.key);
  expect(questionFor('/walls/X', { host: 'other' }).key).not.toBe(plain.key);
});
