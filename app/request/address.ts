import { BlockList, isIP, isIPv6 } from 'node:net';
import { settings } from '../server/settings';
import { isHttps } from './cookies';

/** Set by app/request/peer-address.ts on each request, over whatever was sent. */
export const PEER_HEADER = 'x-peer-address';

/** Where a proxy of ours can stand: on this machine, or in a network that the internet does not reach (RFC 1918, 3927, 4193, 4291, 6598). */
const NEAR = new BlockList();
NEAR.addSubnet('127.0.0.0', 8);
NEAR.addSubnet('10.0.0.0', 8);
NEAR.addSubnet('172.16.0.0', 12);
NEAR.addSubnet('192.168.0.0', 16);
NEAR.addSubnet('169.254.0.0', 16);
NEAR.addSubnet('100.64.0.0', 10);
NEAR.addAddress('::1', 'ipv6');
NEAR.addSubnet('fc00::', 7, 'ipv6');
NEAR.addSubnet('fe80::', 10, 'ipv6');

/**
 * From which network address a request comes. Behind https stands a proxy of ours, near by, which puts the caller's address last.
 * From anybody else a forwarded-for header is whatever they like to say, and only the connection counts.
 */
export function addressOf(headers: Headers): string {
  const peer = headers.get(PEER_HEADER)?.split('%')[0] ?? 'unknown';
  const isFromProxy = isHttps() && isIP(peer) !== 0 && NEAR.check(peer, isIPv6(peer) ? 'ipv6' : 'ipv4');
  const forwarded = isFromProxy ? headers.get('x-forwarded-for')?.split(',').at(-1)?.trim() : undefined;
  return forwarded || peer;
}

/**
 * The network a request comes from. With IPv6 one connection has 2^64 addresses to take turns with, and RFC 4291 gives them one
 * prefix: the first four groups. An IPv4 address written as one of IPv6 is itself.
 */
export function networkOf(headers: Headers): string {
  const address = addressOf(headers);
  const [, plain] = /^::ffff:(\d+\.\d+\.\d+\.\d+)$/i.exec(address) ?? [];
  if (plain !== undefined || !isIPv6(address)) return plain ?? address;
  const [before = '', after = ''] = (address.split('%')[0] ?? '').split('::');
  const first = before === '' ? [] : before.split(':');
  const last = after === '' ? [] : after.split(':');
  const zeros = Array.from({ length: Math.max(0, 8 - first.length - last.length) }, () => '0');
  const prefix = [...first, ...zeros, ...last].slice(0, 4).map((group) => Number.parseInt(group, 16));
  return `${prefix.map((group) => group.toString(16)).join(':')}::/64`;
}

/** Where people reach the site: the public address when it is set, else as this request came. */
export function siteAddress(headers: Headers): string {
  return settings().publicAddress ?? `http://${headers.get('host') ?? `127.0.0.1:${settings().port}`}`;
}

/**
 * Whether a request that changes something was sent by a page of this site. Browsers say so in Sec-Fetch-Site; over plain http to
 * another machine they do not, but they send Origin with each POST. A request with neither is from no page, and is refused.
 */
export function isFromOwnPage(headers: Headers): boolean {
  const site = headers.get('sec-fetch-site');
  if (site !== null) return site === 'same-origin';
  return headers.get('origin') === siteAddress(headers);
}
