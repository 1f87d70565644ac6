import type { Mm } from '../../../units';
import type { Opening, Support } from '../../../wall/model';
import type { PanelSurvey } from '../../../wall/survey';
import type { Region } from '../../finding';

/** Lintels of a panel, each with the openings it carries masonry over: not of wood, at the head, and over some of the width. */
export function lintelsOf(
  { supports, openings }: PanelSurvey,
  gauge: Mm,
): readonly { lintel: Support; opening: Opening }[] {
  return supports.flatMap((lintel) =>
    lintel.kind !== 'lintel' || lintel.material === 'wood'
      ? []
      : openings.filter((opening) => isOver(lintel, opening, gauge)).map((opening) => ({ lintel, opening })),
  );
}

function isOver(lintel: Support, opening: Opening, gauge: Mm): boolean {
  const overlap = Math.min(lintel.toX, opening.x + opening.width) - Math.max(lintel.fromX, opening.x);
  return overlap > 0 && Math.abs(lintel.y - opening.y - opening.height) < gauge / 2;
}

/** A strip of half a unit's height at the lintel, end to end. */
export function lintelBox(lintel: Support, gauge: number): Region {
  return {
    panel: lintel.panel,
    x: lintel.fromX,
    y: lintel.y - gauge / 2,
    width: lintel.toX - lintel.fromX,
    height: gauge,
  };
}
