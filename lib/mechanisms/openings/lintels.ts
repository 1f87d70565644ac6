import type { Mm } from '../../units';
import { isTall, type Opening, type Support } from '../../wall/model';
import type { UnitId } from '../../wall/part-id';
import type { PanelSurvey, Placed, Survey } from '../../wall/survey';
import { crackWhere, type Draft, shift } from '../draft';
import { between, type Mechanism, type Site, shareAfter } from '../mechanism';
import { crackBetween } from '../parting/part';
import { headsOf, rowOver, rowsOf } from '../parting/rows';

interface Spanned {
  readonly lintel: Support;
  readonly opening: Opening;
}

function spannedIn({ supports, openings }: PanelSurvey): Spanned | null {
  for (const lintel of supports) {
    const opening = openings.find(({ id }) => id === lintel.opening);
    if (opening !== undefined) return { lintel, opening };
  }
  return null;
}

function needsLintel(_: Survey, main: PanelSurvey): string | null {
  const spanned = spannedIn(main);
  const over = spanned === null ? 0 : main.panel.courses - rowOver(rowsOf(main), spanned.lintel.y);
  return over >= 3 ? null : 'a wall with a lintel and three courses over it';
}

/** A lintel too weak bends in the middle, and the masonry under its 45° or so follows it down. */
export const LINTEL_SAGS: Mechanism = {
  name: 'lintel-sags',
  what: 'a lintel too weak for its load bends, and the triangle of masonry over it follows it down',
  showsAfter: 2,
  lacks: needsLintel,
  act: (site) => {
    const spanned = spannedIn(site.main);
    if (spanned === null) return;
    const { lintel, opening } = spanned;
    const sag = between(site.chance, 5, 12) * shareAfter(site.years, 2);
    const half = opening.width / 2;
    const middle = opening.x + half;
    site.draft.supports.set(lintel.id, { left: 0, middle: -sag, right: 0 });
    dropTriangle(site, spanned, (x) => {
      const off = Math.min(1, Math.abs(x - middle) / half);
      return { v: -sag * (1 - off * off), slope: (2 * sag * (x - middle)) / (half * half) };
    });
  },
};

/** A bearing too short crushes: that end of the lintel goes down, and the triangle turns with it. */
export const LINTEL_SHORT: Mechanism = {
  name: 'lintel-short',
  what: 'a bearing too short crushes what it stands on, and that end of the lintel goes down',
  showsAfter: 2,
  lacks: needsLintel,
  act: (site) => {
    const { main, draft, chance, years } = site;
    const spanned = spannedIn(main);
    if (spanned === null) return;
    const { lintel, opening } = spanned;
    const isLeft = opening.x - lintel.fromX <= lintel.toX - opening.x - opening.width;
    const drop = between(chance, 5, 11) * shareAfter(years, 2);
    draft.supports.set(lintel.id, {
      left: isLeft ? -drop : 0,
      middle: -drop / 2,
      right: isLeft ? 0 : -drop,
    });
    const slope = ((isLeft ? 1 : -1) * drop) / opening.width;
    dropTriangle(site, spanned, (x) => {
      const along = Math.min(1, Math.max(0, (x - opening.x) / opening.width));
      return { v: isLeft ? -drop * (1 - along) : -drop * along, slope };
    });
    const jamb = isLeft ? opening.x : opening.x + opening.width;
    for (const { unit } of main.placed) {
      const isUnder = unit.y + unit.height <= lintel.y && unit.y + unit.height > lintel.y - unit.height;
      const touches = isLeft
        ? Math.abs(unit.x + unit.length - jamb) < unit.length / 2
        : Math.abs(unit.x - jamb) < unit.length / 2;
      if (!isUnder || !touches) continue;
      const width = Math.min(unit.length, 70);
      const x = isLeft ? unit.x + unit.length - width : unit.x;
      const box = { x, y: unit.y + unit.height - 22, width, height: 22 };
      draft.damage.push({ unit: unit.id, kind: 'crushed', depth: 12, box });
    }
  },
};

