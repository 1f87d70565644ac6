import { heightOf } from '../wall/courses';
import { meanLength, topLeft, topRight } from '../wall/cut';
import type { Support, Unit } from '../wall/model';
import type { PanelSurvey, Placed, Survey } from '../wall/survey';
import { INSTRUMENT } from './instrument-list';
import { type Place, type ReadingContext, type ReadMm, readOff, type SignWords, sized } from './read-off';
import type { Reading } from './reading';
import { edgeTieReadings, jambTieReadings, panelTieReadings, tieReadings } from './tape-ties';
import { flashingReadings, weepReadings } from './tape-water';
import { unitAt } from './unit-at';

const { resolution, error } = INSTRUMENT.tape;
/** A back is counted in squares of 10 mm: to whole per cent, and to a square. */
const COUNTED = { resolution: 1, error: 1 } as const;
const SQUARES = { resolution: 10, error: 100 } as const;

const STANDS: SignWords = ['flush with it', 'past it', 'behind it'];

/** Lengths, bearings, overhangs, ties, weeps and flashings. */
export function readTape(
  { part, panel, survey, lifted }: Place,
  context: ReadingContext,
): readonly Reading[] {
  const mm: ReadMm = (what, value) => readOff(context, what, { value, unit: 'mm', resolution, error });
  const ties = survey.wall.masonry === 'anchored';
  switch (part.kind) {
    case 'unit': {
      const placed = unitAt(part, panel);
      return placed ? unitReadings(placed, panel, survey, lifted, context, mm) : [];
    }
    case 'course':
      return [mm('Length of the course', part.width)];
    case 'panel':
      return [
        mm('Length', panel.panel.length),
        mm('Height', heightOf(panel)),
        ...panelTieReadings(panel, mm),
      ];
    case 'support': {
      const support = panel.supports.find(({ id }) => id === part.id);
      return support
        ? [
            ...supportReadings(support, panel, survey, context, mm),
            ...flashingReadings(support, panel, survey, mm),
          ]
        : [];
    }
    case 'opening': {
      const opening = panel.openings.find(({ id }) => id === part.id);
      if (opening === undefined) return [];
      return [
        mm('Width', opening.width),
        mm('Height', opening.height),
        ...(ties ? jambTieReadings(part.id, panel, mm) : []),
      ];
    }
    case 'head':
      return weepReadings(part.id, panel, survey, mm);
    case 'edge':
      return ties ? edgeTieReadings(part.id, panel, mm) : [];
    case 'tie':
      return tieReadings(part.id, panel, survey.wall.family.depth, mm);
    default:
      return [];
  }
}

function unitReadings(
  placed: Placed,
  panel: PanelSurvey,
  survey: Survey,
  lifted: boolean,
  context: ReadingContext,
  mm: ReadMm,
): readonly Reading[] {
  const { unit, back } = placed;
  const behind =
    lifted && back !== null
      ? [
          readOff(context, 'Back covered with mortar', {
            value: (back.covered / back.area) * 100,
            unit: '%',
            ...COUNTED,
          }),
          readOff(context, 'Largest bare patch', { value: back.largestBare, unit: 'mm²', ...SQUARES }),
        ].map(atMostAll(back.area))
      : [];
  const standing =
    unit.course === 1 && survey.wall.masonry === 'anchored' ? [shareCarried(panel, context)] : [];
  return [...behind, ...lengthsOf(unit, mm), mm('Height', unit.height), ...standing];
}

function lengthsOf(unit: Unit, mm: ReadMm): readonly Reading[] {
  if (unit.cut === undefined) return [mm('Length', unit.length)];
  return [
    mm('Length halfway up', meanLength(unit)),
    mm('Length at the foot', unit.length),
    mm('Length at the top', topRight(unit) - topLeft(unit)),
  ];
}

/** A count cannot pass the whole back, nor fall under none of it. */
function atMostAll(area: number): (reading: Reading) => Reading {
  return (reading) => ({
    ...reading,
    value: Math.min(reading.unit === '%' ? 100 : area, Math.max(0, reading.value ?? 0)),
  });
}

function supportReadings(
  support: Support,
  panel: PanelSurvey,
  survey: Survey,
  context: ReadingContext,
  mm: ReadMm,
): readonly Reading[] {
  const { angle, fromX, toX, kind } = support;
  const faces = panel.placed.filter((each) => each.support === support).map(({ unit }) => unit.set);
  const past =
    faces.length > 0
      ? [sized(mm('Face of the units, from its edge', Math.max(...faces) - support.front), STANDS)]
      : [];
  if (kind === 'ledge') return [...past, shareCarried(panel, context), mm('Length', toX - fromX)];
  const over = panel.openings.filter(
    ({ x, y, width, height }) =>
      Math.abs(support.y - y - height) < survey.wall.gauge / 2 &&
      Math.min(toX, x + width) > Math.max(fromX, x),
  );
  const bearings = over.flatMap(({ x, width }, index) => {
    const which = over.length > 1 ? `, opening ${index + 1}` : '';
    return [
      mm(`Bearing on the left${which}`, x - fromX),
      mm(`Bearing on the right${which}`, toX - x - width),
      mm(`Clear span${which}`, width),
    ];
  });
  const legs = angle ? [mm('Upright leg', angle.vertical), mm('Flat leg', angle.horizontal)] : [];
  return [...bearings, ...past, ...legs];
}

/** Of the first course, how much stands on concrete, steel or masonry. Wood carries no veneer. */
function shareCarried({ courses, supports }: PanelSurvey, context: ReadingContext): Reading {
  let whole = 0;
  let carried = 0;
  for (const { unit } of courses[0] ?? []) {
    let under = 0;
    for (const { kind, material, fromX, toX } of supports) {
      if (kind !== 'ledge' || material === 'wood') continue;
      under += Math.max(0, Math.min(unit.x + unit.length, toX) - Math.max(unit.x, fromX));
    }
    whole += unit.length;
    carried += Math.min(under, unit.length);
  }
  const value = whole === 0 ? 0 : (carried / whole) * 100;
  const reading = readOff(context, 'First course standing on the ledge', { value, unit: '%', ...COUNTED });
  return { ...reading, value: Math.min(100, Math.max(0, reading.value ?? 0)) };
}
