import { crackWhere, shift } from '../draft';
import { between, type Mechanism, mustStand, shareAfter } from '../mechanism';

/** Growth of a wall upward by sulphates in its mortar: as often as high as 0.2 % (surveyors’ pages). */
export const SULPHATE_GROWTH = 0.002;

/** Mortar that stays wet for years grows with the sulphates in it: every bed, a little each. */
export const SULPHATES: Mechanism = {
  name: 'sulphates',
  what: 'sulphates make mortar grow that has been wet for years: every bed opens a little, and the wall grows taller',
  showsAfter: 8,
  lacks: mustStand,
  act: ({ survey, main, draft, chance, years }) => {
    const growth = SULPHATE_GROWTH * between(chance, 1, 1.2) * (shareAfter(years, 1) / shareAfter(8, 1));
    const base = new Set(main.courses[0]?.map(({ unit }) => unit.id));
    const ids = new Set<string>(main.placed.map(({ unit }) => unit.id));
    crackWhere(draft, ({ kind, unit }) => kind === 'bed' && ids.has(unit));
    for (const { unit, bed } of main.placed) {
      if (!base.has(unit.id)) shift(draft, unit.id, { v: growth * (unit.y + unit.height / 2) });
      if (bed === null || base.has(unit.id)) continue;
      const box = { x: unit.x, y: unit.y - bed.left, width: unit.length, height: bed.left };
      draft.damage.push({ unit: unit.id, kind: 'white-mortar', depth: 0, box });
    }
    for (const support of main.supports) {
      if (support.kind === 'lintel') {
        const up = growth * support.y;
        draft.supports.set(support.id, { left: up, middle: up, right: up });
      }
    }
    draft.zones.push({
      kind: 'wet',
      panel: main.panel.id,
      box: { x: 0, y: 0, width: main.panel.length, height: survey.wall.gauge * main.panel.courses },
    });
  },
};