/** The units over an opening that hang on its lintel: those inside steps up from its two top corners. */
function dropTriangle(
  { survey, main, draft }: Site,
  { lintel, opening }: Spanned,
  way: (x: Mm) => { readonly v: Mm; readonly slope: number },
): void {
  const sides = new Map<UnitId, number>(main.placed.map(({ unit }) => [unit.id, 0]));
  for (const { unit } of triangleOver(main, lintel, opening, survey.wall.joint)) {
    sides.set(unit.id, 1);
    const { v, slope } = way(unit.x + unit.length / 2);
    // Soldiers slip past each other and stay upright.
    shift(draft, unit.id, { v, turn: isTall(unit) ? 0 : slope * 1000 });
  }
  crackBetween(draft, sides);
}

function triangleOver(main: PanelSurvey, lintel: Support, opening: Opening, joint: Mm): readonly Placed[] {
  const rows = rowsOf(main);
  const first = rowOver(rows, lintel.y);
  const inside = new Set<Placed>();
  let left = opening.x - joint * 2;
  let right = opening.x + opening.width + joint * 2;
  for (const row of rows.slice(first)) {
    const heads = headsOf(row, joint * 8);
    const from = heads.find((x) => x > left);
    const to = heads.filter((x) => x < right).pop();
    if (from === undefined || to === undefined || from >= to) break;
    for (const each of row) {
      const { unit } = each;
      if (unit.x + unit.length / 2 > from && unit.x + unit.length / 2 < to) inside.add(each);
    }
    left = from + joint * 4;
    right = to - joint * 4;
  }
  return [...inside];
}

/** Solid rust takes up to 2.35 times the room of the steel that it was, loose rust up to 6 times (repub.eur.nl; a surveyors’ article). */
export const RUST_VOLUME: readonly [least: number, most: number] = [2.35, 6];

/** How much thicker a plate is that has lost `lost` mm to rust on each of its two faces: 2(n − 1)x. */
export function rustGrowth(lost: Mm, volume: number): Mm {
  return 2 * (volume - 1) * lost;
}

/** A steel lintel rusts and lifts what stands on it: the bed over its bearings opens, widest at the end of the lintel, and runs out along the course. */
export const RUSTING_LINTEL: Mechanism = {
  name: 'rusting-lintel',
  what: 'rust swells a steel lintel, which lifts the masonry over its ends',
  showsAfter: 8,
  lacks: (survey, main) =>
    spannedIn(main)?.lintel.material === 'steel'
      ? needsLintel(survey, main)
      : 'a wall with a steel lintel and three courses over it',
  act: ({ main, draft, chance, years }) => {
    const spanned = spannedIn(main);
    if (spanned === null) return;
    const { lintel, opening } = spanned;
    const lift = rustGrowth(
      between(chance, 0.4, 0.7) * (shareAfter(years, 20) / shareAfter(20, 20)),
      between(chance, 3, RUST_VOLUME[1]),
    );
    const reach = between(chance, 450, 700);
    const rows = rowsOf(main);
    const first = rowOver(rows, lintel.y);
    const lifted = new Set<string>();
    for (const { unit } of main.placed) {
      if (unit.course - 1 < first) continue;
      const middle = unit.x + unit.length / 2;
      const beyond = Math.max(lintel.fromX - middle, middle - lintel.toX, 0);
      if (beyond >= reach) continue;
      lifted.add(unit.id);
      const slope = beyond === 0 ? 0 : (middle < lintel.fromX ? lift : -lift) / reach;
      shift(draft, unit.id, { v: lift * (1 - beyond / reach), turn: isTall(unit) ? 0 : slope * 1000 });
    }
    draft.supports.set(lintel.id, { left: lift, middle: lift, right: lift });
    crackUnder(draft, lifted);
    draft.zones.push({
      kind: 'rust',
      panel: main.panel.id,
      box: { x: opening.x, y: lintel.y - 14, width: opening.width, height: 20 },
    });
  },
};

/** The beds between what was lifted and what was not. */
function crackUnder(draft: Draft, lifted: ReadonlySet<string>): void {
  crackWhere(draft, ({ kind, unit, other }) => kind === 'bed' && lifted.has(unit) && !lifted.has(other));
}
