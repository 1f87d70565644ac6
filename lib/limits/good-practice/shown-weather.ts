import type { Limit } from '../limit';
import { atLeast, atMost, byClause, noted } from '../rows';
import { BEALL, SECOND_HAND } from './practice';

const COLD = {
  ...SECOND_HAND,
  source: 'cold-weather',
  edition: 'TMS 602, as told by mason contractors',
} as const;
const HOT = {
  ...SECOND_HAND,
  source: 'hot-weather',
  edition: 'TMS 602, as told by mason contractors',
} as const;

/** Degrees Fahrenheit to Celsius, to one decimal as the sources round it. */
function celsius(fahrenheit: number): number {
  return Math.round(((fahrenheit - 32) * 50) / 9) / 10;
}

/** Cold and hot days: shown on the limits page, asked for by no check yet. */
export const GOOD_PRACTICE_WEATHER: readonly Limit[] = [
  ...byClause(COLD, 'weather', {
    'cold weather': [
      ...noted(
        'Below it: heat water, cover walls and materials. From 32 °F (0 °C) heat sand as well; from 25 °F (−3.9 °C) enclose the work.',
        atLeast('cold-from', 'Air, above which no care for cold is needed', celsius(40), '°C'),
      ),
      ...noted(
        'No ice or snow on them.',
        atLeast('unit-temperature', 'Units when they are laid', celsius(20), '°C'),
      ),
    ],
  }),
  ...byClause(
    { ...SECOND_HAND, source: 'masonry-2004', edition: 'Masonry Magazine, September 2004' },
    'weather',
    {
      'tables of cold weather': [
        atLeast('mortar-warm', 'Mortar as mixed in cold weather', celsius(40), '°C'),
        atMost('mortar-hot', 'Mortar as mixed, in any weather', celsius(120), '°C'),
        atMost('water-hot', 'Mixing water before cement goes in', celsius(140), '°C'),
        atLeast('cover-hangs', 'Cover of an unfinished wall hangs down each side by', 600),
      ],
    },
  ),
  ...byClause(BEALL, 'weather', {
    'page 176': [
      atLeast(
        'kept-from-frost',
        'Kept above freezing after laying at 25 to 32 °F (−3.9 to 0 °C)',
        16,
        'hours',
      ),
      atLeast(
        'kept-from-frost-colder',
        'Kept above freezing after laying at 20 to 25 °F (−6.7 to −3.9 °C)',
        24,
        'hours',
      ),
    ],
  }),
  ...byClause(HOT, 'weather', {
    'hot weather': [
      ...noted(
        '90 °F (32.2 °C) when the wind is over 8 mph (3.6 m/s). Cool water, shade, mortar below 120 °F.',
        atMost('hot-from', 'Air, up to which no care for heat is needed', celsius(100), '°C'),
      ),
      ...noted(
        '105 °F (40.6 °C) when the wind is over 8 mph.',
        atMost('hot-shade', 'Air, up to which materials need no shade', celsius(115), '°C'),
      ),
      atLeast('fog-days', 'Hot weather: fine spray three times a day for', 3, 'days'),
    ],
  }),
  ...byClause(
    { ...HOT, source: 'hot-weather-magazine', edition: 'Masonry Construction magazine' },
    'weather',
    {
      'hot weather': atMost('bed-ahead', 'Hot weather: bed spread ahead of the units', 1.2, 'm'),
    },
  ),
];
