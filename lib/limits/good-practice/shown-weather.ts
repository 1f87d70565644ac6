import type { Limit } from '../limit';
import { atLeast, atMost, under } from '../rows';
import { PRACTICE } from './practice';

const WEATHER = { ...PRACTICE, topic: 'weather', howSure: 'second-hand' } as const;
const COLD = {
  ...WEATHER,
  source: 'cold-weather',
  edition: 'TMS 602, as told by mason contractors',
  clause: 'cold weather',
} as const;
const HOT = {
  ...WEATHER,
  source: 'hot-weather',
  edition: 'TMS 602, as told by mason contractors',
  clause: 'hot weather',
} as const;
const OLDER = {
  ...WEATHER,
  source: 'beall-2004',
  edition: 'Beall, Masonry and Concrete',
  clause: 'page 176',
} as const;

/** Degrees Fahrenheit to Celsius, to one decimal as the sources round it. */
function celsius(fahrenheit: number): number {
  return Math.round(((fahrenheit - 32) * 50) / 9) / 10;
}

/** Cold and hot days: shown on the limits page, asked for by no check yet. */
export const GOOD_PRACTICE_WEATHER: readonly Limit[] = [
  ...under(
    COLD,
    atLeast('cold-from', 'Air, above which no care for cold is needed', celsius(40), '°C', {
      note: 'Below it: heat water, cover walls and materials. From 32 °F (0 °C) heat sand as well; from 25 °F (−3.9 °C) enclose the work.',
    }),
    atLeast('unit-temperature', 'Units when they are laid', celsius(20), '°C', {
      note: 'No ice or snow on them.',
    }),
  ),
  ...under(
    {
      ...WEATHER,
      source: 'masonry-2004',
      edition: 'Masonry Magazine, September 2004',
      clause: 'tables of cold weather',
    },
    atLeast('mortar-warm', 'Mortar as mixed in cold weather', celsius(40), '°C'),
    atMost('mortar-hot', 'Mortar as mixed, in any weather', celsius(120), '°C'),
    atMost('water-hot', 'Mixing water before cement goes in', celsius(140), '°C'),
    atLeast('cover-hangs', 'Cover of an unfinished wall hangs down each side by', 600),
  ),
  ...under(
    OLDER,
    atLeast('kept-from-frost', 'Kept above freezing after laying at 25 to 32 °F (−3.9 to 0 °C)', 16, 'hours'),
    atLeast(
      'kept-from-frost-colder',
      'Kept above freezing after laying at 20 to 25 °F (−6.7 to −3.9 °C)',
      24,
      'hours',
    ),
  ),
  ...under(
    HOT,
    atMost('hot-from', 'Air, up to which no care for heat is needed', celsius(100), '°C', {
      note: '90 °F (32.2 °C) when the wind is over 8 mph (3.6 m/s). Cool water, shade, mortar below 120 °F.',
    }),
    atMost('hot-shade', 'Air, up to which materials need no shade', celsius(115), '°C', {
      note: '105 °F (40.6 °C) when the wind is over 8 mph.',
    }),
    atLeast('fog-days', 'Hot weather: fine spray three times a day for', 3, 'days'),
  ),
  ...under(
    { ...HOT, source: 'hot-weather-magazine', edition: 'Masonry Construction magazine' },
    atMost('bed-ahead', 'Hot weather: bed spread ahead of the units', 1.2, 'm'),
  ),
];
