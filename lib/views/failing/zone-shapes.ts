import { scatterOf, shareOf } from '../../drawing/drawn-chance';
import type { Area } from '../../drawing/shape';
import type { FailingWall, Zone } from '../../failing/state/model';
import { type Box, boxRound, grown } from '../../geometry/box';
import { type Point, type Ring, rectRing } from '../../geometry/polygon';
import type { Mm } from '../../units';
import type { Unit } from '../../wall/model';

const WATER = '#1c2a2e';
const RUST = '#7a3413';
const LIME = '#f5f1e6';
const CEMENT = '#a9adb0';
const RUBBER = '#1f1d1c';

/** Water, rust, lime, scuffs and other people’s mortar on a panel. Bloom is drawn on its units. */
export function zoneShapes({ survey, state }: FailingWall, panel: string): readonly Area[] {
  const units = survey.wall.units.filter((unit) => unit.panel === panel && !state.missing.has(unit.id));
  const wall = boxRound(units.map(({ x, y, length, height }) => ({ x, y, width: length, height })));
  return state.zones
    .filter((zone) => zone.panel === panel)
    .flatMap((zone, index) => shapesOf(zone, index, units, wall));
}

function shapesOf({ kind, box }: Zone, index: number, units: readonly Unit[], wall: Box): readonly Area[] {
  const name = `${kind}${index}`;
  switch (kind) {
    case 'wet':
      // Darker inward: the edge of what is wet is never sharp.
      return [0, 18, 40].map((inward) =>
        plain(within(wavy(grown(box, 14 - inward), name, 12), wall), WATER, 0.085),
      );
    case 'rust':
      return [plain(wavy(box, name, 3), RUST, 0.55)];
    case 'lime-streak':
      return [plain(streak(box, name), LIME, 0.62), plain(streak(grown(box, -6), name), LIME, 0.5)];
    case 'scuff':
      return [0, 1, 2, 3].map((line) => {
        const y = box.y + box.height * (0.3 + 0.13 * line);
        const x = box.x + box.width * 0.2 * shareOf(name, 400 + line);
        const long = box.width * (0.5 + 0.3 * shareOf(name, 410 + line));
        return plain(wavy({ x, y, width: long, height: 5 }, `${name}${line}`, 1.5), RUBBER, 0.4);
      });
    case 'patched':
      return [
        {
          kind: 'area',
          rings: units
            .filter(
              ({ x, y, length, height }) =>
                x >= box.x &&
                y >= box.y &&
                x + length <= box.x + box.width &&
                y + height <= box.y + box.height,
            )
            .map(({ x, y, length, height }) => rectRing(x - 5, y - 5, length + 10, height + 10)),
          open: false,
          pen: { paint: CEMENT, width: 9.5, opacity: 0.95 },
        },
      ];
    case 'bloom':
      return [];
    default: {
      const unknown: never = kind;
      throw new RangeError(`zone ${String(unknown)} is not drawn`);
    }
  }
}

function plain(ring: Ring, fill: string, opacity: number): Area {
  return { kind: 'area', rings: [ring], fill, opacity };
}

/** What of a ring lies on the wall. */
function within(ring: Ring, { x, y, width, height }: Box): Ring {
  return ring.map(
    ([px, py]): Point => [Math.min(x + width, Math.max(x, px)), Math.min(y + height, Math.max(y, py))],
  );
}

/** A box with wavy sides. */
function wavy({ x, y, width, height }: Box, name: string, reach: Mm): Ring {
  const steps = 24;
  const at = (index: number) => index / steps;
  const foot = Array.from(
    { length: steps + 1 },
    (_, index): Point => [x + width * at(index), y + scatterOf(name, 500 + index, reach)],
  );
  const head = Array.from(
    { length: steps + 1 },
    (_, index): Point => [x + width * (1 - at(index)), y + height + scatterOf(name, 540 + index, reach)],
  );
  return [...foot, ...head];
}

/** Lime run down from a joint, broad at its head, thin at its tip. */
function streak({ x, y, width, height }: Box, name: string): Ring {
  const middle = x + width / 2 + scatterOf(name, 600, width * 0.2);
  return [
    [x, y + height],
    [x + width, y + height],
    [x + width * 0.8, y + height * 0.6],
    [middle + width * 0.18, y + height * 0.2],
    [middle, y],
    [middle - width * 0.15, y + height * 0.25],
    [x + width * 0.15, y + height * 0.65],
  ];
}
