import { around, box, CHALK, filled, label, MORTAR, path, ringed, SHEET, smallWall, unit } from './strokes';

/** One course across the sheet of units that show `width` by `height`. */
function row(y: number, width: number, height: number, from = 0): string {
  const count = Math.ceil(SHEET.width / (width + 8)) + 1;
  const units = Array.from({ length: count }, (_, at) =>
    unit(from + at * (width + 8), y, width, height, at * 3),
  );
  return box(0, y - 8, SHEET.width, height + 8, MORTAR) + units.join('');
}

/** A brick that lies on its bed, seen from above and from the left. */
function lying(top: string): string {
  return [
    filled('M110 150 L410 150 L500 80 L200 80 Z', '#b66547'),
    filled('M110 150 L410 150 L410 230 L110 230 Z', '#a4503a'),
    filled('M410 150 L500 80 L500 160 L410 230 Z', '#81392f'),
    top,
  ].join('');
}

/** Words for a unit, how it lies and what is cut from it. */
export const UNITS: Readonly<Record<string, readonly string[]>> = {
  stretcher: [smallWall(), around(2, 2), label('long face', 420, 40, [260, 168])],
  header: [
    ...[0, 1, 2, 3, 4].map((course) => row(250 - course * 42, course % 2 === 0 ? 86 : 39, 34, -20)),
    ringed(162, 204, 48, 44),
    label('short face', 420, 40, [208, 208]),
  ],
  rowlock: [
    smallWall(3),
    row(96, 34, 54, 6),
    ringed(170, 90, 46, 66),
    label('on its edge, end to you', 260, 50, [200, 92]),
  ],
  soldier: [
    smallWall(3),
    row(64, 34, 86, 6),
    ringed(212, 58, 46, 98),
    label('on its end', 340, 34, [240, 60]),
  ],
  bat: [
    unit(60, 110, 210, 84, 0),
    unit(330, 110, 210, 84, 1),
    path('M300 80 L300 230', CHALK, 4, 'fill="none" stroke-dasharray="10 8"'),
    label('half', 140, 250, [160, 190]),
    label('cut', 330, 60, [302, 90]),
  ],
  frog: [
    lying(filled('M200 132 L376 132 L424 98 L248 98 Z', '#6f2e20')),
    label('hollow', 440, 40, [330, 112]),
  ],
  'core-holes': [
    lying(
      [0, 1, 2]
        .map((at) => `<ellipse cx="${215 + at * 90}" cy="115" rx="26" ry="11" fill="#3a1d16"/>`)
        .join(''),
    ),
    label('holes right through', 380, 40, [305, 112]),
  ],
  toothing: [
    smallWall(5),
    box(430, 60, 170, 232, '#f4f0e8'),
    ...[1, 3].map((course) => box(422, 250 - course * 42 - 4, 56, 42, MORTAR)),
    ...[1, 3].map((course) => unit(386, 250 - course * 42, 86, 34, course)),
    label('left to be joined', 400, 40, [468, 128]),
  ],
  corbel: [
    ...[0, 1, 2, 3, 4, 5].map((course) =>
      unit(180 + Math.max(0, course - 2) * 22, 250 - course * 42, 120, 36, course * 2),
    ),
    path('M300 20 L300 286', CHALK, 3, 'fill="none" stroke-dasharray="8 8"'),
    label('steps out', 440, 130, [364, 100]),
    label('face below', 400, 250, [302, 240]),
  ],
};
