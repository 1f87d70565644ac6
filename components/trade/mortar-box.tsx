'use client';

import { arc, round } from '../../lib/drawing/rings';
import { labelAt, lines, type Pen, solid } from '../../lib/drawing/shape';
import { type Point, rectRing } from '../../lib/geometry/polygon';
import type { RuleSetId } from '../../lib/limits/limit';
import { mortarTypesOf } from '../../lib/limits/mortar';
import { dampSandFor, drySandIn } from '../../lib/trade/mortar-bulking';
import { type MortarMix, sandRatio } from '../../lib/trade/mortar-mix';
import { EVAPORATION_OF_CONCERN, evaporationOf, hydrationPace } from '../../lib/trade/mortar-weather';
import { WATER_WEIGHT, yieldOf } from '../../lib/trade/mortar-yield';
import type { Picture } from '../drawing/kit-drawing';
import { DrawingFrame, type Working } from './drawing-frame';
import { useFields } from './fields/use-fields';
import { formatNumber, formatQuantity } from './format-number';
import { heldTo, LimitVerdict } from './verdict-item';

/** Share of air in the mortar. A round figure of ours, stated in the working. */
const AIR_IN_MORTAR = 0.08;
const USUAL_AIR = 20;

const FIELDS = {
  cement: { label: 'Portland cement', unit: 'parts', start: 1, least: 0.25, most: 4, step: 0.25 },
  lime: { label: 'Hydrated lime', unit: 'parts', start: 1, least: 0, most: 6, step: 0.25 },
  sand: { label: 'Sand', unit: 'parts', start: 6, least: 1, most: 20, step: 0.25 },
  measured: {
    label: 'The sand was measured',
    start: 'damp',
    choices: [
      ['damp', 'damp and loose'],
      ['dry', 'dry'],
    ],
  },
  bulking: { label: 'Damp sand takes more room by', unit: '%', start: 25, least: 0, most: 40, step: 1 },
  water: { label: 'Water', unit: 'parts', start: 1.5, least: 0.25, most: 6, step: 0.25 },
  air: { label: 'Air', quantity: '°C', start: 20, least: 0, most: 45, step: 1 },
  minutes: { label: 'Since mixing', unit: 'min', start: 60, least: 0, most: 300, step: 5 },
  wind: { label: 'Wind', quantity: 'km/h', start: 10, least: 0, most: 50, step: 1 },
  humidity: { label: 'Humidity', unit: '%', start: 50, least: 0, most: 100, step: 5 },
  rules: 'rules',
} as const;

/** A batch by volume: its class, what it yields, and how long it may be used. */
export function MortarBox() {
  const given = useFields(FIELDS);
  const { system } = given;
  const { cement, lime, sand, measured, bulking, water, air, minutes, wind, humidity, rules } = given.values;
  const share = bulking / 100;
  const damp = measured === 'dry' ? dampSandFor(sand, share) : sand;
  const mix: MortarMix = { cement, lime, sand: damp };
  const yielded = yieldOf(mix, water * WATER_WEIGHT, AIR_IN_MORTAR);
  const pace = hydrationPace(air, USUAL_AIR);
  const drying = evaporationOf({ surface: air, air, humidity: humidity / 100, wind });
  const parts = (value: number) => formatNumber(value, 2);
  const judged = [
    ['mortar-life', 'Time since mixing', minutes, ' min'],
    ['sand-ratio', 'Sand, not too much', sandRatio(mix), ' times the binder'],
    ['sand-ratio-least', 'Sand, not too little', sandRatio(mix), ' times the binder'],
  ] as const;
  return (
    <DrawingFrame
      title="Mortar box"
      given={given}
      sheet={mortarSheet(
        `Mortar of ${parts(cement)} cement, ${parts(lime)} lime, ${parts(damp)} sand, mixed ${minutes} minutes ago`,
        { ...mix, yielded },
        minutes,
        heldTo(rules, 'mortar-life', minutes, { air })?.bound,
      )}
      note="Boxes of equal width: the height is the volume. The dial: minutes since mixing; shaded: the time this rule set gives."
      result={[
        `${className('ASTM C270', 'united-states', mix)} ${className('Canadian table', 'canada', mix)}`,
        `${parts(damp)} parts of damp sand hold ${parts(drySandIn(damp, share))} dry. Sand to binder: ${parts(sandRatio(mix))}.`,
        `Yield about ${parts(yielded)} parts: ${formatNumber((100 * yielded) / damp, 0)} % of the damp sand.`,
        `At ${formatQuantity(air, '°C', system)} cement hardens at ${formatNumber(pace, 2)} times its pace at ${formatQuantity(USUAL_AIR, '°C', system)}. A wet slab would lose ${formatQuantity(drying, 'kg/m²', system, 2)} of water an hour${drying > EVAPORATION_OF_CONCERN ? ': a drying day' : ''}.`,
      ]}
      verdicts={judged.map(([id, what, value, unit]) => (
        <LimitVerdict key={id} {...{ rules, id, what, measured: value, unit }} at={{ air }} show={parts} />
      ))}
      working={MORTAR_WORKING}
      caution={[
        'Wet cement and lime burn skin and eyes. Gloves, glasses and sleeves on; wash with clean water at once. Breathe no dust.',
      ]}
    />
  );
}

