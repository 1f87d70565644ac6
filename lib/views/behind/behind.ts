import { lengthDimension } from '../../drawing/dimension';
import { scatterOf } from '../../drawing/drawn-chance';
import { ring } from '../../drawing/rings';
import { scaleBar } from '../../drawing/scale-bar';
import {
  type Drawing,
  type Label,
  lines,
  type Pieces,
  rect,
  type Shape,
  type Spot,
} from '../../drawing/shape';
import { clippedTo, type Point, type Ring, rectRing } from '../../geometry/polygon';
import type { LengthSystem, Mm } from '../../units';
import { isTall, type Unit, type Wall } from '../../wall/model';
import type { PanelSurvey } from '../../wall/survey';
import type { SurveyedWall } from '../../wall/surveyed';
import { fillOf } from '../front/units';
import { caliper } from '../pointing/part-readouts';
import { length } from '../section/sheet';
import { faceOf, onFace, outlineOf } from '../unit-outline';
import { ViewError } from '../view';

const GRID = 10;

/**
 * One unit lifted off, its back drawn as if seen through it from in front (not turned over), so that left stays left. Adhered: the
 * mortar on its back, with ten by ten fields to count. Anchored: the bed it lay in, seen from above, with the straps in it.
 */
export function behindView({ wall, panels }: SurveyedWall, id: string, system: LengthSystem): Drawing {
  const unit = wall.units.find((each) => each.id === id);
  if (unit === undefined) throw new ViewError(`behind: this wall has no unit "${id}"`);
  const level: Unit = { ...unit, x: 0, y: 0, fall: 0 };
  const adhered = wall.masonry === 'adhered';
  const bed = adhered ? { shapes: [], labels: [] } : bedBelow(wall, panels, unit, system);
  const low = adhered ? 0 : -wall.family.depth - 150;
  const width = lengthDimension(0, unit.length, unit.height + 16, 6, 16, system);
  const margin = 40;
  // A soldier is narrow: its sheet is as wide as it is high, for the texts.
  const wide = Math.max(unit.length, unit.height) + 2 * margin;
  const left = (unit.length - wide) / 2;
  const bar = scaleBar(left + margin, low - 34, (wide - 2 * margin) * 0.6, 5, system);
  // Lines as far apart as the text is high on a phone, where the sheet is smallest.
  const line = wide * 0.055;
  const captions = [
    `Course ${unit.course}, ${isTall(unit) ? `${unit.kind}, ` : ''}unit ${unit.position}: its back,`,
    'seen through from the front: left is left',
  ].map(
    (text, index): Label => ({
      at: [left + margin * 0.2, low - 46 - (index + 0.5) * line],
      text,
      anchor: 'start',
      ofLook: true,
    }),
  );
  const foot = low - 52 - 2 * line;
  return {
    box: { x: left, y: foot, width: wide, height: unit.height + 50 - foot },
    shapes: [
      { kind: 'area', rings: [outlineOf(level)], fill: fillOf(unit) },
      { kind: 'area', rings: [faceOf(level)], fill: 'url:fleck' },
      ...(adhered ? [...pats(level), ...grid(level)] : []),
      ...bed.shapes,
      ...width.shapes,
      ...bar.shapes,
    ],
    labels: [width.label, ...captions, ...bed.labels, bar.label],
    frames: [],
    spots: [spotOf(unit)],
  };
}

function spotOf({ id, length: width, height }: Unit): Spot {
  return { part: id, x: 0, y: 0, width, height };
}

/** Mortar pressed flat on the back: each pat where it is, cut off at the unit's edges, its rim a little rough. */
function pats(unit: Unit): readonly Shape[] {
  const rings = (unit.back ?? []).flatMap((pat, index) => {
    const x = Math.max(0, pat.x);
    const y = Math.max(0, pat.y);
    const right = Math.min(unit.length, pat.x + pat.width);
    const top = Math.min(unit.height, pat.y + pat.height);
    if (right <= x || top <= y) return [];
    const rough = roughRing(unit, index, x, y, right, top);
    return [unit.cut === undefined ? rough : clippedTo(rough, faceOf(unit))];
  });
  const shade = rings.map((ring) =>
    ring.map(([x, y]): Point => [Math.min(unit.length, x + 1), Math.max(0, y - 1)]),
  );
  return [
    { kind: 'area', rings: shade, fill: '#1a1310', opacity: 0.5 },
    { kind: 'area', rings, fill: 'url:mortar' },
    { kind: 'area', rings, fill: 'url:drag', opacity: 0.5 },
  ];
}

