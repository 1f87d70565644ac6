import type { Panel, Support, Tie, Unit, Wall } from '../../../lib/wall/model';
import { unitId } from '../../../lib/wall/part-id';

/**
 * A wall small enough to work out on paper: four courses of units 200 × 60 × 100 with 10 mm joints (gauge 70), panel A 620 long.
 * Odd courses are three whole units; even ones start and end with a half of 95. First underside at 10, nothing scattered.
 */
export function handUnits(): readonly Unit[] {
  const units: Unit[] = [];
  for (let course = 1; course <= 4; course++) {
    const starts = course % 2 === 1 ? [0, 210, 420] : [0, 105, 315, 525];
    const ends = course % 2 === 1 ? [200, 410, 620] : [95, 305, 515, 620];
    for (const [index, x] of starts.entries()) {
      const length = (ends[index] ?? 0) - x;
      units.push({
        id: `A${course}.${index + 1}`,
        panel: 'A',
        course,
        position: index + 1,
        kind: length === 200 ? 'stretcher' : 'bat',
        x,
        y: 10 + (course - 1) * 70,
        length,
        height: 60,
        depth: 100,
        fall: 0,
        twist: 0,
        lean: 0,
        set: 0,
        texture: 'smooth',
        condition: 'sound',
        shade: (course + index) % 8,
      });
    }
  }
  return units;
}

export const HAND_PANEL: Panel = {
  id: 'A',
  length: 620,
  courses: 4,
  plan: { leftX: 0, leftZ: 0, rightX: 620, rightZ: 0 },
  leftEnd: 'free',
  rightEnd: 'free',
  profile: 'concave',
  recess: 0,
  gable: null,
  studs: [100, 310, 520],
};

export const HAND_LEDGE: Support = {
  id: 'A-ledge',
  panel: 'A',
  kind: 'ledge',
  material: 'concrete',
  fromX: 0,
  toX: 620,
  y: 0,
  back: -190,
  front: -20,
};

export const HAND_TIE: Tie = {
  id: 'A-tie2.1',
  panel: 'A',
  course: 2,
  x: 310,
  y: 145,
  kind: 'strap',
  thickness: 1,
  width: 24,
  embedment: 40,
};

/** Two mixings for the hand wall, two courses each; the figures are invented. */
export const HAND_BATCHES: Wall['batches'] = [
  { id: 'batch-1', fromCourse: 1, toCourse: 2, portland: 1, lime: 0.5, sand: 4, air: 25, minutes: 72 },
  { id: 'batch-2', fromCourse: 3, toCourse: 4, portland: 1, lime: 1, sand: 12.25, air: -5, minutes: 300 },
];

/** The hand wall with other parts put in place of its own. */
export function handWall(other: Partial<Wall> = {}): Wall {
  return {
    version: 2,
    kind: 'plain-panel',
    masonry: 'anchored',
    finish: 'brick',
    family: { name: 'hand', length: 200, height: 60, depth: 100 },
    bond: 'running',
    joint: 10,
    gauge: 70,
    storeysAbove: 0,
    cavity: 50,
    panels: [HAND_PANEL],
    units: handUnits(),
    heads: [],
    openings: [],
    supports: [HAND_LEDGE],
    ties: [HAND_TIE],
    flashings: [{ panel: 'A', y: 0, fromX: 0, toX: 620 }],
    batches: [],
    projections: [],
    tone: { mortar: 0, lot: 0 },
    ...other,
  };
}

/** The hand wall with one unit changed. */
export function handWallWith(id: string, change: Partial<Unit>, other: Partial<Wall> = {}): Wall {
  return handWall({
    ...other,
    units: handUnits().map((unit) => (unit.id === id ? { ...unit, ...change } : unit)),
  });
}

/** A window 210 wide over the first two courses of the hand wall: units A3.2 and A4.2, A4.3 stand over it on a steel angle. */
export function handWindow(): Wall {
  const gone = new Set(['A1.2', 'A2.2', 'A2.3']);
  return handWall({
    kind: 'window-panel',
    units: handUnits().filter(({ id }) => !gone.has(id)),
    openings: [{ id: 'A-window1', panel: 'A', kind: 'window', x: 205, y: 10, width: 210, height: 130 }],
    ties: [],
    supports: [
      HAND_LEDGE,
      {
        id: 'A-lintel1',
        panel: 'A',
        kind: 'lintel',
        material: 'steel',
        fromX: 105,
        toX: 535,
        y: 140,
        back: -96,
        front: -16,
        angle: { vertical: 90, horizontal: 80, thickness: 8 },
        opening: 'A-window1',
      },
    ],
  });
}

/**
 * Five courses of 620: a quoin 95 long in courses 1 to 3 at the left end, a window 220 wide in course 1, and over it three soldiers,
 * 60 wide and 200 high in joints of 10, in courses 2 to 4. Course 5 runs over all.
 */
export function handTall(
  change: Readonly<Record<string, Partial<Unit>>> = {},
  other: Partial<Wall> = {},
): Wall {
  const rows: readonly (readonly (readonly [from: number, to: number, kind?: 'soldier' | 'quoin'])[])[] = [
    [
      [0, 95, 'quoin'],
      [105, 200],
      [420, 620],
    ],
    [
      [105, 200],
      [210, 270, 'soldier'],
      [280, 340, 'soldier'],
      [350, 410, 'soldier'],
      [420, 515],
      [525, 620],
    ],
    [
      [105, 200],
      [420, 620],
    ],
    [
      [0, 200],
      [420, 515],
      [525, 620],
    ],
    [
      [0, 200],
      [210, 410],
      [420, 620],
    ],
  ];
  const [pattern] = handUnits();
  if (pattern === undefined) throw new RangeError('the hand wall has units');
  const units = rows.flatMap((row, index) =>
    row.map(([from, to, tall], at): Unit => {
      const id = unitId('A', index + 1, at + 1);
      const kind = tall ?? (to - from === 200 ? 'stretcher' : 'bat');
      const place = { course: index + 1, position: at + 1, x: from, y: 10 + index * 70, length: to - from };
      return {
        ...pattern,
        ...place,
        id,
        kind,
        height: tall ? 200 : 60,
        shade: (index + at) % 8,
        ...change[id],
      };
    }),
  );
  return {
    ...handWindow(),
    panels: [{ ...HAND_PANEL, courses: 5 }],
    openings: [{ id: 'A-window1', panel: 'A', kind: 'window', x: 200, y: 10, width: 220, height: 60 }],
    supports: handWindow().supports.map((each) =>
      each.kind === 'ledge' ? each : { ...each, fromX: 105, toX: 515, y: 70 },
    ),
    units,
    ...other,
  };
}
