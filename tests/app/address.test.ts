import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';

type Address = typeof import('../../app/request/address');

/** The site's reading of headers, with people coming by this address; none: by plain http, under whatever name. */
async function addressWith(publicAddress: string): Promise<Address> {
  vi.resetModules();
  vi.stubEnv('PUBLIC_ADDRESS', publicAddress);
  return import('../../app/request/address');
}

// Nothing here is kept, so the folder of the tests themselves will do.
beforeEach(() => void vi.stubEnv('DATA_DIR', 'tests').stubEnv('SECRET', 'x'.repeat(32)));
afterEach(() => void vi.unstubAllEnvs());

test.each([
  ['10.1.2.3', '10.1.2.3'],
  ['::ffff:10.1.2.3', '10.1.2.3'],
  ['2001:db8::1', '2001:db8:0:0::/64'],
  ['2001:0DB8:0:0:ffff::9', '2001:db8:0:0::/64'],
  ['::1', '0:0:0:0::/64'],
  ['fe80::1%eth0', 'fe80:0:0:0::/64'],
])('%s is of the network %s', async (address, network) => {
  const { networkOf, PEER_HEADER } = await addressWith('');
  expect(networkOf(new Headers({ [PEER_HEADER]: address }))).toBe(network);
});

// Addresses set aside for examples (RFC 5737, 3849), and for networks of one's own (RFC 1918, 3927, 4193, 6598).
describe('who called, where a forwarded-for header says 198.51.100.9, then 203.0.113.7', () => {
  const CALLER = '203.0.113.7';
  test.each([
    ['https', 'this machine', '127.0.0.1', CALLER],
    ['https', 'this machine, as IPv6 writes it', '::ffff:127.0.0.1', CALLER],
    ['https', 'this machine, by IPv6', '::1', CALLER],
    ['https', 'the network of the proxy', '10.0.0.2', CALLER],
    ['https', 'another such network', '172.31.255.1', CALLER],
    ['https', 'a home network', '192.168.1.1', CALLER],
    ['https', 'a provider’s own network', '100.64.0.1', CALLER],
    ['https', 'an unnamed network', '169.254.8.8', CALLER],
    ['https', 'an IPv6 network of one’s own', 'fd12:3456::1', CALLER],
    ['https', 'the cable, by IPv6', 'fe80::1%eth0', CALLER],
    ['https', 'the internet, past the proxy', '192.0.2.4', '192.0.2.4'],
    ['https', 'the internet, just outside of a private network', '172.32.0.1', '172.32.0.1'],
    ['https', 'the internet, by IPv6', '2001:db8::5', '2001:db8::5'],
    ['https', 'nowhere known', 'unknown', 'unknown'],
    ['http', 'this machine', '127.0.0.1', '127.0.0.1'],
  ])('%s, the connection from %s (%s): %s', async (scheme, _, peer, caller) => {
    const { addressOf, PEER_HEADER } = await addressWith(scheme === 'https' ? 'https://walls.test' : '');
    const headers = new Headers({ [PEER_HEADER]: peer, 'x-forwarded-for': `198.51.100.9, ${CALLER}` });
    expect(addressOf(headers)).toBe(caller);
  });
});

describe('a browser that names only the origin', () => {
  test.each([
    ['https://walls.test', 'https://walls.test', true],
    ['https://walls.test', 'http://walls.test', false],
    ['https://walls.test', 'https://walls.test:8443', false],
    ['https://walls.test', 'https://walls.test.evil.test', false],
    ['', 'http://walls.test', true],
    ['', 'https://walls.test', false],
    ['', 'null', false],
  ])('with PUBLIC_ADDRESS "%s": %s is a page of ours: %s', async (publicAddress, origin, own) => {
    const { isFromOwnPage } = await addressWith(publicAddress);
    expect(isFromOwnPage(new Headers({ host: 'walls.test', origin }))).toBe(own);
  });
});
