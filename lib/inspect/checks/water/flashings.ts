import type { Mm } from '../../../units';
import { supportsUnder, tellsDrainage } from '../../../wall/drainage';
import type { Flashing, FlashingShape } from '../../../wall/flashing';
import type { Panel, Support } from '../../../wall/model';
import type { Survey } from '../../../wall/survey';
import type { Place } from '../../check';
import type { Region } from '../../finding';

/** A flashing of a told shape, with what it lies on. */
export interface LaidFlashing {
  readonly flashing: Flashing;
  readonly shape: FlashingShape;
  readonly under: readonly Support[];
  readonly panel: Panel;
}

/** Flashings of a told shape that lie on a support. */
export function flashingsOf({ wall, panels }: Survey): readonly LaidFlashing[] {
  if (!tellsDrainage(wall)) return [];
  return panels.flatMap((survey) =>
    wall.flashings.flatMap((flashing): readonly LaidFlashing[] => {
      const { shape } = flashing;
      if (shape === undefined || flashing.panel !== survey.panel.id) return [];
      const under = supportsUnder(wall, survey, flashing);
      return under.length === 0 ? [] : [{ flashing, shape, under, panel: survey.panel }];
    }),
  );
}

/** The supports under a flashing, and a strip a gauge high along it. */
export function alongFlashing({ flashing, under }: LaidFlashing, gauge: Mm): Place {
  return { parts: under.map(({ id }) => id), region: strip(flashing, gauge) };
}

/** A strip a gauge high at the top of what it is of, half of it under. */
export function strip(
  { panel, y, fromX, toX }: Pick<Flashing, 'panel' | 'y' | 'fromX' | 'toX'>,
  gauge: Mm,
): Region {
  return { panel, x: fromX, y: y - gauge / 2, width: toX - fromX, height: gauge };
}
