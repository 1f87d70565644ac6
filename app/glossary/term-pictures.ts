import { svgBox } from '../../lib/drawing/svg-nodes';
import { layPlan } from '../../lib/generate/generate';
import { planWith } from '../../lib/generate/planner';
import { drawingOf } from '../../lib/views/draw-view';
import { markOnSheet } from '../../lib/views/pointing/mark-shapes';
import { svgOf } from '../../lib/views/print-svg';
import type { Wall, WallKind } from '../../lib/wall/model';
import { type Part, partsOf } from '../../lib/wall/parts';
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
const WIDTH = 900;

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
  if (picture === undefined) return sketchOf(id, entry.american);
  const plan = planWith(KINDS[picture.of], 'anchored', 'canada', [], SEED);
  const wall = layPlan({
    ...plan,
    lookAlikes: [],
    mortarTone: 0,
    soldiers: picture.part === 'soldier',
    quoins: picture.part === 'quoin',
    finish: 'brick',
  });
  const part = ringedIn(wall, picture.part);
  if (part === undefined) throw new RangeError(`${id}: its wall has no ${picture.part}`);
  const view = { kind: picture.view };
  const mark = { ...part, number: 1, state: 'mark' as const };
  const drawing = drawingOf(wall, view, 'mm');
  const place = markOnSheet(drawing, mark, 1);
  const svg = svgOf(wall, view, [mark]);
  if (place === null) return svg;
  const width = Math.max(SHOWN.width, place.width + 2 * ROOM);
  const height = Math.max(SHOWN.height, place.height + 2 * ROOM);
  const box = svgBox({
    x: place.x + place.width / 2 - width / 2,
    y: place.y + place.height / 2 - height / 2,
    width,
    height,
  });
  return svg.replace(
    /viewBox="[^"]+" width="\d+" height="\d+"/,
    `viewBox="${box.join(' ')}" width="${WIDTH}" height="${Math.round((WIDTH * height) / width)}"`,
  );
}

type Ringed = NonNullable<GlossaryEntry['picture']>['part'];

/** One thing near the middle of all that are called so; of soldiers the row. */
function ringedIn(
  wall: Wall,
  what: Ringed,
): Pick<Part, 'panel' | 'x' | 'y' | 'width' | 'height'> | undefined {
  const tall = new Set<string>(wall.units.filter(({ kind }) => kind === what).map(({ id }) => id));
  const fitting = [...partsOf(wall).values()].filter(({ id, kind }) => kind === what || tall.has(id));
  const last = fitting[fitting.length - 1];
  const [first] = fitting;
  if (what === 'soldier' && first && last) return { ...first, width: last.x + last.width - first.x };
  return fitting[Math.floor(fitting.length * 0.45)];
}
