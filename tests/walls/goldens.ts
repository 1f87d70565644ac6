import { layWall } from '../../lib/generate/generate';
import { svgOf } from '../../lib/views/print-svg';
import type { View } from '../../lib/views/view';
import type { Wall } from '../../lib/wall/model';
import { surveyedWall } from '../../lib/wall/surveyed';
import {
  HAND_BATCHES,
  HAND_LEDGE,
  HAND_PANEL,
  HAND_TIE,
  handTall,
  handUnits,
  handWall,
  handWindow,
} from '../lib/views/hand-wall';

/** One drawing kept as a file: named for what it shows. */
export interface Golden {
  readonly name: string;
  readonly draw: () => string;
}

const front: View = { kind: 'front' };

function changed(
  change: Readonly<Record<string, Partial<Wall['units'][number]>>>,
  other: Partial<Wall> = {},
): Wall {
  return handWall({ ...other, units: handUnits().map((unit) => ({ ...unit, ...change[unit.id] })) });
}

const STUCK: Partial<Wall> = { masonry: 'adhered', cavity: 0, supports: [], ties: [], flashings: [] };

/** A rim of mortar 190 × 50 about a bare middle 100 × 24 on a back 200 × 60. */
const RING = [
  { x: 5, y: 5, width: 190, height: 13 },
  { x: 5, y: 42, width: 190, height: 13 },
  { x: 5, y: 5, width: 45, height: 50 },
  { x: 150, y: 5, width: 45, height: 50 },
];

export const GOLDENS: readonly Golden[] = [
  {
    // Code 2WS-KSWT-TDF. The picture at the top of the README.
    name: 'readme-wall',
    draw: () =>
      svgOf(
        surveyedWall(
          layWall({ topic: 'line', kind: 'window-panel', difficulty: 1, rules: 'canada', seed: 368 }),
        ),
        front,
      ),
  },
  {
    name: 'tapering-bed-half-filled-head-and-weep',
    draw: () =>
      svgOf(
        surveyedWall(
          changed(
            {
              'A3.2': { y: 152, fall: 6 },
              'A2.3': { condition: 'bloom' },
              'A4.2': { condition: 'hairline' },
            },
            {
              heads: [
                { joint: 'A2.2/3', filled: 50 },
                { joint: 'A1.1/2', filled: 0 },
              ],
            },
          ),
        ),
        front,
      ),
  },
  {
    // A weep between two soldiers, another beside the quoin; the window below them is built up.
    name: 'rough-soldiers-and-a-quoin-in-raked-joints',
    draw: () => {
      const units = handTall().units.flatMap((unit) =>
        unit.id === 'A1.3'
          ? [
              { ...unit, x: 210 },
              { ...unit, id: 'A1.4' as const, position: 4 },
            ]
          : [unit],
      );
      const wall = handTall(
        {},
        {
          panels: [{ ...HAND_PANEL, courses: 5, profile: 'raked', recess: 9 }],
          openings: [],
          supports: [HAND_LEDGE],
          heads: [
            { joint: 'A2.2/3', filled: 0 },
            { joint: 'A1.1/2', filled: 0 },
          ],
          units: units.map((unit) => ({ ...unit, texture: 'rough' })),
        },
      );
      return svgOf(surveyedWall(wall), front);
    },
  },
  {
    name: 'base-cut-where-the-ledge-stops-short',
    draw: () =>
      svgOf(surveyedWall(handWall({ supports: [{ ...HAND_LEDGE, toX: 415 }] })), {
        kind: 'section',
        at: 'base',
      }),
  },
  {
    name: 'lintel-cut-with-its-bearings',
    draw: () => svgOf(surveyedWall(handWindow()), { kind: 'section', at: 'lintel' }),
  },
  {
    name: 'ring-of-mortar-behind-a-unit',
    draw: () => {
      const wall = changed({ 'A2.2': { back: RING } }, STUCK);
      return svgOf(surveyedWall(wall), { kind: 'behind', unit: 'A2.2' });
    },
  },
  {
    name: 'straps-before-cover',
    draw: () =>
      svgOf(
        surveyedWall(
          handWall({
            ties: [
              HAND_TIE,
              { ...HAND_TIE, id: 'A-tie2.2', x: 520, thickness: 0.48, width: 16, embedment: 12 },
            ],
          }),
        ),
        {
          kind: 'before-cover',
        },
      ),
  },
  {
    // By hand: 8 mm proud under a sun 60° to the right and 45° high throws 16 mm down and 13.9 mm to the left.
    name: 'low-sun-from-the-right-on-proud-and-twisted-units',
    draw: () =>
      svgOf(
        surveyedWall(changed({ 'A2.2': { set: 8 }, 'A3.2': { twist: 12 }, 'A3.1': { set: -4 } })),
        front,
        [],
        'mm',
        {
          distance: 'near',
          sun: 60,
        },
      ),
  },
  {
    name: 'split-stone-from-ten-metres',
    draw: () =>
      svgOf(
        surveyedWall(
          handWall({
            ...STUCK,
            finish: 'squared stone',
            tone: { mortar: 1, lot: 3 },
            units: handUnits().map((unit) => ({ ...unit, texture: 'rock-face' })),
          }),
        ),
        front,
        [],
        'mm',
        { distance: 'ten metres', sun: null },
      ),
  },
  {
    // The lower two courses split, the upper two dressed.
    name: 'squared-stone-on-its-ledge',
    draw: () =>
      svgOf(
        surveyedWall(
          handWall({
            finish: 'squared stone',
            tone: { mortar: 0, lot: 2 },
            units: handUnits().map((unit) => ({
              ...unit,
              texture: unit.course < 3 ? 'rock-face' : 'smooth',
            })),
          }),
        ),
        front,
      ),
  },
  {
    name: 'whole-height-cut-through-a-window',
    draw: () => svgOf(surveyedWall(handWindow()), { kind: 'side-section', panel: 'A', x: 310 }),
  },
  {
    name: 'course-from-above-with-a-strap-and-a-twisted-unit',
    draw: () =>
      svgOf(surveyedWall(changed({ 'A2.3': { twist: 12 } }, { heads: [{ joint: 'A2.1/2', filled: 0 }] })), {
        kind: 'above',
        panel: 'A',
        course: 2,
      }),
  },
  {
    name: 'bottom-edge-from-below-where-the-ledge-stops-short',
    draw: () =>
      svgOf(surveyedWall(handWall({ supports: [{ ...HAND_LEDGE, toX: 415 }] })), { kind: 'below', at: 'A' }),
  },
  {
    name: 'mixing-tickets-beside-the-courses-laid-with-them',
    draw: () => svgOf(surveyedWall(handWall({ batches: HAND_BATCHES })), { kind: 'tickets' }),
  },
  {
    // From the bottom, left to right: chip, flake, crumbling edge; sound, smear, stain, sound; thin crack, white bloom, chip.
    name: 'what-is-seen-on-faces',
    draw: () =>
      svgOf(
        surveyedWall(
          changed({
            'A1.1': { condition: 'chip' },
            'A1.2': { condition: 'flake' },
            'A1.3': { condition: 'crumbling' },
            'A2.2': { condition: 'smear' },
            'A2.3': { condition: 'stain' },
            'A3.1': { condition: 'hairline' },
            'A3.2': { condition: 'bloom' },
            'A3.3': { condition: 'chip' },
          }),
        ),
        front,
      ),
  },
];
