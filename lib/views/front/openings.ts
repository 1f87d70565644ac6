import { darker, lighter } from '../../drawing/colours';
import { type Area, rect, type Shape } from '../../drawing/shape';
import type { Box } from '../../geometry/box';
import { type Ring, rectRing } from '../../geometry/polygon';
import type { Opening, Support, Wall } from '../../wall/model';
import { DAYLIGHT, type Light } from '../viewing-conditions';

const FRAME = '#ece7da';
const DOORS = ['#2f4d43', '#2c435a', '#6b2f2b', '#3d4148'];
/** The frame stands back in its reveal by this much under the head and beside the jamb, mm: so far they shade it. */
const HEAD_REVEAL = 44;
const JAMB_REVEAL = 43.75;
const FRAME_WIDE = 62;
const SILL_HIGH = 48;

/** An opening with what stands in it, the steel over it if there is any, and the shade of its reveal. */
export function frontOpening(wall: Wall, opening: Opening, light: Light = DAYLIGHT): readonly Shape[] {
  const { x, y, width, height } = opening;
  const lintel = wall.supports.find((support) => support.opening === opening.id);
  const steel = lintel?.angle?.thickness ?? 0;
  const clear: Box = { x, y, width, height: height - steel };
  const head = Math.min(clear.height, HEAD_REVEAL * light.down);
  const jamb = Math.min(width, JAMB_REVEAL * Math.abs(light.right));
  const fromLeft = light.right >= 0;
  return [
    rect(opening, '#3a322b'),
    ...(opening.kind === 'window' ? windowIn(clear) : doorIn(clear, DOORS[wall.tone.lot % 4] ?? '#2f4d43')),
    rect({ x, y: y + clear.height - head, width, height: head }, 'url:head-shade'),
    rect(
      { x: fromLeft ? x : x + width - jamb, y, width: jamb, height: clear.height },
      fromLeft ? 'url:side-shade' : 'url:other-side-shade',
    ),
    ...(opening.kind === 'window' ? sillOf(opening) : thresholdOf(opening)),
    ...(lintel ? toeOf(lintel, opening) : []),
  ];
}

/** The toe of the angle seen across the opening: its thickness, darker the further it stands back under the units. */
function toeOf(lintel: Support, opening: Opening): readonly Shape[] {
  const thick = lintel.angle?.thickness ?? 8;
  const from = Math.max(opening.x, lintel.fromX);
  const to = Math.min(opening.x + opening.width, lintel.toX);
  const back = Math.min(1, Math.max(0, -lintel.front) / 40);
  const toe: Box = { x: from, y: lintel.y - thick, width: to - from, height: thick };
  return [
    rect(toe, darker('#8a949a', 0.15 + back * 0.55)),
    rect({ ...toe, y: toe.y + thick * 0.78, height: thick * 0.22 }, '#15191b', 0.5),
  ];
}

function windowIn({ x, y, width, height }: Box): readonly Shape[] {
  const sash: Box = { x, y: y + SILL_HIGH, width, height: height - SILL_HIGH };
  const lights = [0, 1].map((index): Box => {
    const half = (width - 3 * FRAME_WIDE) / 2;
    return {
      x: x + FRAME_WIDE + index * (half + FRAME_WIDE),
      y: sash.y + FRAME_WIDE,
      width: half,
      height: sash.height - 2 * FRAME_WIDE,
    };
  });
  return [
    rect(sash, FRAME),
    outline(sash, darker(FRAME, 0.35), 3),
    ...lights.flatMap((light): Shape[] => [
      outline(
        { x: light.x - 14, y: light.y - 14, width: light.width + 28, height: light.height + 28 },
        darker(FRAME, 0.18),
        4,
      ),
      rect(light, 'url:glass'),
      { kind: 'area', rings: gleams(light), fill: '#ffffff', opacity: 0.16 },
      outline(light, darker(FRAME, 0.5), 4),
    ]),
  ];
}

/** Two slanting gleams on the glass. */
function gleams({ x, y, width, height }: Box): readonly Ring[] {
  const slant = width * 0.34;
  return [0.16, 0.5].map((at, index) => {
    const wide = width * (index === 0 ? 0.2 : 0.07);
    const foot = x + width * at;
    return [
      [foot, y],
      [foot + wide, y],
      [Math.min(x + width, foot + wide + slant), y + height],
      [Math.min(x + width, foot + slant), y + height],
    ];
  });
}

function doorIn({ x, y, width, height }: Box, colour: string): readonly Shape[] {
  const leaf: Box = {
    x: x + FRAME_WIDE,
    y: y + 24,
    width: width - 2 * FRAME_WIDE,
    height: height - FRAME_WIDE - 24,
  };
  const side = leaf.width * 0.15;
  const light: Box = {
    x: leaf.x + side,
    y: leaf.y + leaf.height * 0.56,
    width: leaf.width - 2 * side,
    height: leaf.height * 0.34,
  };
  const gap = leaf.width * 0.08;
  const panels = [0, 1].map((index): Box => {
    const half = (light.width - gap) / 2;
    return {
      x: light.x + index * (half + gap),
      y: leaf.y + leaf.height * 0.1,
      width: half,
      height: leaf.height * 0.38,
    };
  });
  return [
    rect({ x, y, width, height }, darker(colour, 0.35)),
    rect(leaf, colour),
    outline(leaf, darker(colour, 0.6), 5),
    ...panels.flatMap((panel): Shape[] => [
      rect(panel, lighter(colour, 0.05)),
      outline(panel, darker(colour, 0.45), 5),
      outline(
        { x: panel.x + 24, y: panel.y + 24, width: panel.width - 48, height: panel.height - 48 },
        lighter(colour, 0.2),
        3,
      ),
    ]),
    rect(light, 'url:glass'),
    outline(light, darker(colour, 0.5), 8),
    {
      kind: 'dot',
      at: [leaf.x + leaf.width - side * 0.45, leaf.y + leaf.height * 0.47],
      radius: 26,
      fill: '#8f7233',
    },
    {
      kind: 'dot',
      at: [leaf.x + leaf.width - side * 0.45 - 4, leaf.y + leaf.height * 0.47 + 4],
      radius: 17,
      fill: '#d6b566',
    },
  ];
}

function sillOf({ x, y, width }: Opening): readonly Shape[] {
  return [
    rect({ x, y, width, height: SILL_HIGH }, '#c9c2b4'),
    rect({ x, y, width, height: SILL_HIGH }, 'url:grain', 0.8),
    rect({ x, y: y + SILL_HIGH - 9, width, height: 9 }, '#f1ece0', 0.7),
    rect({ x, y, width, height: 7 }, '#2a231c', 0.55),
  ];
}

function thresholdOf({ x, y, width }: Opening): readonly Shape[] {
  return [
    rect({ x, y, width, height: 24 }, '#8f897d'),
    rect({ x, y: y + 18, width, height: 6 }, '#d9d3c6', 0.7),
  ];
}

function outline({ x, y, width, height }: Box, paint: string, wide: number): Area {
  return { kind: 'area', rings: [rectRing(x, y, width, height)], pen: { paint, width: wide } };
}
