'use client';

import { useId, useMemo, useState } from 'react';
import { boundAt } from '../../lib/limits/bound';
import { formatAmount } from '../../lib/limits/format-amount';
import type { RuleSetId } from '../../lib/limits/limit';
import { limitOf } from '../../lib/limits/limits';
import { type Back, dabsOn, type Heap, ridgesOn, ringOn } from '../../lib/trade/mortar-heaps';
import { outlineOf, type Spread, spreadOf } from '../../lib/trade/mortar-spread';
import { formatLength, type LengthSystem } from '../../lib/units';
import { DrawingFrame, type Working } from './drawing-frame';
import { ChoiceField, RulesField } from './fields/choice-field';
import { LengthField } from './fields/length-field';
import { NumberField } from './fields/number-field';
import { formatNumber, formatQuantity } from './format-number';
import { useLengthsHere, useRulesHere } from './rules-here';
import { Sheet } from './sheets/sheet';
import { isWithin, VerdictItem } from './verdict-item';

const BACK: Back = { length: 200, height: 100 };
const SCALE = 2;
const EDGE = 10;
const CUBIC_MM_PER_CUBIC_CM = 1000;

const WAYS = [
  ['dabs', 'Dabs'],
  ['ridges', 'Level ridges'],
  ['ring', 'A ring round the edge'],
] as const;
type Way = (typeof WAYS)[number][0];

const WORKING: readonly Working[] = [
  {
    what: 'Mortar is not lost',
    formula:
      'Covered area = volume ÷ thickness. A half ball holds 2πr³ ÷ 3, so it becomes a disc of radius √(V ÷ πt).',
    source: 'volume of solids, school geometry',
  },
  {
    what: 'Where heaps meet',
    formula:
      'The front runs evenly ahead of all heaps until the whole volume has its place. What passes the edge has left the unit.',
    source: 'our model, counted in 120 squares along the back. A heap lower than the joint is never touched.',
  },
];

/** Dabs, ridges or a ring on a back of 200 × 100 mm, pressed to a thickness: what they cover. */
export function MortarSpread() {
  const system = useLengthsHere();
  const [way, setWay] = useState<Way>('dabs');
  const [count, setCount] = useState(5);
  const [size, setSize] = useState(20);
  const [thickness, setThickness] = useState(10);
  const [rules, setRules] = useRulesHere();
  const heaps = useMemo(() => heapsOf(way, count, size), [way, count, size]);
  const spread = useMemo(() => spreadOf(BACK, heaps, thickness), [heaps, thickness]);
  const contact = `${formatNumber(spread.contact, 0)} %`;
  const volume = (mm3: number) => formatQuantity(mm3 / CUBIC_MM_PER_CUBIC_CM, 'cm³', system, 0);
  const out = formatNumber((100 * spread.squeezedOut) / spread.volume, 0);
  return (
    <DrawingFrame
      title="Mortar spread"
      system={system}
      sheet={
        <BackSheet
          heaps={heaps}
          spread={spread}
          thickness={thickness}
          label={`Back of a unit, ${contact} covered with mortar`}
        />
      }
      note={`The back of a unit, ${formatLength(BACK.length, system)} by ${formatLength(BACK.height, system)}. Dashed: the mortar as it was put on. Grey: what it covers when pressed.`}
      controls={
        <>
          <ChoiceField label="Put on as" value={way} choices={WAYS} onChange={setWay} />
          {way !== 'ring' && (
            <NumberField
              label={way === 'dabs' ? 'Dabs in each of two rows' : 'Ridges'}
              unit="pieces"
              value={count}
              least={1}
              most={6}
              step={1}
              onChange={(value) => setCount(Math.round(value))}
            />
          )}
          <LengthField
            label={way === 'dabs' ? 'Radius of a dab' : 'Height put on'}
            {...{ system, value: size, least: 5, most: 40, step: 1, onChange: setSize }}
          />
          <LengthField
            label="Thickness when pressed"
            {...{ system, value: thickness, least: 3, most: 25, step: 0.5, onChange: setThickness }}
          />
          <RulesField value={rules} onChange={setRules} />
        </>
      }
      result={[
        spread.contact === 0
          ? 'The unit does not touch the mortar: it stands lower than the joint.'
          : `${contact} of the back is in contact. ${out} % of the mortar left over the edges.`,
        `Mortar put on: ${volume(spread.volume)}. A full joint needs ${volume(BACK.length * BACK.height * thickness)}.`,
        `Largest bare place: ${formatAmount(spread.largestBare, 'mm²', system)}.${spread.isShutIn ? ' A bare place is shut in: its air, and later water, cannot get out.' : ''}`,
      ]}
      verdicts={<Verdicts {...{ spread, rules, system }} />}
      working={WORKING}
      caution={[
        'A unit with little mortar on its back can come off the wall. Never pull at one to find out.',
      ]}
    />
  );
}

