import type { Box } from '../../geometry/box';
import { boxRound } from '../../geometry/box';
import type { Mm } from '../../units';
import type { Unit } from '../../wall/model';
import type { PanelSurvey, Placed } from '../../wall/survey';
import { crackWhere, type Draft, shift, weakenWhere } from '../draft';
import { between, type Mechanism, type Site, shareAfter } from '../mechanism';

/** Water freezes in the faces of the wettest courses and lifts them off in flakes; the mortar crumbles from its face. */
export const FROST: Mechanism = {
  name: 'frost',
  what: 'wet courses freeze: faces come off in flakes, and mortar crumbles from the face',
  showsAfter: 5,
  lacks: () => null,
  act: (site) => {
    const { main, draft } = site;
    const wet = topCourses(main, site.chance.whole(4, 6));
    freeze(site, wet, 70);
    draft.zones.push({ kind: 'wet', panel: main.panel.id, box: boxRound(wet.map(boxOf)) });
  },
};

/** A cap without a drip or a damp course lets water into the courses right under it: frost there, and lime washed out below its joints. */
export const WATER_AT_CAP: Mechanism = {
  name: 'water-at-cap',
  what: 'water runs in at the cap: the top courses freeze, and lime is washed out below their joints',
  showsAfter: 5,
  lacks: () => null,
  act: (site) => {
    const { main, draft, chance } = site;
    const wet = topCourses(main, 3);
    freeze(site, wet, 45);
    draft.zones.push({ kind: 'wet', panel: main.panel.id, box: boxRound(wet.map(boxOf)) });
    for (const [index, { unit }] of topCourses(main, 1).entries()) {
      if (index > 0 && !chance.happens(60)) continue;
      const long = between(chance, 120, 320);
      draft.zones.push({
        kind: 'lime-streak',
        panel: main.panel.id,
        box: { x: unit.x + unit.length - 8, y: unit.y - long, width: 26, height: long },
      });
    }
  },
};

/** Flakes the faces of some units and softens every joint of a wet zone; in the top course a few units come loose in their beds. */
function freeze({ draft, chance, years, main }: Site, wet: readonly Placed[], percent: number): void {
  const share = shareAfter(years, 8);
  const ids = new Set<string>(wet.map(({ unit }) => unit.id));
  const flaked = wet.filter((_, index) => index === 0 || chance.happens(percent));
  for (const { unit } of flaked)
    spall(draft, unit, between(chance, 6, 22) * share, chance.whole(30, 80) / 100);
  for (const placed of wet) softJoint(draft, placed, between(chance, 6, 14) * share);
  weakenWhere(draft, Math.max(0.1, 1 - share), ({ unit, kind }) => ids.has(unit) && kind !== 'tie');
  const loose = topCourses(main, 1).filter(() => chance.happens(Math.round(30 * share)));
  for (const { unit } of loose) loosen(draft, unit, between(chance, 0.2, 0.6));
}

/** Frost has lifted a unit off its bed: every joint round it is cracked. */
function loosen(draft: Draft, { id }: Unit, up: Mm): void {
  crackWhere(draft, ({ unit, other, kind }) => (unit === id || other === id) && kind !== 'tie');
  shift(draft, id, { v: up });
}

/** Salts dry out under the faces of a band over the ground, season after season, and push them off; white bloom round about. */
export const SALTS: Mechanism = {
  name: 'salts',
  what: 'salts dry out under the face and push it off: flakes among white bloom, in every season',
  showsAfter: 4,
  lacks: () => null,
  act: ({ main, draft, chance, years }) => {
    const low = between(chance, 80, 200);
    const high = low + between(chance, 350, 650);
    const share = shareAfter(years, 6);
    const band = main.placed.filter(({ unit }) => unit.y >= low && unit.y + unit.height <= high);
    const flaked = band.filter((_, index) => index === 0 || chance.happens(45));
    for (const { unit } of flaked)
      spall(draft, unit, between(chance, 4, 14) * share, chance.whole(25, 70) / 100);
    const panel = main.panel.id;
    const { length } = main.panel;
    draft.zones.push({ kind: 'bloom', panel, box: { x: 0, y: low, width: length, height: high - low } });
    draft.zones.push({ kind: 'wet', panel, box: { x: 0, y: 0, width: length, height: low } });
  },
};

