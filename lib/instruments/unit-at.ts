import { unitOf } from '../wall/part-id';
import type { Part } from '../wall/parts';
import type { PanelSurvey, Placed } from '../wall/survey';

/** The unit that is the part, lies on the bed, or stands left of the head joint. Null for other parts. */
export function unitAt(part: Part, { placed }: PanelSurvey): Placed | null {
  switch (part.kind) {
    case 'unit':
    case 'bed':
    case 'head':
      return placed.find(({ unit }) => unitOf(part.id) === unit.id) ?? null;
    default:
      return null;
  }
}
