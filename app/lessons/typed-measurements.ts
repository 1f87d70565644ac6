const NUMBER =
  'one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|twenty|thirty|forty|fifty|sixty|ninety|hundred|half|quarter|third|thirds';
const UNIT =
  'mm|cm|millimet\\w+|centimet\\w+|met(?:re|er)s?|inch|inches|foot|feet|degrees?|hours?|minutes?|days?|weeks?|years?|per ?cent|kilograms?|pounds?|tonnes?|storeys?';

const PATTERNS = [
  new RegExp(`\\b(?:${NUMBER})\\b(?: (?:a|an|of an?|square))? (?:${UNIT})\\b`, 'gi'),
  /\b(?:a|one|two) (?:third|thirds|quarter|quarters|tenth|tenths)\b/gi,
] as const;

/** Figures that someone typed into prose: a figure comes from the limits or is worked out, so that text and check cannot part. */
export function typedMeasurements(prose: string): readonly string[] {
  const figures = prose.split(/\s+/).filter((word) => /\d/.test(word));
  return [...figures, ...PATTERNS.flatMap((pattern) => prose.match(pattern) ?? [])];
}
