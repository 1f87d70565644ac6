import type { Shape } from '../../lib/drawing/shape';
import { svgFile } from '../../lib/drawing/svg-file';
import { layPlan } from '../../lib/generate/generate';
import { planWith } from '../../lib/generate/planner';
import { type Box, boxRound, type FaceBox, overlaps } from '../../lib/geometry/box';
import { strapBox } from '../../lib/views/behind/straps';
import { drawingOf } from '../../lib/views/draw-view';
import { frontPicture } from '../../lib/views/front/front';
import { markOnSheet, markShapes } from '../../lib/views/pointing/mark-shapes';
import { wallColours } from '../../lib/views/wall-colours';
import type { WallKind } from '../../lib/wall/model';
import { type SurveyedWall, surveyedWall } from '../../lib/wall/surveyed';
import { entryOf, type GlossaryEntry } from './glossary';
import { sketchOf } from './sketches/sketches';

const KINDS: Readonly<Record<'plain' | 'window' | 'corner' | 'gable', WallKind>> = {
  plain: 'plain-panel',
  window: 'window-panel',
  corner: 'door-corner',
  gable: 'gable-end',
};

/** How much of the wall a glossary picture shows, mm, when the thing itself is not larger. */
const SHOWN = { width: 900, height: 450 };
const ROOM = 120;
const SEED = 5;
/** As wide as it is shown on a phone, px. */
const WIDTH = 360;

export function termFile(id: string): string {
  return `term.${id}.svg`;
}

export function termOfFile(file: string): string {
  return /^term\.([a-z-]+)\.svg$/.exec(file)?.[1] ?? '';
}

/** The thing a word means: ringed on a sound wall, else sketched. Undefined for what is no word of ours. */
export function drawTerm(id: string): string | undefined {
  const entry = entryOf(id);
  if (entry === undefined) return undefined;
  const { picture } = entry;
  if (picture === undefined) return sketchOf(id);
  const plan = planWith(KINDS[picture.of], 'anchored', 'canada', [], SEED);
  const surveyed = surveyedWall(
    layPlan({
      ...plan,
      lookAlikes: [],
      tolerated: [],
      mortarTone: 0,
      soldiers: picture.part === 'soldier',
      quoins: picture.part === 'quoin',
      finish: 'brick',
    }),
  );
  const part = ringedIn(surveyed, picture.part);
  if (part === undefined) throw new RangeError(`${id}: its wall has no ${picture.part}`);
  const mark = { ...part, number: 1, state: 'mark' as const };
  const drawing =
    picture.view === 'front' ? frontPicture(surveyed) : drawingOf(surveyed, { kind: picture.view }, 'mm');
  const place = markOnSheet(drawing, mark, 1) ?? drawing.box;
  const width = Math.max(SHOWN.width, place.width + 2 * ROOM);
  const height = Math.max(SHOWN.height, place.height + 2 * ROOM);
  const box = {
    x: place.x + place.width / 2 - width / 2,
    y: place.y + place.height / 2 - height / 2,
    width,
    height,
  };
  const shapes = drawing.shapes.flatMap((shape) => seenIn(shape, box));
  return svgFile({ ...drawing, box, shapes, labels: [] }, wallColours(surveyed.wall), WIDTH, (mmPerPx) =>
    markShapes(drawing, [mark], mmPerPx),
  );
}

type Ringed = NonNullable<GlossaryEntry['picture']>['part'];

/** What of a shape shows in a box: of a wall that is drawn whole, a few units. */
function seenIn(shape: Shape, box: Box): readonly Shape[] {
  if (shape.kind === 'dot') return [shape];
  const rings = shape.rings.filter((ring) =>
    overlaps(boxRound(ring.map(([x, y]) => ({ x: x - 1, y: y - 1, width: 2, height: 2 }))), box),
  );
  return rings.length > 0 ? [{ ...shape, rings }] : [];
}

/** One thing near the middle of all that are called so; of soldiers the row, of a gable all of it, of a tie its strap. */
function ringedIn({ wall, parts }: SurveyedWall, what: Ringed): FaceBox | undefined {
  const panel = wall.panels.find(({ gable }) => gable !== null);
  if (what === 'gable' && panel?.gable) {
    const y = (panel.gable.fromCourse - 1) * wall.gauge;
    return { panel: panel.id, x: 0, y, width: panel.length, height: panel.courses * wall.gauge - y };
  }
  const tie = wall.ties[Math.floor(wall.ties.length / 2)];
  if (what === 'tie' && tie) return { panel: tie.panel, ...strapBox(wall, tie) };
  const tall = new Set<string>(wall.units.filter(({ kind }) => kind === what).map(({ id }) => id));
  const fitting = [...parts.values()].filter(({ id, kind }) => kind === what || tall.has(id));
  const last = fitting[fitting.length - 1];
  const [first] = fitting;
  if (what === 'soldier' && first && last) return { ...first, width: last.x + last.width - first.x };
  return fitting[Math.floor(fitting.length * 0.45)];
}
