import { ring, round, rounded, turnedAbout } from '../../lib/drawing/rings';
import { type Label, labelAt, lines, type Pen, polygon, rect, solid } from '../../lib/drawing/shape';
import { type Ring, rectRing } from '../../lib/geometry/polygon';
import {
  BODY,
  blade,
  bricks,
  CHALK,
  type Drawn,
  pointer,
  rowOf,
  type Shown,
  SLATE,
  shownValue,
  steel,
  TICK,
  vial,
  within,
} from './picture-parts';

/** As dark by night: mortar is as light then as by day. */
const ON_MORTAR: Pen = { paint: '#59646b', width: 1 };

/** Held under the edge, it shows the underside. */
export function mirrorPicture({ reading }: Shown): Drawn {
  const none = reading?.value === 0;
  const seen: Ring = ring(122, 44, 198, 44, 192, 30, 128, 30);
  return {
    shapes: [
      ...bricks(rowOf({ x: 12, y: 82, width: 70, height: 34 }, 4)),
      ...(none ? [] : [steel(rectRing(12, 73, 292, 7))]),
      lines([ring(204, 26, 288, 4)], { ...CHALK, width: 4 }),
      polygon(round(160, 38, 52, 27), BODY),
      vial(round(160, 38, 47, 23)),
      none ? polygon(seen, 'url:unit0a') : steel(seen),
    ],
  };
}

/** A joint cut through: mortar as far as it is full, and the probe that finds where. */
export function probePicture(shown: Shown): Drawn {
  const { reading } = shown;
  const full = reading?.unit === '%' ? within(shownValue(shown), 0, 100) / 100 : 1;
  const back = reading?.unit === 'mm' ? within(shownValue(shown), 0, 20) * 3 : 0;
  const from = 200 - back - (1 - full) * 150;
  return {
    shapes: [
      ...bricks([70, -6].map((y) => ({ x: 50, y, width: 150, height: 54 }))),
      rect({ x: 50, y: 48, width: Math.max(0, from - 50), height: 22 }, 'url:mortar'),
      lines([ring(from + 3, 59, 288, 59)], { ...CHALK, width: 4 }),
      blade(rounded(262, 50, 50, 18, 7)),
      pointer(ring(200, 70, 195, 80, 205, 80)),
    ],
  };
}

/** It sounds where metal is: the strap behind is only guessed at. */
export function tieFinderPicture({ reading }: Shown): Drawn {
  const found = reading !== null && reading.words !== 'none found';
  const sounds = [
    ring(203, 76, 206, 68, 207, 60, 206, 52, 203, 44),
    ring(213, 84, 217.5, 72, 219, 60, 217.5, 48, 213, 36),
  ];
  return {
    shapes: [
      rect({ x: 8, y: 6, width: 304, height: 108 }, 'url:mortar'),
      ...bricks(rowOf({ x: 8, y: 66, width: 150, height: 48 }, 2)),
      ...bricks(rowOf({ x: -70, y: 6, width: 150, height: 48 }, 3)),
      ...(found ? [lines([ring(140, 60, 206, 60)], { ...ON_MORTAR, width: 4, dash: [4, 3] })] : []),
      polygon(rounded(153, 26, 40, 68, 8), BODY),
      polygon(round(173, 78, 7), found ? '--ochre' : '#ffffff', found ? 1 : 0.4),
      ...(found ? [lines(sounds, CHALK)] : []),
    ],
  };
}

/** The sound drawn, for an ear that cannot tell and an eye that can: solid is short and quick, hollow is long and slow. */
export function tapPicture({ reading }: Shown): Drawn {
  const hollow = reading?.words?.startsWith('hollow') ?? false;
  const wave = Array.from({ length: 37 }, (_, step) => {
    const fade = 1 - step / (hollow ? 40 : 14);
    const high = Math.max(0, fade) * (step % (hollow ? 6 : 2) < (hollow ? 3 : 1) ? 1 : -1) * 34;
    return [128 + step * 5, 60 + high] as const;
  });
  return {
    shapes: [
      ...bricks([{ x: 8, y: 30, width: 84, height: 60 }]),
      blade(turnedAbout([92, 60], -24, rounded(94, 70, 16, 44, 7))),
      lines([ring(122, 60, 314, 60)], SLATE),
      ...(reading === null ? [] : [lines([[[122, 60], ...wave]], CHALK)]),
    ],
  };
}

const GRAINS = ring(96, 32, 112, 24, 126, 30, 142, 20, 158, 28, 104, 16, 134, 12, 150, 10, 118, 10, 88, 22);

/** A nail along the joint, and the sand that comes off. */
export function scratchPicture({ reading }: Shown): Drawn {
  const words = reading?.words ?? '';
  const grains = words.startsWith('it crumbles') ? 10 : words.startsWith('soft') ? 4 : 0;
  return {
    shapes: [
      ...bricks([{ x: -4, y: 76, width: 328, height: 40 }]),
      rect({ x: -4, y: 48, width: 328, height: 28 }, 'url:mortar'),
      ...bricks([{ x: -4, y: -2, width: 328, height: 50 }]),
      lines([ring(60, 60, 170, 60)], { ...ON_MORTAR, width: grains > 0 ? 4 : 1 }),
      ...GRAINS.slice(0, grains).map(([x, y]) => blade(round(x, y, 2.6))),
      steel(ring(170, 60, 262, 100, 266, 92, 176, 56)),
      steel(turnedAbout([262, 95], 24, rectRing(258, 84, 7, 22))),
    ],
  };
}

/** Where so many degrees stand on the thermometer. */
const heightOf = (degrees: number) => 28 + ((degrees + 10) / 50) * 76;
const DEGREES = [-10, 0, 10, 20, 30, 40] as const;
/** The ticket's lower edge is torn off. */
const TORN = Array.from({ length: 14 }, (_, index) => [280 - index * 10, index % 2 === 0 ? 15 : 10] as const);

/** The thermometer in the shade, and the ticket of the mixing. */
export function thermometerPicture(shown: Shown): Drawn {
  const { reading } = shown;
  const isAir = reading?.unit === '°C';
  const air = isAir ? within(shownValue(shown), -10, 40) : 15;
  const edge = { paint: '--edge', width: 1 };
  const onTicket = (y: number, text: string, written: number): Label => ({
    ...labelAt(220, y, text),
    written,
    strong: true,
  });
  return {
    shapes: [
      solid(rounded(58, 16, 22, 98, 11), '--paper', edge),
      solid(round(69, 20, 14), '--clay', edge),
      polygon(rectRing(65, 20, 8, heightOf(air) - 20), '--clay', isAir ? 1 : 0.35),
      lines(
        DEGREES.map((degrees) => ring(82, heightOf(degrees), 90, heightOf(degrees))),
        SLATE,
      ),
      solid([[150, 110], [290, 110], [290, 10], ...TORN], '#f4f0e8', edge),
      lines(
        [80, 58, 36].map((y) => ring(162, y, 278, y)),
        { ...TICK, opacity: 0.6 },
      ),
    ],
    labels: [
      ...DEGREES.map((degrees) => labelAt(94, heightOf(degrees), `${degrees}`, 'start')),
      onTicket(93, 'Mixing ticket', 11),
      ...(reading === null || isAir
        ? []
        : [onTicket(47, reading.unit === 'minutes' ? `${reading.value} min` : (reading.words ?? ''), 15)]),
    ],
  };
}
