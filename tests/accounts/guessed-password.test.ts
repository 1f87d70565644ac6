import { describe, expect, test } from 'vitest';
import { isEasilyGuessed, isOwnWords } from '../../app/accounts/guessed-password';

describe('a password that is guessed first', () => {
  test.each([
    'liverpool2024',
    'starwars12345',
    'michael123456',
    'trustno1trustno1',
    'Password!2026',
    'masonry masonry 1',
    'Read the Wall 2026',
    'brickwork-2026',
    'qwertyuiop[]',
    '198219821982',
    '010219950304',
    'aaabbbaaabbb',
  ])('%s', (password) => {
    expect(isEasilyGuessed(password)).toBe(true);
  });

  test.each([
    'four red bricks',
    'lime putty in a tub',
    'mortar and lime 7',
    'g7Rq-w2Lp-x9Td',
    'masonry by the river',
    'кирпич и раствор',
    '#%&!?=+;:/()',
  ])('not %s', (password) => {
    expect(isEasilyGuessed(password)).toBe(false);
  });
});

test.each([
  ['ada.clay@example.org', true],
  ['AdaClay-12345', true],
  ['Clay and lime, well mixed', false],
  ['four red bricks', false],
])('%s is mostly the name or e-mail of Ada Clay: %s', (password, own) => {
  expect(isOwnWords(password, { name: 'AdaClay', email: 'ada.clay@example.org' })).toBe(own);
});
