import { inches } from '../units';

/** Fractions that phones offer as one character. */
const FRACTIONS: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};
const MM_WORDS = /mm\.?$/i;
const INCH_WORDS = /(in|inch|inches|"|″)\.?$/i;
const UNIT_WORDS = /(mm|in|inches|"|″|%|m²|J|kN|m\/s)\.?$/i;
const FEET_WORDS = /(?:ft|feet|'|′)\.?/i;
/** One and a bit, or a thousand and more? Nobody can tell. */
const UNCLEAR = /^-?[1-9]\d{0,2}(,\d{3})+$/;

/**
 * "67.8", "67,8", ".5", "2 3/4", "2½": a number as typed. With a `unit` it may carry that unit and no other, but a length asked in mm
 * or in may be typed in mm, in, or ft and in: it comes back in the unit. Undefined when it is none, or "1,219".
 */
export function parseNumber(text: string, unit = ''): number | undefined {
  const typed = text
    .trim()
    .replace(/[−–]/, '-')
    .replace(/[¼½¾⅛⅜⅝⅞]/, (sign) => ` ${FRACTIONS[sign]}`)
    .trim();
  if (unit === 'mm' || unit === 'in') {
    const mm = parseLength(typed, unit);
    return mm === undefined || unit === 'mm' ? mm : mm / inches(1);
  }
  if (unit === '') return parseBare(typed.replace(UNIT_WORDS, ''));
  return parseBare(typed.endsWith(unit) ? typed.slice(0, -unit.length).trim() : typed);
}

/** In mm; without a unit it is in the one that was asked for. */
function parseLength(typed: string, unit: 'mm' | 'in'): number | undefined {
  if (MM_WORDS.test(typed)) return parseBare(typed.replace(MM_WORDS, ''));
  const feet = FEET_WORDS.exec(typed);
  if (feet !== null) {
    const whole = parseBare(typed.slice(0, feet.index));
    const rest = parseBare(typed.slice(feet.index + feet[0].length).replace(INCH_WORDS, '') || '0');
    return whole === undefined || rest === undefined ? undefined : inches(rest, whole);
  }
  const number = parseBare(typed.replace(INCH_WORDS, ''));
  if (number === undefined) return undefined;
  return unit === 'in' || INCH_WORDS.test(typed) ? inches(number) : number;
}

function parseBare(typed: string): number | undefined {
  const text = typed.trim();
  if (UNCLEAR.test(text)) return undefined;
  const plain = text.replace(',', '.');
  if (/^-?(\d+(\.\d*)?|\.\d+)$/.test(plain)) return Number(plain);
  const parts = /^(-?)(?:(\d+)[\s-]+)?(\d+)\/(\d+)$/.exec(plain);
  if (parts === null) return undefined;
  const [, sign, whole = '0', top, bottom] = parts;
  const value = Number(whole) + Number(top) / Number(bottom);
  if (!Number.isFinite(value)) return undefined;
  return sign === '-' ? -value : value;
}