/** The ring and the ridges are 12 mm wide, a bead of a pointing bag; no tolerance. */
const BEAD = 12;

function heapsOf(way: Way, count: number, size: number): readonly Heap[] {
  if (way === 'ring') return ringOn(BACK, BEAD, size);
  return way === 'dabs' ? dabsOn(BACK, count, 2, size) : ridgesOn(BACK, count, BEAD, size);
}

function Verdicts(props: {
  readonly spread: Spread;
  readonly rules: RuleSetId;
  readonly system: LengthSystem;
}) {
  const { spread, rules, system } = props;
  const contact = limitOf(rules, 'back-contact');
  const bare = limitOf(rules, 'back-void');
  return (
    <>
      {contact && (
        <VerdictItem
          limit={contact}
          what="Contact"
          passes={isWithin(contact, spread.contact, boundAt(contact, {}))}
          text={`${formatNumber(spread.contact, 0)} %, at least ${boundAt(contact, {})} %.`}
        />
      )}
      {bare && (
        <VerdictItem
          limit={bare}
          what="Largest bare place"
          passes={isWithin(bare, spread.largestBare, boundAt(bare, {}))}
          text={`${formatAmount(spread.largestBare, bare.unit, system)}, at most ${formatAmount(boundAt(bare, {}), bare.unit, system)}.`}
        />
      )}
    </>
  );
}

function BackSheet(props: {
  readonly heaps: readonly Heap[];
  readonly spread: Spread;
  readonly thickness: number;
  readonly label: string;
}) {
  const { heaps, spread, thickness, label } = props;
  const clip = useId();
  const width = BACK.length * SCALE;
  const height = BACK.height * SCALE;
  return (
    <Sheet label={label} width={width + 2 * EDGE} height={height + 2 * EDGE}>
      <clipPath id={clip}>
        <rect width={BACK.length} height={BACK.height} />
      </clipPath>
      <g transform={`translate(${EDGE} ${EDGE + height}) scale(${SCALE} ${-SCALE})`}>
        <rect width={BACK.length} height={BACK.height} fill="var(--clay)" fillOpacity="0.22" />
        <g clipPath={`url(#${clip})`} fill="var(--slate)">
          {heaps.map((heap) => {
            const edge = outlineOf(heap, thickness, spread.grown);
            if (edge === null) return null;
            const { round, ...box } = edge;
            return <rect key={`${heap.x} ${heap.y}`} {...box} rx={round} />;
          })}
        </g>
        <rect width={BACK.length} height={BACK.height} fill="none" stroke="var(--ink)" />
        {heaps.map((heap) =>
          heap.kind === 'dab' ? (
            <circle key={`${heap.x} ${heap.y}`} cx={heap.x} cy={heap.y} r={heap.radius} {...PUT_ON} />
          ) : (
            <rect
              key={`${heap.x} ${heap.y}`}
              x={heap.x}
              y={heap.y}
              width={heap.width}
              height={heap.height}
              {...PUT_ON}
            />
          ),
        )}
      </g>
    </Sheet>
  );
}

const PUT_ON = { fill: 'none', stroke: 'var(--ink)', strokeWidth: 1, strokeDasharray: '3 2' } as const;
