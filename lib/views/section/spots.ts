import { type Frame, onSheet, type Spot } from '../../drawing/shape';
import type { Mm } from '../../units';
import type { Opening, Support } from '../../wall/model';
import type { Part } from '../../wall/parts';
import type { PanelSurvey } from '../../wall/survey';
import type { SurveyedWall } from '../../wall/surveyed';
import { baseCourses } from './support-strip';

/** How deep a cut ledge is drawn, mm. */
export const LEDGE_DEEP: Mm = 250;

/** In a section one points at the ledges and the first courses on the strip, and at the cut ledge itself. */
export function baseSpots(
  parts: ReadonlyMap<string, Part>,
  survey: PanelSurvey,
  frame: Frame,
  ledge: Support,
): readonly Spot[] {
  const spots: Spot[] = [];
  const courses = baseCourses(survey);
  for (const part of parts.values()) {
    const { id, kind, panel, course } = part;
    if (panel !== survey.panel.id) continue;
    const low =
      course !== null && course <= courses && (kind === 'unit' || kind === 'bed' || kind === 'head');
    const isLedge =
      kind === 'support' && survey.supports.some((each) => each.id === id && each.kind === 'ledge');
    if (id === ledge.id) {
      spots.push({
        part: id,
        x: ledge.back,
        y: ledge.y - LEDGE_DEEP,
        width: ledge.front - ledge.back,
        height: LEDGE_DEEP,
      });
    } else if (low || isLedge) {
      spots.push({ part: id, ...onSheet(frame, part) });
    }
  }
  return spots;
}

/** One points at the lintel, in the cut or along its strip, at the opening, and at the units over it. */
export function headSpots(
  { wall, parts }: SurveyedWall,
  survey: PanelSurvey,
  opening: Opening,
  lintel: Support | null,
  frame: Frame,
): readonly Spot[] {
  const head = opening.y + opening.height;
  const spots: Spot[] = [];
  for (const { id, kind, panel, x, y, width, height } of parts.values()) {
    if (panel !== survey.panel.id) continue;
    const over =
      kind === 'unit' &&
      y > head - 5 &&
      y < head + 2 * wall.gauge &&
      x > opening.x - 260 &&
      x + width < opening.x + opening.width + 260;
    if (!over && id !== lintel?.id && id !== opening.id) continue;
    const low = id === opening.id ? Math.max(y, head - 3 * wall.gauge) : y;
    const high = id === opening.id ? head : y + height;
    spots.push({ part: id, ...onSheet(frame, { x, y: low, width, height: high - low }) });
  }
  return spots;
}
