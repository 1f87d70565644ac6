import { expect, test } from 'vitest';
import { FRAME_SCRIPT } from '../../app/frame/frame-script';
import { contentPolicy, hashSource } from '../../app/server/content-policy';
import { inlineScriptHashes } from '../../app/server/prerendered';

const LIVE = { https: true, developing: false };

/** The example of the Content Security Policy recommendation (CSP 3, 8.3): a hash of this very script. */
test('a script is named as browsers name it', () => {
  expect(hashSource("alert('Hello, world.');")).toBe("'sha256-qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng='");
});

test('scripts run from this site, the theme by its hash, and those of the page; nothing inline besides', () => {
  const policy = contentPolicy(["'nonce-abc'"], LIVE);
  expect(policy.split('; ')).toContain(`script-src 'self' ${hashSource(FRAME_SCRIPT)} 'nonce-abc'`);
  expect(policy).not.toMatch(/script-src[^;]*'unsafe/);
});

test.each([
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'self'",
  "frame-ancestors 'none'",
  "default-src 'self'",
])('the policy says %s', (line) => {
  expect(contentPolicy([], LIVE).split('; ')).toContain(line);
});

test('plain http is not sent to https', () => {
  expect(contentPolicy([], { ...LIVE, https: false })).not.toContain('upgrade-insecure-requests');
});

test('inline scripts are found and named once; those that are loaded, and data, are left as they are', () => {
  const html =
    '<script src="/a.js"></script><script>one()</script><script id="x">two("<b>")</script><script>one()</script><script defer src="/b.js"></script>';
  expect(inlineScriptHashes(html)).toEqual([hashSource('one()'), hashSource('two("<b>")')]);
});
