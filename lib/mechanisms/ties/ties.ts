import type { Mm } from '../../units';
import { topCourseOf } from '../../wall/model';
import type { PanelSurvey, Survey } from '../../wall/survey';
import { crackWhere, shift, weakenWhere } from '../draft';
import { between, type Mechanism, shareAfter } from '../mechanism';
import { RUST_VOLUME, rustGrowth } from '../openings/lintels';

function needsTies(least: number): (survey: Survey, main: PanelSurvey) => string | null {
  return (_, main) =>
    new Set(main.ties.map(({ course }) => course)).size >= least
      ? null
      : `a wall with ties in ${least} courses`;
}

/** Ties rust in their beds and grow: the beds that hold them open, the high ones most, and no others. */
export const RUSTING_TIES: Mechanism = {
  name: 'rusting-ties',
  what: 'ties rust in their beds and swell: level cracks at the courses of the ties, and the wall grows taller',
  showsAfter: 12,
  lacks: needsTies(3),
  act: ({ main, draft, chance, years }) => {
    const lost = between(chance, 0.12, 0.25) * (shareAfter(years, 20) / shareAfter(20, 20));
    const volume = between(chance, 3, RUST_VOLUME[1]);
    const rows = [...new Set(main.ties.map(({ course }) => course))].sort((a, b) => a - b);
    const openings = rows.map(
      (_, index) => rustGrowth(lost, volume) * (0.6 + (0.4 * (index + 1)) / rows.length),
    );
    const riseOf = (course: number) =>
      rows.reduce((sum, row, index) => sum + (row < course ? (openings[index] ?? 0) : 0), 0);
    const ids = new Map(main.placed.map(({ unit }) => [unit.id as string, unit]));
    for (const { unit } of main.placed) shift(draft, unit.id, { v: riseOf(unit.course) });
    for (const support of main.supports) {
      if (support.kind !== 'lintel') continue;
      const over = main.placed.find((each) => each.support === support)?.unit.course ?? 1;
      const up = riseOf(over);
      draft.supports.set(support.id, { left: up, middle: up, right: up });
    }
    crackWhere(draft, ({ kind, unit, other }) => {
      const upper = ids.get(unit);
      const lower = ids.get(other);
      return (
        kind === 'bed' && upper !== undefined && lower !== undefined && rows.includes(topCourseOf(lower))
      );
    });
    weakenWhere(draft, Math.max(0.2, 1 - years / 60), ({ kind, unit }) => kind === 'tie' && ids.has(unit));
    for (const { x, y } of main.ties)
      draft.zones.push({
        kind: 'rust',
        panel: main.panel.id,
        box: { x: x - 25, y: y - 16, width: 50, height: 18 },
      });
  },
};

/** A field of wall with no tie that holds is sucked out: it folds over its middle bed. */
export const MISSING_TIES: Mechanism = {
  name: 'missing-ties',
  what: 'ties are missing or have pulled out, and suction draws the field between the others outward',
  showsAfter: 4,
  lacks: (survey, main) => {
    const lacking = needsTies(3)(survey, main);
    return lacking ?? (fieldsOf(main).length === 0 ? 'a stretch of wall with ties and no opening' : null);
  },
  act: ({ main, draft, chance, years }) => {
    const field = chance.pick(fieldsOf(main));
    const bulge = between(chance, 14, 28) * shareAfter(years, 4);
    const { x, hinge, wide, high } = field;
    const inField = (px: Mm, py: Mm) => Math.abs(px - x) < wide && Math.abs(py - hinge) < high;
    for (const [index, contact] of draft.contacts.entries()) {
      const tie = contact.kind === 'tie' ? main.ties.find(({ id }) => id === contact.other) : undefined;
      if (tie !== undefined && inField(tie.x, tie.y))
        draft.contacts[index] = { ...contact, state: 'gone', sound: 0 };
    }
    const out = new Map<string, boolean>();
    for (const { unit } of main.placed) {
      const px = unit.x + unit.length / 2;
      const py = unit.y + unit.height / 2;
      if (!inField(px, py)) continue;
      const across = 1 - ((px - x) / wide) * ((px - x) / wide);
      const peak = bulge * across;
      shift(draft, unit.id, {
        w: peak * (1 - Math.abs(py - hinge) / high),
        lean: ((py < hinge ? 1 : -1) * peak * 1000) / high,
      });
      out.set(unit.id, py < hinge);
    }
    crackWhere(
      draft,
      ({ kind, unit, other }) => kind === 'bed' && out.get(unit) === false && out.get(other) === true,
    );
  },
};

interface TieField {
  readonly x: Mm;
  /** Level of the bed that it folds over. */
  readonly hinge: Mm;
  /** Half of its width and of its height. */
  readonly wide: Mm;
  readonly high: Mm;
}

/** Stretches about a tie that no opening comes into, and that lie in the upright part of the panel with a course to spare. */
function fieldsOf({ ties, openings, panel, courses }: PanelSurvey): readonly TieField[] {
  const [wide, high] = [520, 480];
  const last = courses[courses.length - 1]?.[0]?.unit;
  const top = last === undefined ? 0 : last.y + last.height;
  return ties
    .map(({ x, y }) => ({ x, hinge: y + 1, wide, high }))
    .filter(({ x, hinge }) => {
      const lies = x > wide && x < panel.length - wide && hinge > high && hinge < top - high;
      const isClear = openings.every(
        (opening) =>
          opening.x > x + wide ||
          opening.x + opening.width < x - wide ||
          opening.y > hinge + high ||
          opening.y + opening.height < hinge - high,
      );
      return lies && isClear && panel.gable === null;
    });
}

/** Nothing holds the head of the wall: it leans out about its foot. */
export const LEANING_OUT: Mechanism = {
  name: 'leaning-out',
  what: 'nothing holds the head of the wall back, and it leans out about its foot',
  showsAfter: 4,
  lacks: needsTies(3),
  act: ({ main, draft, chance, years }) => {
    const height = main.placed.reduce((most, { unit }) => Math.max(most, unit.y + unit.height), 0);
    const { depth } = main.placed[0]?.unit ?? { depth: 0 };
    // Published advice begins at 30 mm for half a brick: some stand below it, some beyond (leaflet on garden walls, two councils).
    const lean = depth * between(chance, 0.15, 0.6) * shareAfter(years, 6);
    const ids = new Set<string>(main.placed.map(({ unit }) => unit.id));
    for (const { unit } of main.placed) {
      shift(draft, unit.id, {
        w: (lean * (unit.y + unit.height / 2)) / height,
        lean: (lean * 1000) / height,
      });
    }
    for (const [index, contact] of draft.contacts.entries()) {
      if (!ids.has(contact.unit)) continue;
      if (contact.kind === 'tie') draft.contacts[index] = { ...contact, state: 'gone', sound: 0 };
      if (contact.kind === 'bearing' && contact.other.includes('ledge'))
        draft.contacts[index] = { ...contact, state: 'cracked', sound: 0 };
    }
  },
};
