import { bedId } from '../wall/model';
import type { Part } from '../wall/parts';
import type { PanelSurvey, Placed } from '../wall/survey';

/** The unit that is the part, lies on the bed, or stands left of the head joint. Null for other parts. */
export function unitAt(part: Part, { placed }: PanelSurvey): Placed | null {
  switch (part.kind) {
    case 'unit':
      return placed.find(({ unit }) => unit.id === part.id) ?? null;
    case 'bed':
      return placed.find(({ unit }) => bedId(unit.id) === part.id) ?? null;
    case 'head':
      return placed.find(({ unit }) => part.id.startsWith(`${unit.id}/`)) ?? null;
    default:
      return null;
  }
}
