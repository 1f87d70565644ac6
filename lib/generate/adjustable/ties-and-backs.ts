import { boundAt, smallOpening, spacingVerdict } from '../../limits/bound';
import { limitOf, limitsUnder } from '../../limits/limits';
import { snap } from '../../units';
import type { Tie, Wall } from '../../wall/model';
import { surveyOf } from '../../wall/survey';
import { awayFrom, inSpan, tieEdgesOf } from '../../wall/tie-field';
import { renumbered } from '../faults/ties/tie-changes';
import { type Departure, twice, unitNow } from './departure';

const TAPE = 1;
const PERCENT = 1;

/** Ties of an anchored wall, and the mortar behind a stuck-on one. */
export const TIE_AND_BACK_DEPARTURES: readonly Departure[] = [
  {
    id: 'tie-rows',
    family: 'Ties',
    name: 'Distance between rows of ties',
    checks: ['ties-too-far-apart'],
    unit: 'mm',
    limit: 'tie-spacing',
    fit: (wall, limit, _places, rules) => {
      const field = fieldTies(wall, rules);
      const rows = [...new Set(field.map(({ course }) => course))].sort((a, b) => a - b);
      const [first, second] = rows;
      const last = rows[rows.length - 1];
      const studs = wall.panels[0]?.studs ?? [];
      if (first === undefined || second === undefined || !last) return null;
      const widest = studs.slice(1).reduce((most, x, at) => Math.max(most, x - (studs[at] ?? x)), 0);
      const { limit: bound } = spacingVerdict(limit.bound, 0, widest);
      const sound = (second - first) * wall.gauge;
      // Ties lie in beds: rows come whole courses apart.
      return {
        at: 'A',
        sound,
        // Closer rows in the field leave the rows at its edges as they are. Two rows at least: one by itself has no distance.
        least: sound,
        most: Math.min(twice(bound, sound, wall.gauge), (last - first) * wall.gauge),
        step: wall.gauge,
        change: (now, value) => withRows(now, field, first, Math.round(value / wall.gauge)),
      };
    },
  },
  {
    id: 'embedment',
    family: 'Ties',
    name: 'How deep one tie lies in its bed',
    checks: ['shallow-tie'],
    unit: 'mm',
    limit: 'tie-embedment',
    fit: (wall, limit) => {
      const tie = wall.ties[0];
      if (tie === undefined) return null;
      const { depth } = wall.family;
      return {
        at: tie.id,
        sound: tie.embedment,
        most: Math.min(depth, twice(boundAt(limit, { depth }), tie.embedment, TAPE)),
        step: TAPE,
        change: (now, value) => ({
          ...now,
          ties: now.ties.map((each) => (each.id === tie.id ? { ...each, embedment: value } : each)),
        }),
      };
    },
  },
  {
    id: 'contact',
    family: 'Backs',
    name: 'Mortar on the back of one unit',
    checks: ['missing-back-mortar'],
    unit: '%',
    limit: 'back-contact',
    fit: (wall, _limit, { set }) => {
      if (wall.masonry !== 'adhered') return null;
      return {
        at: set.id,
        sound: 100,
        most: 100,
        step: PERCENT,
        // Bare at both ends, half at each.
        change: (now, value) => {
          const { length, height } = unitNow(now, set);
          const width = snap((length * value) / 100);
          const back = value === 0 ? [] : [{ x: snap((length - width) / 2), y: 0, width, height }];
          return {
            ...now,
            units: now.units.map((unit) => (unit.id === set.id ? { ...unit, back } : unit)),
          };
        },
        refuse: (value) => (value === 0 ? 'With no mortar on its back, the unit falls off.' : null),
      };
    },
  },
];

/** The ties of the main panel that serve no edge. */
function fieldTies(wall: Wall, rules: Parameters<typeof limitOf>[0]): readonly Tie[] {
  const survey = surveyOf(wall).panels[0];
  const reach = limitOf(rules, 'tie-edge-distance');
  if (survey === undefined || reach === undefined || survey.panel.gable !== null) return [];
  const edges = tieEdgesOf(survey, smallOpening(limitsUnder(rules)));
  const away = boundAt(reach, {});
  return survey.ties.filter(
    (tie) =>
      !edges.some(
        (edge) => awayFrom(edge, tie.x) >= 0 && awayFrom(edge, tie.x) <= away && inSpan(edge, tie.y),
      ),
  );
}

/** The field's ties laid again in rows so many courses apart, from the first row up, on the same studs. */
function withRows(wall: Wall, field: readonly Tie[], first: number, courses: number): Wall {
  const gone = new Set(field.map(({ id }) => id));
  const top = field.reduce((most, { course }) => Math.max(most, course), 0);
  const rows: Tie[] = [];
  for (const tie of field) {
    if (tie.course !== first) continue;
    for (let course = first; course <= top; course += Math.max(1, courses)) {
      const y = tie.y + (course - first) * wall.gauge;
      const blocked = wall.openings.some(
        ({ x, y: sill, width, height }) => tie.x > x && tie.x < x + width && y > sill && y < sill + height,
      );
      if (!blocked) rows.push({ ...tie, course, y });
    }
  }
  const kept = wall.ties.filter(({ id }) => !gone.has(id));
  const all = [...kept, ...rows].sort((a, b) => a.course - b.course || a.x - b.x);
  return { ...wall, ties: renumbered(all) };
}
