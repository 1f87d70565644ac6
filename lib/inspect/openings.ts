import type { Opening, Support } from '../wall/model';
import type { PanelSurvey } from '../wall/survey';
import type { Region } from './finding';

/** Lintels of a panel, each with the opening it spans. */
export function lintelsOf({
  supports,
  openings,
}: PanelSurvey): readonly { lintel: Support; opening: Opening }[] {
  return supports.flatMap((lintel) => {
    const opening = openings.find(({ id }) => id === lintel.opening);
    return lintel.kind === 'lintel' && opening !== undefined ? [{ lintel, opening }] : [];
  });
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