/** Mortar with too little binder brushes out of its joints, and units lose half of their bond. */
export const WEAK_MORTAR: Mechanism = {
  name: 'weak-mortar',
  what: 'mortar with too little binder brushes out of the joints of the courses that were laid with it',
  showsAfter: 3,
  lacks: ({ wall }) => (wall.masonry === 'anchored' ? null : 'a wall that is laid in beds of mortar'),
  act: ({ main, draft, chance, years }) => {
    const count = main.panel.courses;
    const from = chance.whole(2, Math.max(2, count - 8));
    const to = Math.min(count, from + chance.whole(6, 9));
    const soft = main.placed.filter(({ unit }) => unit.course >= from && unit.course <= to);
    const ids = new Set<string>(soft.map(({ unit }) => unit.id));
    for (const placed of soft) softJoint(draft, placed, between(chance, 8, 16) * shareAfter(years, 3));
    // Half of the bond: ours, after the order in which published tests put lean mortar.
    weakenWhere(draft, 0.5, ({ unit, kind }) => ids.has(unit) && kind !== 'tie');
  },
};

/** Hard mortar over soft units sends water and load to the faces beside it: they spall along the patched joints, which stand proud. */
export const HARD_REPOINTING: Mechanism = {
  name: 'hard-repointing',
  what: 'joints were pointed again with mortar harder than the units, whose edges spall beside them',
  showsAfter: 4,
  lacks: ({ wall }) => (wall.masonry === 'anchored' ? null : 'a wall that is laid in beds of mortar'),
  act: ({ main, draft, chance, years }) => {
    const { unit: middle } = chance.pick(main.placed);
    const [width, height] = [between(chance, 900, 1500), between(chance, 500, 800)];
    const x = middle.x + (middle.length - width) / 2;
    const box = { x, y: middle.y + (middle.height - height) / 2, width, height };
    const inside = main.placed.filter(({ unit }) => isIn(unit, box));
    for (const { unit } of inside.filter((_, index) => index === 0 || chance.happens(50))) {
      const high = unit.height * between(chance, 0.2, 0.4);
      const at = { x: unit.x + 4, y: unit.y, width: unit.length - 8, height: high };
      draft.damage.push({
        unit: unit.id,
        kind: 'spall',
        depth: between(chance, 4, 12) * shareAfter(years, 4),
        box: at,
      });
    }
    draft.zones.push({ kind: 'patched', panel: main.panel.id, box });
  },
};

function isIn({ x, y, length, height }: Unit, box: Box): boolean {
  return x >= box.x && x + length <= box.x + box.width && y >= box.y && y + height <= box.y + box.height;
}

function boxOf({ unit }: Placed): Box {
  return { x: unit.x, y: unit.y, width: unit.length, height: unit.height };
}

function topCourses({ courses }: PanelSurvey, count: number): readonly Placed[] {
  return courses.slice(-count).flat();
}

/** The face gone over a share of its length and height, to a depth. */
function spall(draft: Draft, unit: Unit, depth: Mm, share: number): void {
  const side = Math.sqrt(share);
  const width = unit.length * side;
  const height = unit.height * side;
  const box = {
    x: unit.x + (unit.length - width) / 2,
    y: unit.y + (unit.height - height) / 2,
    width,
    height,
  };
  draft.damage.push({ unit: unit.id, kind: 'spall', depth, box });
}

function softJoint(draft: Draft, { unit, bed }: Placed, depth: Mm): void {
  if (bed === null) return;
  const box = { x: unit.x, y: unit.y - bed.left, width: unit.length, height: bed.left };
  draft.damage.push({ unit: unit.id, kind: 'soft-joint', depth, box });
}
