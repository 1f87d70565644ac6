import { coreOf } from '../../../components/wall/core-of';
import { brought, firstSeen, fitted, zoomed } from '../../../components/wall/gestures/seen-box';
import { tapAt } from '../../../components/wall/gestures/tap';
import { mmPerPixel } from '../../../components/wall/to-screen';
import { placesFor } from '../../../components/wall-page/faults-at';
import type { Drawing } from '../../../lib/drawing/shape';
import { grade } from '../../../lib/exercise/grade';
import { keyOf } from '../../../lib/exercise/key';
import { DIFFICULTIES } from '../../../lib/generate/brief';
import { type Chance, chanceOf } from '../../../lib/generate/chance';
import { layWall } from '../../../lib/generate/generate';
import { TOPICS } from '../../../lib/generate/topics';
import type { Point } from '../../../lib/geometry/polygon';
import { CATALOGUE } from '../../../lib/inspect/catalogue';
import type { Finding } from '../../../lib/inspect/finding';
import { RULE_SETS } from '../../../lib/limits/limit';
import { drawingOf } from '../../../lib/views/draw-view';
import { WALL_KINDS, type Wall } from '../../../lib/wall/model';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { FAULT_CHOICES } from '../../../lib/wall-page/fault-choices';
import { pickedPart } from '../../../lib/wall-page/nearby-parts';
import { type OpenWall, openWallOf } from '../../../lib/wall-page/open-wall';
import { viewKeyFor, viewOf } from '../../../lib/wall-page/view-choices';

/**
 * How far a finger's tap scatters each way, px, as a standard deviation: 1.64 mm, with which a square target of 9.2 mm catches 99 taps of
 * 100. That size was found large enough for a thumb by P. Parhi, A. Karlson and B. Bederson, "Target size study for one-handed thumb
 * use on small touchscreen devices", MobileHCI 2006. That "large enough" means 99 of 100, and 6.1 px to the mm of a screen 390 px
 * (64 mm) wide, are our reading.
 */
const SCATTER = 10;

/** The drawing on a phone 390 × 844: from edge to edge, and half the screen high. */
const SCREEN = { width: 390, height: 422 };
/** Nobody taps more often than this for one mark. */
const MOST_TAPS = 4;
/** Taps on each wall that has a fault, before the next is laid. */
const TAPS_A_WALL = 4;

export interface FingerTap {
  readonly finding: Finding;
  readonly where: string;
  /** What was marked, by whoever took every default; null where no part could be picked, or the fault was not offered. */
  readonly marked: string | null;
  readonly hit: boolean;
}

/** Taps at random findings on walls of every topic, kind, difficulty and rule set, each marked by the default path. The same for the same seed. */
export function fingerTaps(count: number, seed: number): readonly FingerTap[] {
  const chance = chanceOf(seed, 0);
  const taps: FingerTap[] = [];
  for (let n = 0; taps.length < count; n++) {
    const brief = {
      topic: chance.pick(TOPICS),
      // In turn, so that every kind has its share.
      kind: WALL_KINDS[n % WALL_KINDS.length] ?? 'plain-panel',
      difficulty: chance.pick(DIFFICULTIES),
      rules: chance.pick(RULE_SETS),
      seed: chance.whole(0, 100_000),
    };
    const wall = layWall(brief);
    const key = keyOf(surveyedWall(wall), brief.rules);
    const { findings } = key;
    const shown = shownWall(wall);
    const where = `${brief.topic} ${brief.kind} ${brief.difficulty} ${brief.rules} ${brief.seed}`;
    for (let each = 0; each < TAPS_A_WALL && findings.length > 0 && taps.length < count; each++) {
      const finding = chance.pick(findings);
      const marked = markByFinger(shown, finding, chance);
      const result = marked === null ? null : grade(key, [{ part: marked, fault: finding.check }]);
      const hit = result?.findings[findings.indexOf(finding)]?.outcome === 'found';
      taps.push({ finding, where, marked, hit });
    }
  }
  return taps;
}

interface ShownWall {
  readonly open: OpenWall;
  readonly drawingOfKey: (key: string) => Drawing;
}

