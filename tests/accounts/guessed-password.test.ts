import { describe, expect, test } from 'vitest';
import { isEasilyGuessed, isOwnWords } from '../../app/accounts/guessed-password';
import { networkOf, PEER_HEADER } from '../../app/request/address';

describe('a password that is guessed first', () => {
  test.each([
    'liverpool2024',
    'starwars12345',
    'michael123456',
    'trustno1trustno1',
    'Password!2026',
    'masonry masonry 1',
    'qwertyuiop[]',
    '198219821982',
    'aaabbbaaabbb',
  ])('%s', (password) => {
    expect(isEasilyGuessed(password)).toBe(true);
  });

  test.each(['four red bricks', 'lime putty in a tub', 'mortar and lime 7', 'g7Rq-w2Lp-x9Td'])(
    'not %s',
    (password) => {
      expect(isEasilyGuessed(password)).toBe(false);
    },
  );
});

test.each([
  ['ada.clay@example.org', true],
  ['AdaClay-12345', true],
  ['Clay and lime, well mixed', false],
  ['four red bricks', false],
])('%s is mostly the name or e-mail of Ada Clay: %s', (password, own) => {
  expect(isOwnWords(password, { name: 'AdaClay', email: 'ada.clay@example.org' })).toBe(own);
});

test.each([
  ['10.1.2.3', '10.1.2.3'],
  ['::ffff:10.1.2.3', '10.1.2.3'],
  ['2001:db8::1', '2001:db8:0:0::/64'],
  ['2001:0DB8:0:0:ffff::9', '2001:db8:0:0::/64'],
  ['::1', '0:0:0:0::/64'],
  ['fe80::1%eth0', 'fe80:0:0:0::/64'],
])('%s is of the network %s', (address, network) => {
  expect(networkOf(new Headers({ [PEER_HEADER]: address }))).toBe(network);
});
