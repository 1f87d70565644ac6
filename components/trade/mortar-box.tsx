'use client';

import { useState } from 'react';
import { boundAt } from '../../lib/limits/bound';
import type { RuleSetId } from '../../lib/limits/limit';
import { limitOf, namedLimitOf } from '../../lib/limits/limits';
import { mortarTypesOf } from '../../lib/limits/mortar';
import { dampSandFor, drySandIn } from '../../lib/trade/mortar-bulking';
import { type MortarMix, sandRatio } from '../../lib/trade/mortar-mix';
import { EVAPORATION_OF_CONCERN, evaporationOf, hydrationPace } from '../../lib/trade/mortar-weather';
import { WATER_WEIGHT, yieldOf } from '../../lib/trade/mortar-yield';
import { DrawingFrame } from './drawing-frame';
import { ChoiceField, RulesField } from './fields/choice-field';
import { NumberField } from './fields/number-field';
import { QuantityField } from './fields/quantity-field';
import { formatNumber, formatQuantity } from './format-number';
import { MORTAR_WORKING } from './mortar-working';
import { useLengthsHere, useRulesHere } from './rules-here';
import { MortarSheet } from './sheets/mortar-sheet';
import { isWithin, VerdictItem } from './verdict-item';

/** Share of air in the mortar. A round figure of ours, stated in the working. */
const AIR_IN_MORTAR = 0.08;
const USUAL_AIR = 20;

/** A batch by volume: its class, what it yields, and how long it may be used. */
export function MortarBox() {
  const system = useLengthsHere();
  const [cement, setCement] = useState(1);
  const [lime, setLime] = useState(1);
  const [sand, setSand] = useState(6);
  const [isDry, setDry] = useState<'damp' | 'dry'>('damp');
  const [bulking, setBulking] = useState(25);
  const [water, setWater] = useState(1.5);
  const [air, setAir] = useState(20);
  const [minutes, setMinutes] = useState(60);
  const [wind, setWind] = useState(10);
  const [humidity, setHumidity] = useState(50);
  const [rules, setRules] = useRulesHere();
  const share = bulking / 100;
  const damp = isDry === 'dry' ? dampSandFor(sand, share) : sand;
  const mix: MortarMix = { cement, lime, sand: damp };
  const yielded = yieldOf(mix, water * WATER_WEIGHT, AIR_IN_MORTAR);
  const pace = hydrationPace(air, USUAL_AIR);
  const drying = evaporationOf({ surface: air, air, humidity: humidity / 100, wind });
  const parts = (value: number) => formatNumber(value, 2);
  const life = limitOf(rules, 'mortar-life');
  return (
    <DrawingFrame
      title="Mortar box"
      system={system}
      sheet={
        <MortarSheet
          mix={mix}
          yielded={yielded}
          minutes={minutes}
          life={life ? boundAt(life, { air }) : null}
          label={`Mortar of ${parts(cement)} cement, ${parts(lime)} lime, ${parts(damp)} sand, mixed ${minutes} minutes ago`}
        />
      }
      note="Boxes of equal width: the height is the volume. The dial: minutes since mixing; shaded: the time this rule set gives."
      controls={
        <>
          <NumberField
            label="Portland cement"
            unit="parts"
            value={cement}
            least={0.25}
            most={4}
            step={0.25}
            onChange={setCement}
          />
          <NumberField
            label="Hydrated lime"
            unit="parts"
            value={lime}
            least={0}
            most={6}
            step={0.25}
            onChange={setLime}
          />
          <NumberField
            label="Sand"
            unit="parts"
            value={sand}
            least={1}
            most={20}
            step={0.25}
            onChange={setSand}
          />
          <ChoiceField
            label="The sand was measured"
            value={isDry}
            choices={[
              ['damp', 'damp and loose'],
              ['dry', 'dry'],
            ]}
            onChange={setDry}
          />
          <NumberField
            label="Damp sand takes more room by"
            unit="%"
            value={bulking}
            least={0}
            most={40}
            step={1}
            onChange={setBulking}
          />
          <NumberField
            label="Water"
            unit="parts"
            value={water}
            least={0.25}
            most={6}
            step={0.25}
            onChange={setWater}
          />
          <QuantityField
            label="Air"
            unit="°C"
            {...{ system, value: air, least: 0, most: 45, steps: [1, 1], onChange: setAir }}
          />
          <NumberField
            label="Since mixing"
            unit="min"
            value={minutes}
            least={0}
            most={300}
            step={5}
            onChange={setMinutes}
          />
          <QuantityField
            label="Wind"
            unit="km/h"
            {...{ system, value: wind, least: 0, most: 50, steps: [1, 1], onChange: setWind }}
          />
          <NumberField
            label="Humidity"
            unit="%"
            value={humidity}
            least={0}
            most={100}
            step={5}
            onChange={setHumidity}
          />
          <RulesField value={rules} onChange={setRules} />
        </>
      }
      result={[
        `${className('ASTM C270', 'united-states', mix)} ${className('Canadian table', 'canada', mix)}`,
        `${parts(damp)} parts of damp sand hold ${parts(drySandIn(damp, share))} dry. Sand to binder: ${parts(sandRatio(mix))}.`,
        `Yield about ${parts(yielded)} parts: ${formatNumber((100 * yielded) / damp, 0)} % of the damp sand.`,
        `At ${formatQuantity(air, '°C', system)} cement hardens at ${formatNumber(pace, 2)} times its pace at ${formatQuantity(USUAL_AIR, '°C', system)}. A wet slab would lose ${formatQuantity(drying, 'kg/m²', system, 2)} of water an hour${drying > EVAPORATION_OF_CONCERN ? ': a drying day' : ''}.`,
      ]}
      verdicts={<Verdicts {...{ rules, mix, air, minutes }} />}
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

function Verdicts(props: {
  readonly rules: RuleSetId;
  readonly mix: MortarMix;
  readonly air: number;
  readonly minutes: number;
}) {
  const { rules, mix, air, minutes } = props;
  const rows = [
    ['mortar-life', 'Time since mixing', minutes, 'min'],
    ['sand-ratio', 'Sand, not too much', sandRatio(mix), 'times the binder'],
    ['sand-ratio-least', 'Sand, not too little', sandRatio(mix), 'times the binder'],
  ] as const;
  return rows.map(([id, what, measured, unit]) => {
    const limit = namedLimitOf(rules, id);
    if (limit === undefined) return null;
    const bound = boundAt(limit, { air });
    return (
      <VerdictItem
        key={id}
        limit={limit}
        what={what}
        passes={isWithin(limit, measured, bound)}
        text={`${formatNumber(measured, 2)}, ${limit.end} ${formatNumber(bound, 2)} ${unit}.`}
      />
    );
  });
}
