import { arrises } from '../../drawing/brickwork';
import { lighter } from '../../drawing/colours';
import { scatterOf, shareOf } from '../../drawing/drawn-chance';
import type { Area, Paint, Shape } from '../../drawing/shape';
import type { Point, Ring } from '../../geometry/polygon';
import type { Unit, Wall } from '../../wall/model';
import type { PanelSurvey } from '../../wall/survey';
import { faceOf, onFace, outlineOf } from '../unit-outline';
import { quoinColours, unitColours } from '../wall-colours';
import { blemishes } from './blemishes';
import { plainFace } from './joints';
import { isStone, stoneFaces } from './stone-faces';

/** How much paler a fresh break is than the face of the middle unit of its lot. */
const PALER = 0.3;

/** The units of a panel, and what lies on them. */
export function frontUnits(wall: Wall, survey: PanelSurvey): readonly Shape[] {
  return [...unitFaces(survey), ...onFaces(wall, survey)];
}

/** One path a unit. */
export function unitFaces({ placed }: PanelSurvey): readonly Area[] {
  return placed.map(({ unit }) => ({ kind: 'area', rings: [outlineOf(unit)], fill: fillOf(unit) }));
}

/** What the units share: grain of the face, lit and shaded arrises, cracks, bloom and other marks. */
export function onFaces(wall: Wall, { placed }: PanelSurvey): readonly Shape[] {
  const units = placed.map(({ unit }) => unit);
  const faces = units.map(plainFace);
  const bricks = units.filter((unit) => !isStone(wall, unit));
  return [
    { kind: 'area', rings: faces, fill: 'url:fleck' },
    ...textured(
      bricks.filter(({ kind }) => kind !== 'soldier'),
      'rough',
      'url:drag',
    ),
    ...textured(
      bricks.filter(({ kind }) => kind === 'soldier'),
      'rough',
      'url:drag-on-end',
    ),
    ...textured(bricks, 'rock-face', 'url:rock'),
    ...stoneFaces(units.filter((unit) => isStone(wall, unit))),
    ...arrises(units.map(faceOf)),
    ...bloom(units),
    ...cracks(units),
    ...blemishes(
      units.filter(({ kind }) => kind !== 'quoin'),
      freshBreak(unitColours(wall)),
    ),
    ...blemishes(
      units.filter(({ kind }) => kind === 'quoin'),
      freshBreak(quoinColours(wall)),
    ),
  ];
}

/** Where weather has not been, the unit is paler than its face. */
function freshBreak(colours: readonly string[]): Paint {
  return lighter(colours[Math.floor(colours.length / 2)] ?? '#9a8a7a', PALER);
}

export function fillOf(unit: Unit): string {
  const stuff = unit.kind === 'quoin' ? 'quoin' : 'unit';
  return `url:${stuff}${unit.shade % 8}${shareOf(unit.id, 12) < 0.6 ? 'a' : 'b'}`;
}

function textured(units: readonly Unit[], texture: Unit['texture'], fill: string): readonly Area[] {
  const rings = units.filter((unit) => unit.texture === texture).map(plainFace);
  return rings.length === 0 ? [] : [{ kind: 'area', rings, fill }];
}

/** Salts left by drying water: a white veil over the face, thickest at the foot. */
function bloom(units: readonly Unit[]): readonly Area[] {
  return units
    .filter(({ condition }) => condition === 'bloom')
    .map((unit) => ({
      kind: 'area',
      rings: [outlineOf(unit)],
      fill: `url:bloom${shareOf(unit.id, 30) < 0.5 ? 'a' : 'b'}`,
    }));
}

/** A hairline: one thin jagged line through the face, about a third of a millimetre wide. */
function cracks(units: readonly Unit[]): readonly Area[] {
  const rings = units.filter(({ condition }) => condition === 'hairline').map(crackOf);
  if (rings.length === 0) return [];
  return [{ kind: 'area', rings, open: true, pen: { paint: '#1d0f0a', width: 0.7, opacity: 0.85 } }];
}

function crackOf(unit: Unit): Ring {
  const steps = 7;
  const foot = 0.25 + shareOf(unit.id, 40) * 0.5;
  const lean = scatterOf(unit.id, 41, 0.14);
  return Array.from({ length: steps + 1 }, (_, index): Point => {
    const up = index / steps;
    const along = foot + lean * up;
    const [x, y] = onFace(unit, along, up);
    return [x + (index === 0 || index === steps ? 0 : scatterOf(unit.id, 42 + index, 3.2)), y];
  });
}