/** Wanders by at most a third of a millimetre, and not at all along the edges of the unit. */
function roughRing(unit: Unit, salt: number, x: Mm, y: Mm, right: Mm, top: Mm): Ring {
  const steps = 8;
  const rough = (index: number, edge: boolean): Mm =>
    edge ? 0 : scatterOf(unit.id, 80 + salt * 40 + index, 0.33);
  const across = Array.from({ length: steps }, (_, index) => x + ((right - x) * index) / steps);
  return [
    ...across.map((each, index): Point => [each, y + rough(index, y === 0)]),
    ...Array.from(
      { length: 4 },
      (_, index): Point => [right + rough(10 + index, right === unit.length), y + ((top - y) * index) / 4],
    ),
    ...across.map((each, index): Point => [right + x - each, top + rough(20 + index, top === unit.height)]),
    ...Array.from(
      { length: 4 },
      (_, index): Point => [x + rough(30 + index, x === 0), top - ((top - y) * index) / 4],
    ),
  ];
}

/** Ten by ten fields over the back: bare fields can be counted as hundredths, on a back that is cut to a slope nearly so. */
function grid(unit: Unit): readonly Shape[] {
  const shares = Array.from({ length: GRID + 1 }, (_, index) => index / GRID);
  const across: readonly Ring[] = [
    ...shares.map((share): Ring => [onFace(unit, share, 0), onFace(unit, share, 1)]),
    ...shares.map((share): Ring => [onFace(unit, 0, share), onFace(unit, 1, share)]),
  ];
  return [
    lines(across, { paint: '#ffffff', width: 1.8, thin: true, opacity: 0.55 }),
    lines(across, { paint: '#1f4f80', width: 1, thin: true, opacity: 0.85 }),
  ];
}

/** The bed that was under the unit, from above: back of the wall at the top, face at the bottom; straps as wide and as far in as they are. */
function bedBelow(wall: Wall, panels: readonly PanelSurvey[], unit: Unit, system: LengthSystem): Pieces {
  const { depth } = wall.family;
  const low = -depth - 90;
  const survey = panels.find(({ panel }) => panel.id === unit.panel);
  const ties = (survey?.ties ?? []).filter(
    (tie) =>
      tie.course === unit.course - 1 &&
      tie.x > unit.x - tie.width / 2 &&
      tie.x < unit.x + unit.length + tie.width / 2,
  );
  const straps = ties.map((tie) => ({ tie, x: tie.x - unit.x - tie.width / 2, top: low + depth }));
  return {
    shapes: [
      rect({ x: 0, y: low, width: unit.length, height: depth }, 'url:mortar'),
      lines([[...rectRing(0, low, unit.length, depth), [0, low]]], {
        paint: '#22272b',
        width: 1.2,
        thin: true,
      }),
      ...straps.flatMap(({ tie, x, top }) => [
        rect(
          { x: x + 2, y: top - tie.embedment - 2, width: tie.width, height: tie.embedment + 26 },
          '#1a1310',
          0.35,
        ),
        rect({ x, y: top - tie.embedment, width: tie.width, height: tie.embedment + 26 }, '#8d989e'),
        lines([ring(x + tie.width * 0.3, top - tie.embedment, x + tie.width * 0.3, top + 26)], {
          paint: '#c6cfd3',
          width: 1.5,
        }),
      ]),
    ],
    labels: [
      {
        at: [unit.length / 2, low - 14],
        text: 'bed from above, face of the wall',
        anchor: 'middle',
        ofLook: true,
      },
      ...straps.map(
        ({ tie, x, top }): Label => ({
          at: [x + tie.width + 6, top + 14],
          text: `${caliper(tie.thickness, system)}; ${length(tie.embedment, system)} deep`,
          anchor: x > unit.length / 2 ? 'end' : 'start',
          ...(x > unit.length / 2 ? { at: [x - 6, top + 14] as const } : {}),
        }),
      ),
    ],
  };
}
