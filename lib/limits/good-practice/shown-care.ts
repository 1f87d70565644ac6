import { inches, squareFeet } from '../../units';
import type { Limit } from '../limit';
import { atLeast, atMost, byClause, exactly, noted } from '../rows';
import { PRACTICE, SECOND_HAND } from './practice';

const MAGAZINE = { ...PRACTICE, edition: 'Masonry Construction magazine' } as const;

/** 30 grams over 30 square inches, in g/m². */
const THIRSTY = 30 / ((30 * inches(1) * inches(1)) / 1_000_000);

/** Before and after the laying: wetting, cleaning and repointing. On the limits page and in lessons; no check asks for them. */
export const GOOD_PRACTICE_CARE: readonly Limit[] = [
  ...byClause({ ...MAGAZINE, source: 'hot-weather-magazine' }, 'mortar', {
    'hot weather': noted(
      '30 grams over 30 square inches. Clay brick that takes up more is wetted before it is laid.',
      atMost('suction-most', 'Dry clay brick: water that its bed takes up in a minute', THIRSTY, 'g/m²'),
    ),
  }),
  ...byClause({ ...MAGAZINE, ...SECOND_HAND, source: 'wetting-articles' }, 'mortar', {
    'wetting brick': noted(
      'Then left until its surface is dry. So BIA Technical Note 28, as told in an article.',
      atLeast('wetted-ahead', 'Thirsty clay brick: time from wetting to laying, at the least', 3, 'hours'),
      atMost(
        'wetted-ahead-most',
        'Thirsty clay brick: time from wetting to laying, at the most',
        24,
        'hours',
      ),
    ),
  }),
  ...byClause(
    { ...PRACTICE, source: 'suction-test', edition: 'Houston and Grimm, 1973', howSure: 'memory' },
    'mortar',
    {
      'the test': noted(
        'From memory, so it decides nothing. The summary that we read prints 10 minutes.',
        atLeast('suction-time', 'Drops on the bed of a clay brick: time to soak in', 1.5, 'minutes'),
      ),
    },
  ),
  ...byClause({ ...PRACTICE, source: 'bia-20', edition: 'BIA Technical Note 20' }, 'judging the face', {
    summary: [
      atLeast('cleaning-age', 'New brickwork: age when it is washed down', 7, 'days'),
      ...noted(
        'Left to dry before it is judged.',
        atLeast('cleaning-test-area', 'Test patch before a wall is cleaned, area', squareFeet(20), 'mm²'),
      ),
    ],
  }),
  ...byClause(
    { ...SECOND_HAND, source: 'masonry-spec-1979', edition: 'Masonry Magazine, guide specification of 1979' },
    'joints',
    {
      pointing: [
        atLeast('repointing-depth', 'Old joint raked out before pointing, depth', inches(1 / 2)),
        exactly('sealant-recess-depth', 'Recess left for sealant, depth', inches(3 / 4)),
      ],
    },
  ),
  ...byClause({ ...MAGAZINE, source: 'old-joints' }, 'joints', {
    'joint preparation': noted(
      'In old buildings: two to two and a half times the width of the joint.',
      atLeast(
        'repointing-depth-by-width',
        'Old joint raked out before pointing, depth over its width',
        2,
        'times',
      ),
    ),
  }),
];
