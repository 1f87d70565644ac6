import { inches, squareFeet } from '../../units';
import type { Limit } from '../limit';
import { atLeast, atMost, byClause, exactly, noted } from '../rows';
import { IBC, IRC } from './irc';

const SECOND_HAND = { ...IRC, howSure: 'second-hand' } as const;
const FROM_MEMORY = {
  ...IRC,
  howSure: 'memory',
  note: 'From memory. Nobody has looked it up for this site. It decides nothing.',
} as const;
const C270 = {
  ...SECOND_HAND,
  kind: 'standard tolerance',
  source: 'astm-c270',
  edition: 'ASTM C270, as printed in 2000',
  note: 'Cubes made in a laboratory, 28 days old. Cubes from the site are not judged by it.',
} as const;

/** Veneer that is stuck on, and figures read second-hand or not at all: shown on the limits page, asked for by no check. */
export const UNITED_STATES_ADHERED: readonly Limit[] = [
  ...byClause(IRC, 'water', {
    'R703.12.1': [
      atLeast('adhered-above-earth', 'Adhered veneer, above earth', inches(4)),
      atLeast('adhered-above-paving', 'Adhered veneer, above paving', inches(2)),
      atLeast(
        'adhered-above-walk',
        'Adhered veneer, above a walking surface on the same foundation',
        inches(1 / 2),
      ),
    ],
    'R703.12.2': [
      atLeast('screed-thickness', 'Base screed or flashing of adhered veneer, thickness', inches(0.019)),
      atLeast('screed-flange', 'Base screed or flashing of adhered veneer, flange', inches(3.5)),
      atLeast('screed-lap', 'Base screed or flashing of adhered veneer, below the plate line', inches(1)),
    ],
  }),
  ...byClause({ ...IRC, source: 'irc-2024', edition: 'IRC 2024' }, 'water', {
    'R703.7.3.2': noted(
      'Or a barrier proved to drain 90 %.',
      atLeast('adhered-drainage', 'Drainage space behind adhered veneer in wet climates', inches(3 / 16)),
    ),
  }),
  ...byClause(IBC, 'back mortar', {
    '1404.10.1.4.2 and .3': [
      exactly('scratch-coat', 'Scratch coat behind adhered veneer, thickness', inches(1 / 2)),
      ...noted(
        'A full bed on the back, pressed down to 3/8 in. The code gives no share of contact.',
        exactly(
          'setting-bed',
          'Setting bed on the back of each adhered unit, thickness as spread',
          inches(1 / 2),
        ),
      ),
    ],
  }),
  ...byClause({ ...SECOND_HAND, source: 'tms-402', edition: 'TMS 402 before 2022' }, 'back mortar', {
    'adhered veneer': noted(
      '15 psf. From 2022: 30 psf, with mortar that holds a polymer.',
      atMost('adhered-weight', 'Adhered unit, weight', 73, 'kg/m²'),
    ),
  }),
  ...byClause({ ...SECOND_HAND, source: 'tms-402', edition: 'TMS 402-22' }, 'back mortar', {
    'adhered veneer': noted(
      '360 square inches; larger units are designed. The bed mortar holds a polymer. The IRC still allows plain type S or N.',
      atMost('adhered-area', 'Adhered unit, area of its face', squareFeet(2.5), 'mm²'),
    ),
  }),
  ...byClause(C270, 'mortar', {
    'property specification': [
      atLeast('mortar-strength-m', 'Mortar type M, strength', 17.2, 'MPa'),
      atLeast('mortar-strength-s', 'Mortar type S, strength', 12.4, 'MPa'),
      atLeast('mortar-strength-n', 'Mortar type N, strength', 5.2, 'MPa'),
      atLeast('mortar-strength-o', 'Mortar type O, strength', 2.4, 'MPa'),
    ],
  }),
  ...byClause({ ...FROM_MEMORY, source: 'tms-602', edition: 'TMS 602-16' }, 'mortar', {
    'Article 2.6 A': atMost(
      'us-mortar-life-hot',
      'Mortar in hot weather, from mixing to throwing it out',
      120,
      'minutes',
    ),
  }),
  ...byClause({ ...FROM_MEMORY, source: 'tms-402', edition: 'TMS 402-16' }, 'ties', {
    'Chapter 12': atMost(
      'tie-area-other',
      'Wall area of each tie, other than straps, light wire and adjustable ties',
      squareFeet(3.5),
      'mm²',
    ),
  }),
  ...byClause({ ...FROM_MEMORY, source: 'tms-402', edition: 'TMS 402-16' }, 'back mortar', {
    'adhered veneer': atMost('adhered-unit-thickness', 'Adhered unit, thickness', inches(2 + 5 / 8)),
  }),
];
