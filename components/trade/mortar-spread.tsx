'use client';

import { useMemo } from 'react';
import { brickFaces } from '../../lib/drawing/brickwork';
import { round, rounded } from '../../lib/drawing/rings';
import { type Area, type Pen, polygon } from '../../lib/drawing/shape';
import { grown } from '../../lib/geometry/box';
import { type Point, type Ring, rectRing } from '../../lib/geometry/polygon';
import { formatAmount } from '../../lib/limits/format-amount';
import { type Back, dabsOn, type Heap, ridgesOn, ringOn } from '../../lib/trade/mortar-heaps';
import { outlineOf, spreadOf } from '../../lib/trade/mortar-spread';
import { formatLength } from '../../lib/units';
import { DrawingFrame, type Working } from './drawing-frame';
import { useFields } from './fields/use-fields';
import { formatNumber, formatQuantity } from './format-number';
import { LimitVerdict } from './verdict-item';

const BACK: Back = { length: 200, height: 100 };
const FACE = { x: 0, y: 0, width: BACK.length, height: BACK.height };
const EDGE = 5;
const CUBIC_MM_PER_CUBIC_CM = 1000;

const FIELDS = {
  way: {
    label: 'Put on as',
    start: 'dabs',
    choices: [
      ['dabs', 'Dabs'],
      ['ridges', 'Level ridges'],
      ['ring', 'A ring round the edge'],
    ],
  },
  count: { label: 'Ridges', unit: 'pieces', whole: true, start: 5, least: 1, most: 6, step: 1 },
  size: { label: 'Height put on', start: 20, least: 5, most: 40, step: 1 },
  thickness: { label: 'Thickness when pressed', start: 10, least: 3, most: 25, step: 0.5 },
  rules: 'rules',
} as const;
type Way = (typeof FIELDS.way.choices)[number][0];

function fieldsFor(way: Way) {
  const { count, ...others } = FIELDS;
  if (way === 'ring') return others;
  if (way === 'ridges') return FIELDS;
  return {
    ...FIELDS,
    count: { ...count, label: 'Dabs in each of two rows' },
    size: { ...FIELDS.size, label: 'Radius of a dab' },
  };
}

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
  const given = useFields(FIELDS);
  const { system } = given;
  const { way, count, size, thickness, rules } = given.values;
  const heaps = useMemo(() => heapsOf(way, count, size), [way, count, size]);
  const spread = useMemo(() => spreadOf(BACK, heaps, thickness), [heaps, thickness]);
  const percent = (share: number) => `${formatNumber(share, 0)} %`;
  const contact = percent(spread.contact);
  const area = (mm2: number) => formatAmount(mm2, 'mm²', system);
  const volume = (mm3: number) => formatQuantity(mm3 / CUBIC_MM_PER_CUBIC_CM, 'cm³', system, 0);
  const out = percent((100 * spread.squeezedOut) / spread.volume);
  const pressed = heaps.flatMap((heap) => {
    const edge = outlineOf(heap, thickness, spread.grown);
    return edge === null ? [] : [polygon(onBack(edge), 'url:mortar')];
  });
  return (
    <DrawingFrame
      title="Mortar spread"
      given={{ ...given, fields: fieldsFor(way) }}
      sheet={{
        name: `Back of a unit, ${contact} covered with mortar`,
        box: grown(FACE, EDGE),
        shapes: [...brickFaces([FACE]), ...pressed, ...heaps.map(putOn)],
      }}
      note={`The back of a unit, ${formatLength(BACK.length, system)} by ${formatLength(BACK.height, system)}. Dashed: the mortar as it was put on. Grey: what it covers when pressed.`}
      result={[
        spread.contact === 0
          ? 'The unit does not touch the mortar: it stands lower than the joint.'
          : `${contact} of the back is in contact. ${out} of the mortar left over the edges.`,
        `Mortar put on: ${volume(spread.volume)}. A full joint needs ${volume(BACK.length * BACK.height * thickness)}.`,
        `Largest bare place: ${area(spread.largestBare)}.${spread.isShutIn ? ' A bare place is shut in: its air, and later water, cannot get out.' : ''}`,
      ]}
      verdicts={
        <>
          <LimitVerdict
            {...{ rules, id: 'back-contact', what: 'Contact', measured: spread.contact, show: percent }}
          />
          <LimitVerdict
            {...{
              rules,
              id: 'back-void',
              what: 'Largest bare place',
              measured: spread.largestBare,
              show: area,
            }}
          />
        </>
      }
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

/** What a pressed heap covers, as far as the back goes. */
function onBack({ x, y, width, height, round }: NonNullable<ReturnType<typeof outlineOf>>): Ring {
  return rounded(x, y, width, height, round).map(
    ([px, py]): Point => [Math.max(0, Math.min(BACK.length, px)), Math.max(0, Math.min(BACK.height, py))],
  );
}

const DASHED: Pen = { paint: '#22272b', width: 1, dash: [3, 2] };

function putOn(heap: Heap): Area {
  const { x, y } = heap;
  const outline = heap.kind === 'dab' ? round(x, y, heap.radius) : rectRing(x, y, heap.width, heap.height);
  return { kind: 'area', rings: [outline], pen: DASHED };
}