function className(table: string, rules: RuleSetId, { cement, lime, sand }: MortarMix): string {
  const types = mortarTypesOf(rules, { portland: cement, lime, sand });
  return types.length === 0 ? `${table}: no type.` : `${table}: type ${types.join(' or ')}.`;
}

const FOOT = 40;
const MOST_HIGH = 190;
const WIDE = 48;
const DIAL: Point = [345, 160];
const RADIUS = 58;
const MINUTES_ROUND = 300;
const INK: Pen = { paint: '--ink', width: 1.5 };

/** Boxes as high as their volumes, and a dial of the minutes with the time that mortar may be used. */
function mortarSheet(
  name: string,
  { cement, lime, sand, yielded }: MortarMix & { readonly yielded: number },
  minutes: number,
  life: number | undefined,
): Picture {
  const perPart = MOST_HIGH / Math.max(cement, lime, sand, yielded);
  const boxes = (
    [
      ['cement', cement, '--slate'],
      ['lime', lime, '--paper'],
      ['sand', sand, '--ochre'],
      ['mortar', yielded, '--line'],
    ] as const
  ).map(([what, volume, fill], index) => ({
    ...{ what, volume, fill, high: volume * perPart },
    x: 12 + index * (WIDE + 16) + (index === 3 ? 10 : 0),
  }));
  const top = Math.PI / 2;
  const turnOf = (at: number) => top - (2 * Math.PI * at) / MINUTES_ROUND;
  const hand = arc(...DIAL, RADIUS - 8, turnOf(minutes), turnOf(minutes)).slice(-1);
  return {
    name,
    box: { x: 0, y: 0, width: 420, height: 290 },
    shapes: [
      ...boxes.map(({ x, high, fill }) => solid(rectRing(x, FOOT, WIDE, high), fill, INK)),
      solid(round(...DIAL, RADIUS), '--paper', INK),
      ...(life === undefined
        ? []
        : [
            solid(
              [DIAL, ...arc(...DIAL, RADIUS, top, turnOf(life))],
              '--moss',
              { paint: '--moss', width: 1 },
              0.3,
            ),
          ]),
      lines([[DIAL, ...hand]], { paint: '--chalk', width: 4 }),
      { kind: 'dot', at: DIAL, radius: 5, fill: '--chalk' },
    ],
    labels: [
      ...boxes.flatMap(({ x, what, volume, high }) => [
        labelAt(x + WIDE / 2, FOOT + high + 12, formatNumber(volume, 2)),
        labelAt(x + WIDE / 2, FOOT - 15, what),
      ]),
      labelAt(DIAL[0], DIAL[1] - RADIUS - 19, `${formatNumber(minutes, 0)} min`),
      labelAt(DIAL[0], DIAL[1] - RADIUS - 39, 'once round: 5 h'),
    ],
  };
}

/** How the mortar box reckons. */
const MORTAR_WORKING: readonly Working[] = [
  {
    what: 'Class',
    formula:
      'Parts by volume looked up in the proportion table. Both tables count sand damp and loose: dry sand is first brought to its damp volume.',
    source: 'ASTM C270 as the IRC prints it; NBC Table 9.20.3.2.-B',
  },
  {
    what: 'Bulking',
    formula: 'Dry = damp ÷ (1 + bulking). By jar: bulking = (damp − flooded) ÷ flooded height.',
    source: 'teaching pages on sand; a cement maker gives 15 to 30 %',
  },
  {
    what: 'Yield',
    formula:
      '(solids without pores + water) ÷ (1 − air), with 8 % of air taken. Loose weights 94, 40 and 80 lb/cu ft (1506, 641 and 1281 kg/m³); 3.15, 2.3 and 2.65 times as heavy as water.',
    source: 'absolute volumes; weights as ASTM C270 is widely quoted',
  },
  {
    what: 'Pace of hardening',
    formula:
      'exp(−(E ÷ R)(1 ÷ T − 1 ÷ T₂₀)), E = 38.2 kJ/mol, T in kelvin. It does not say how long mortar may be used: the limit does.',
    source: 'Arrhenius; energy from NIST',
  },
  {
    what: 'Drying',
    formula:
      '5((t + 18)^2.5 − r(t + 18)^2.5)(V + 4) × 10⁻⁶ kg/(m²·h), with t in °C and V in km/h. Made for slabs: it ranks days. Crews shield slabs from 1.0 up (0.2 lb per sq ft).',
    source: 'Uno, ACI Materials Journal 95-M34, 1998',
  },
];
