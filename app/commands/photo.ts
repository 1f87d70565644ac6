import { RULE_SETS } from '../../lib/limits/limit';
import { sourceOf } from '../../lib/limits/limits';
import type { Bounds, UnitSize } from '../../lib/photo/bounds';
import { nominal } from '../../lib/photo/find';
import { cornersOf } from '../../lib/photo/homography';
import type { Spot } from '../../lib/photo/matrix';
import { measurePhotograph, type Quantity } from '../../lib/photo/measure';
import type { Picture } from '../../lib/photo/picture';
import type { Reference } from '../../lib/photo/reference';
import { NEVER_SHOWN, QUANTITY_WORDS } from '../../lib/photo/words';
import { parseNumber } from '../../lib/questions/parse-number';
import { CallError, printCommand, readOptions, ruleSetOf } from './command';
import { readPicture } from './picture-file';

const USAGE = `Usage: npm run -s photo -- FILE --points "x,y x,y x,y x,y" --size WIDTHxHEIGHT [--unit LENGTHxHEIGHT] [--rules R] [--json]
  FILE            a PNG or JPEG of a brick or block wall; what lies between the four points is measured
  --points P      corners of a rectangle on the wall, in pixels from the top left of the picture: top left, top right,
                  bottom right, bottom left of the wall
  --size S        how wide and how high that rectangle is: 1800x1200; mm, unless a unit is typed: 6 ft x 4 ft, 72in x 48in
  --unit S        how long and how high the face of a unit is: 215x65; the gauge is then held to its limit
  --rules R       whose limits: ${RULE_SETS.join(', ')} (canada)
  --json          print {width, height, pixelsPerMm, rules, mapping, neverShown, quantities}; each quantity is
                  {what, value, sd, unit, n, verdict, limit, settle}: a verdict is within, beyond or cannot tell; limit is
                  null where the rules have none, else {id, least, most, rules, kind, source, clause}`;

const OPTIONS = {
  points: { type: 'string' },
  size: { type: 'string' },
  unit: { type: 'string' },
  rules: { type: 'string' },
  json: { type: 'boolean' },
  help: { type: 'boolean' },
} as const;

/** The longest text that can hold four points or two lengths. */
const MOST_TYPED = 200;
const LONGEST_MM = 100_000;
const DECIMALS = 1e4;

function run(): string {
  const { values, positionals } = readOptions({ options: OPTIONS, allowPositionals: true });
  if (values.help) return USAGE;
  const [file, ...more] = positionals;
  if (file === undefined || more.length > 0)
    throw new CallError(`name one file, not ${positionals.length} (--help lists the options)`);
  if (values.points === undefined || values.size === undefined)
    throw new CallError(
      `--${values.points === undefined ? 'points' : 'size'} is missing (--help lists the options)`,
    );
  const spots = pointsIn(values.points);
  const size = sizeIn('--size', values.size);
  const unit = values.unit === undefined ? undefined : sizeIn('--unit', values.unit);
  const rules = ruleSetOf(values.rules ?? 'canada');
  const picture = readPicture(file);
  const reference: Reference = {
    kind: 'rectangle',
    corners: cornersOf(spots.map((spot) => within(spot, picture))),
    width: size.length,
    height: size.height,
  };
  const measured = measurePhotograph(picture, reference, { rules, ...(unit && { unit }) });
  if (!values.json) return measured.quantities.map(lineOf).join('\n');
  const { matrix } = nominal(picture, measured.reference).mapping;
  const printed = {
    width: picture.width,
    height: picture.height,
    pixelsPerMm: rounded(measured.pixelsPerMm),
    rules,
    mapping: [matrix.slice(0, 3), matrix.slice(3, 6), matrix.slice(6)],
    neverShown: NEVER_SHOWN,
    quantities: Object.fromEntries(measured.quantities.map((each) => [each.name, printedOf(each)])),
  };
  return JSON.stringify(printed, null, 2);
}

function pointsIn(text: string): readonly Spot[] {
  const spots = text.length > MOST_TYPED ? [] : text.trim().split(/\s+/);
  if (spots.length !== 4) throw new CallError('--points: four points are needed, as "x,y x,y x,y x,y"');
  return spots.map((spot) => {
    const [x, y, ...more] = spot
      .split(',')
      .map((number) => (/^\d+(\.\d+)?$/.test(number) ? Number(number) : Number.NaN));
    if (x === undefined || y === undefined || more.length > 0 || !Number.isFinite(x + y))
      throw new CallError(`--points: "${spot}" is not a point such as 120,85.5`);
    return { x, y };
  });
}

function within(spot: Spot, { width, height }: Picture): Spot {
  if (spot.x <= width && spot.y <= height) return spot;
  throw new CallError(
    `--points: ${spot.x},${spot.y} lies outside the picture of ${width} by ${height} pixels`,
  );
}

function sizeIn(option: string, text: string): UnitSize {
  const parts = text.length > MOST_TYPED ? [] : text.split(/[x×]/i).map((part) => parseNumber(part, 'mm'));
  const [length, height] = parts;
  const isRight = parts.length === 2 && parts.every((mm) => mm !== undefined && mm > 0 && mm <= LONGEST_MM);
  if (!isRight || length === undefined || height === undefined)
    throw new CallError(
      `${option}: two lengths over 0 and up to 100 m are needed, such as 1800x1200 or 6 ft x 4 ft`,
    );
  return { length, height };
}

function printedOf({ name, value, sd, unit, n, verdict, limit, settle }: Quantity) {
  return {
    what: QUANTITY_WORDS[name],
    value: rounded(value),
    sd: rounded(sd),
    unit,
    n,
    verdict,
    limit: limit === undefined ? null : limitOf(limit),
    ...(settle !== undefined && { settle }),
  };
}

function limitOf({ limit, least, most }: Bounds) {
  const { id, rules, kind, edition, clause } = limit;
  const end = (value: number | undefined) => (value === undefined ? null : rounded(value));
  return {
    id,
    least: end(least),
    most: end(most),
    rules,
    kind,
    source: `${edition} (${sourceOf(limit).publisher})`,
    clause,
  };
}

function lineOf({ name, value, sd, unit, n, verdict, limit, settle }: Quantity): string {
  const held =
    limit === undefined
      ? ''
      : `, limit ${[limit.least, limit.most].flatMap((end) => (end === undefined ? [] : [end.toFixed(1)])).join(' to ')}`;
  return `${name}: ${value.toFixed(1)} ± ${(2 * sd).toFixed(1)} ${unit} (${n})${held}: ${verdict}${settle === undefined ? '' : `. ${settle}`}`;
}

function rounded(value: number): number {
  return Math.round(value * DECIMALS) / DECIMALS;
}

printCommand(run, ['PhotoError']);
