import { cut } from '../../drawing/cut';
import { heightDimension } from '../../drawing/dimension';
import { ring } from '../../drawing/rings';
import { type Drawing, lines } from '../../drawing/shape';
import { rectRing } from '../../geometry/polygon';
import type { LengthSystem, Mm } from '../../units';
import type { Opening, Support, Wall } from '../../wall/model';
import type { PanelSurvey, Placed } from '../../wall/survey';
import type { SurveyedWall } from '../../wall/surveyed';
import { length } from '../section/sheet';
import { type View, ViewError } from '../view';
import { planBacking, planBox, planDepth, planHead, planLine, planUnit } from './parts';
import { breaksIn, type PlanPiece, planInStrips, type Strip, stripsOf } from './strips';

const BEFORE: Mm = 60;
/** How far past the jambs one sees what stands there, mm. */
const PAST: Mm = 260;

/**
 * From below, as in a mirror held flat under the edge: x runs on to the right, out of the wall is down. What a support covers is
 * hidden by it; what hangs past its front edge is seen, and where there is no support the units themselves.
 */
export function belowView(
  { wall, panels }: SurveyedWall,
  { at }: Extract<View, { kind: 'below' }>,
  system: LengthSystem,
): Drawing {
  for (const survey of panels) {
    if (survey.panel.id === at) return bottomEdge(wall, survey, system);
    const opening = survey.openings.find(
      ({ id }) => id === at || survey.supports.some((each) => each.id === at && each.opening === id),
    );
    if (opening !== undefined) return underHead(wall, survey, opening, system);
  }
  throw new ViewError(`below: nothing to look up at at "${at}"`);
}

function bottomEdge(wall: Wall, survey: PanelSurvey, system: LengthSystem): Drawing {
  const { panel } = survey;
  const ledges = survey.supports.filter(({ kind }) => kind === 'ledge');
  return sheet(wall, survey, {
    strips: stripsOf(0, panel.length, breaksIn(survey.courses[0] ?? [])),
    units: survey.courses[0] ?? [],
    supports: ledges,
    others: [],
    title: `Bottom edge of wall ${panel.id} from below`,
    system,
  });
}

/** Up at the head of an opening: the jambs are cut through, the lintel's ends in them dashed. */
function underHead(wall: Wall, survey: PanelSurvey, opening: Opening, system: LengthSystem): Drawing {
  const { x, y, width, height, kind } = opening;
  const [from, to] = [x - PAST, x + width + PAST];
  const head = y + height;
  const over = survey.placed.filter(
    ({ unit }) =>
      unit.y > head - 5 && unit.y < head + wall.gauge / 2 && unit.x < x + width && unit.x + unit.length > x,
  );
  const lintels = survey.supports.filter(({ opening: spans }) => spans === opening.id);
  const jambs = [
    { from: Math.max(0, from), to: x },
    { from: x + width, to: Math.min(survey.panel.length, to) },
  ];
  const cutJambs: readonly PlanPiece[] = jambs.map((jamb) => ({
    middle: (jamb.from + jamb.to) / 2,
    shapes: [
      cut(
        rectRing(jamb.from, 0, jamb.to - jamb.from, wall.family.depth),
        wall.finish === 'squared stone' ? 'url:cut-stone' : 'url:cut-brick',
      ),
    ],
  }));
  const hidden = lintels.map(
    ({ fromX, toX, back, front }): PlanPiece => ({
      middle: (from + to) / 2,
      shapes: [
        lines([ring(fromX, 0 - back, fromX, 0 - front, toX, 0 - front, toX, 0 - back, fromX, 0 - back)], {
          paint: '#22272b',
          width: 1.4,
          thin: true,
          dash: [6, 4],
        }),
      ],
    }),
  );
  return sheet(wall, survey, {
    strips: [{ from, to }],
    units: over,
    supports: lintels,
    others: [
      ...cutJambs,
      ...hidden,
      {
        middle: x,
        shapes: planHead(wall, opening),
        spots: [{ part: opening.id, x, y: wall.family.depth, width, height: wall.cavity + 60 }],
      },
    ],
    title: `Head of the ${kind} from below`,
    system,
  });
}

function sheet(
  wall: Wall,
  survey: PanelSurvey,
  plan: {
    readonly strips: readonly Strip[];
    readonly units: readonly Placed[];
    readonly supports: readonly Support[];
    readonly others: readonly PlanPiece[];
    readonly title: string;
    readonly system: LengthSystem;
  },
): Drawing {
  const { strips, units, supports, others, title, system } = plan;
  const pieces: readonly PlanPiece[] = [
    ...units.map(
      ({ unit }): PlanPiece => ({
        middle: unit.x + unit.length / 2,
        shapes: planUnit(unit, 0),
        spots: [{ part: unit.id, ...planBox(unit) }],
      }),
    ),
    ...strips.flatMap((strip) => supports.flatMap((support) => supportPiece(support, strip))),
    ...others,
    ...strips.map(({ from, to }): PlanPiece => ({ middle: (from + to) / 2, shapes: [planLine(from, to)] })),
    ...strips.flatMap((strip) => overhangIn(strip, units, supports, system)),
  ];
  const seen = planInStrips({
    strips,
    behind: planDepth(wall),
    before: BEFORE,
    backing: ({ from, to }) =>
      planBacking(wall, survey, Math.max(0, from), Math.min(survey.panel.length, to)),
    pieces,
    title,
    from: (x) => length(Math.round(x), system),
  });
  return { ...seen, frames: [] };
}

/** What of a support lies in a strip, as it hides what stands on it. */
function supportPiece(
  { id, fromX, toX, back, front, material }: Support,
  strip: Strip,
): readonly PlanPiece[] {
  const x = Math.max(fromX, strip.from);
  const width = Math.min(toX, strip.to) - x;
  if (width <= 0) return [];
  const box = { x, y: 0 - front, width, height: front - back };
  const fill = material === 'wood' ? 'url:wood' : material === 'steel' ? '#6d7880' : 'url:concrete';
  const shape = cut(rectRing(box.x, box.y, box.width, box.height), fill);
  return [{ middle: x + width / 2, shapes: [shape], spots: [{ part: id, ...box }] }];
}

/** How far the unit nearest the middle of a strip stands out past its support. */
function overhangIn(
  { from, to }: Strip,
  units: readonly Placed[],
  supports: readonly Support[],
  system: LengthSystem,
): readonly PlanPiece[] {
  const middle = (from + to) / 2;
  const away = ({ unit }: Placed): Mm => Math.abs(unit.x + unit.length / 2 - middle);
  const [nearest] = units
    .filter(
      ({ unit, support }) => support !== null && supports.includes(support) && unit.x + unit.length / 2 < to,
    )
    .sort((a, b) => away(a) - away(b));
  if (nearest?.support == null) return [];
  const { unit, support } = nearest;
  const x = unit.x + unit.length / 2;
  const over = heightDimension(0 - unit.set, 0 - support.front, x, 9, 0, system);
  return [
    {
      middle: x,
      shapes: over.shapes,
      labels: [
        {
          at: [x, Math.max(0 - support.front, 0) + 34],
          text: `overhang here ${over.label.text}`,
          anchor: 'middle',
          plate: true,
          strong: true,
        },
      ],
    },
  ];
}