/** A wall with its looks, each drawn once. */
function shownWall(wall: Wall): ShownWall {
  const open = openWallOf(wall);
  const drawn = new Map<string, Drawing>();
  return {
    open,
    drawingOfKey: (key) => {
      const drawing =
        drawn.get(key) ?? drawingOf(surveyedWall(wall), viewOf(key, open.firstUnit, wall), 'mm');
      drawn.set(key, drawing);
      return drawing;
    },
  };
}

/** The part that a mark goes on when a finger means a finding, names it rightly and takes every default. */
function markByFinger({ open, drawingOfKey }: ShownWall, finding: Finding, chance: Chance): string | null {
  const { wall } = open;
  const key = viewKeyFor(finding, wall);
  // A back is seen after its unit is picked, and that is picked in front; another light leaves every part where it is.
  const drawing = drawingOfKey(key === 'behind' || key === 'side-light' ? 'front' : key);
  const target = targetOf(finding, wall.openings, drawing, open.parts, chance);
  const core = drawing === drawingOfKey('front') ? coreOf(drawing, open.parts) : null;
  let seen = core ? firstSeen(drawing.box, core, SCREEN) : fitted(drawing.box, drawing.box, SCREEN);
  // Who sees a fault has it in sight.
  seen = brought(drawing.box, seen, { x: target[0], y: target[1], width: 0, height: 0 });
  for (let tap = 0; tap < MOST_TAPS; tap++) {
    const mmPerPx = mmPerPixel(seen, SCREEN);
    const x = target[0] + scatter(chance) * mmPerPx;
    const y = target[1] + scatter(chance) * mmPerPx;
    const meant = tapAt(drawing, open.parts, { x, y, mmPerPx, courseHigh: wall.gauge }, 'bare');
    if (meant?.kind === 'part') {
      const { part, aim } = meant.picked;
      const picked = pickedPart(open, part, aim);
      const fault = FAULT_CHOICES.find(({ id }) => id === finding.check);
      return (picked && fault && placesFor(fault, picked)[0]?.id) ?? null;
    }
    if (meant?.kind === 'nearer') {
      seen = zoomed(drawing.box, seen, meant.by, [x, y]);
      // What one means has to be in sight.
      seen = brought(drawing.box, seen, { x: target[0], y: target[1], width: 0, height: 0 });
    }
  }
  return null;
}

/** Where a reader who sees the fault aims: at a part that can have it, in its middle half; else at the middle of where it lies. */
function targetOf(
  { check, parts: ids, region }: Finding,
  openings: Wall['openings'],
  { spots, frames }: Drawing,
  parts: ReadonlyMap<string, { readonly kind: string }>,
  chance: Chance,
): Point {
  const { markedOn } = CATALOGUE[check];
  const concerned: readonly string[] = ids;
  const aimed = spots.filter(
    ({ part }) => concerned.includes(part) && markedOn.some((kind) => kind === parts.get(part)?.kind),
  );
  const isStrip = check === 'no-tie-at-edge' || check === 'no-lintel';
  if (aimed.length > 0 && !isStrip) {
    const spot = chance.pick(aimed);
    // Courses that run past an opening are touched beside it.
    const pastOpening = check === 'course-off-level' && openings.some(({ panel }) => panel === region.panel);
    return [
      spot.x + (spot.width * within(chance)) / (pastOpening ? 5 : 1),
      spot.y + spot.height * within(chance),
    ];
  }
  const frame = frames.find(({ panel }) => panel === region.panel) ?? { x: 0, y: 0, scale: 1 };
  return [
    frame.x + frame.scale * (region.x + region.width / 2),
    frame.y + frame.scale * (region.y + region.height / 2),
  ];
}

/** A share of a length from its first to its third quarter. */
function within(chance: Chance): number {
  return chance.whole(250, 750) / 1000;
}

/** Normally distributed, px. */
function scatter(chance: Chance): number {
  const [a, b] = [chance.whole(1, 1_000_000) / 1_000_000, chance.whole(1, 1_000_000) / 1_000_000];
  return SCATTER * Math.sqrt(-2 * Math.log(a)) * Math.cos(2 * Math.PI * b);
}
