import type { AngleRow, Bound, LimitId, RuleSetId } from '../../lib/limits/limit';

/**
 * Every figure that decides a pass or fail, typed by hand from the source named beside it, apart from lib/limits: the second measurer in tests/naive
 * judges by these, and tests/reference/deciding-limits.test.ts fails for a deciding limit that is not here. Feet and inches are typed as the
 * millimetres they make (1 in = 25.4 mm, 1 ft² = 92,903.04 mm²).
 */

const END = Number.POSITIVE_INFINITY;
const is = (value: number): Bound => ({ form: 'number', value });
const third: Bound = { form: 'share-of-depth', share: 1 / 3 };
const there: Bound = { form: 'present' };
/** The model has eighths of a millimetre: below 90 mm is up to 89.875, below 25 °C up to 24.999. */
const byDepth = (below90: number, from90: number): Bound => ({
  form: 'stepped',
  by: 'unit depth',
  steps: [
    { upTo: 89.875, value: below90 },
    { upTo: END, value: from90 },
  ],
});
const byAir: Bound = {
  form: 'stepped',
  by: 'air temperature',
  steps: [
    { upTo: 24.999, value: 150 },
    { upTo: END, value: 90 },
  ],
};

/** NBC Table 9.20.5.2. in metres for brick of 75 (in Ontario 70), 90 and 100 mm; 0: not permitted. */
const NBC_ANGLES = [
  [89, 76, 6.4, 2.55, 0, 0],
  [89, 89, 6.4, 2.59, 2.47, 2.3],
  [102, 89, 6.4, 2.79, 2.66, 2.48],
  [127, 89, 7.9, 3.47, 3.31, 3.08],
  [127, 89, 11, 3.64, 3.48, 3.24],
] as const;
/** OBC Table 9.20.5.2.-B: the same, and these. */
const OBC_ANGLES = [
  ...NBC_ANGLES,
  [127, 89, 13, 3.82, 3.59, 3.33],
  [152, 89, 11, 4.06, 3.82, 3.54],
  [152, 89, 13, 4.32, 4.07, 3.77],
  [152, 102, 13, 4.37, 4.12, 3.82],
  [178, 102, 11, 4.57, 4.3, 3.99],
  [178, 102, 13, 4.87, 4.59, 4.25],
] as const;

const anglesByDepth = (thin: 70 | 75, table: typeof OBC_ANGLES | typeof NBC_ANGLES): Bound => ({
  form: 'angle-table',
  caseBy: 'unit depth',
  rows: table.map(([vertical, horizontal, thickness, ...metres]): AngleRow => {
    const spans = Object.fromEntries(
      metres.flatMap((metre, at) => (metre === 0 ? [] : [[[thin, 90, 100][at], Math.round(metre * 1000)]])),
    );
    return { vertical, horizontal, thickness, spans };
  }),
});

/** IRC Table R703.8.3.1, mm: legs 3, 4, 5, 6 by 3 or 3 1/2 in, 1/4 or 5/16 in thick; spans with none, one, two storeys above. */
const IRC_ANGLES: Bound = {
  form: 'angle-table',
  caseBy: 'storeys above',
  rows: [
    { vertical: 76.2, horizontal: 76.2, thickness: 6.35, spans: { 0: 1828.8, 1: 1371.6, 2: 914.4 } },
    { vertical: 101.6, horizontal: 76.2, thickness: 6.35, spans: { 0: 2438.4, 1: 1828.8, 2: 1371.6 } },
    { vertical: 127, horizontal: 88.9, thickness: 7.9375, spans: { 0: 3048, 1: 2438.4, 2: 1828.8 } },
    { vertical: 152.4, horizontal: 88.9, thickness: 7.9375, spans: { 0: 4267.2, 1: 2895.6, 2: 2133.6 } },
  ],
};

type Typed = Readonly<Partial<Record<LimitId, readonly [bound: Bound, source: string]>>>;

/** What NBC and OBC have in common. */
const BOTH: Typed = {
  'head-fill': [is(95), 'NBC 9.20.4.2.(3), OBC the same: full joints; 95 % is our reading of full'],
  'rake-on-thin-veneer': [byDepth(0, END), 'NBC 9.20.6.4.(3), OBC the same: not raked under 90 mm'],
  'overhang-share': [third, 'NBC 9.20.8.5, OBC the same: a third of the thickness'],
  'overhang-fixed': [byDepth(12, 25), 'NBC 9.20.12.3, OBC the same: 25 mm from 90 mm thick, 12 mm below'],
  'supported-share': [is(100), 'NBC 9.20.5.1.(1), OBC the same: on masonry, concrete or steel'],
  'lintel-present': [there, 'NBC 9.20.5.2, OBC the same'],
  'tie-thickness': [is(0.76), 'NBC 9.20.9.5.(1), OBC the same'],
  'tie-width': [is(22), 'NBC 9.20.9.5.(1), OBC the same'],
  'tie-spacing': [
    {
      form: 'tie-rows',
      rows: [
        { vertical: 400, horizontal: 800 },
        { vertical: 500, horizontal: 600 },
        { vertical: 600, horizontal: 400 },
      ],
    },
    'NBC Table 9.20.9.5., OBC the same',
  ],
  'weep-spacing': [is(800), 'NBC 9.20.13.8.(1), OBC the same'],
  'flashing-present': [there, 'NBC 9.20.13.3, OBC the same: under weep holes and over openings'],
  'flashing-upstand': [is(150), 'NBC 9.20.13.6, OBC the same'],
  'flashing-past-face': [is(5), 'NBC 9.20.13.6, OBC the same'],
  'mortar-life': [byAir, 'NBC 9.20.3.2.(5), OBC the same: 1 1/2 h from 25 °C, else 2 1/2 h'],
  'sand-ratio': [is(3), 'NBC Table 9.20.3.2.-B, OBC the same: 4.5 to 1 1/2, 6 to 2, 3 to 1'],
};

export const TYPED_LIMITS: Readonly<Record<RuleSetId, Typed>> = {
  canada: {
    ...BOTH,
    'bed-joint-most': [is(15), 'NBC 9.20.4.1.: 10 mm, plus 5'],
    'bed-joint-least': [is(5), 'NBC 9.20.4.1.: 10 mm, less 5'],
    'head-joint-most': [is(15), 'NBC 9.20.4.1.: 10 mm, plus 5'],
    'head-joint-least': [is(5), 'NBC 9.20.4.1.: 10 mm, less 5'],
    'first-bed-most': [is(15), 'NBC 9.20.4.1.: no other figure for the first bed'],
    'first-bed-least': [is(5), 'NBC 9.20.4.1.: no other figure for the first bed'],
    'lintel-bearing': [is(90), 'NBC 9.20.5.2'],
    'angle-size': [anglesByDepth(75, NBC_ANGLES), 'NBC Table 9.20.5.2.'],
  },
  ontario: {
    ...BOTH,
    'bed-joint-most': [is(20), 'OBC 9.20.4.1.(2): 10 mm, plus 10'],
    'bed-joint-least': [is(5), 'OBC 9.20.4.1.(2): 10 mm, less 5'],
    'head-joint-most': [is(20), 'OBC 9.20.4.1.(2): 10 mm, plus 10'],
    'head-joint-least': [is(5), 'OBC 9.20.4.1.(2): 10 mm, less 5'],
    'first-bed-most': [is(20), 'OBC 9.20.4.1.(2): no other figure for the first bed'],
    'first-bed-least': [is(5), 'OBC 9.20.4.1.(2): no other figure for the first bed'],
    'lintel-bearing': [is(150), 'OBC 9.20.5.2'],
    'angle-size': [anglesByDepth(70, OBC_ANGLES), 'OBC Table 9.20.5.2.-B'],
  },
  'united-states': {
    'first-bed-most': [is(19.05), 'IRC R606.3.1: 3/4 in'],
    'first-bed-least': [is(6.35), 'IRC R606.3.1: 1/4 in'],
    'head-fill': [is(95), 'IRC R606.3.2.1: full joints; 95 % is our reading of full'],
    'overhang-share': [third, 'IRC R606.6.1, R703.8.2.1: two thirds borne'],
    'supported-share': [is(100), 'IRC R606.6.1, Table R703.8(1)'],
    'lintel-present': [there, 'IRC R703.8.3'],
    'lintel-bearing': [is(101.6), 'IRC R703.8.3: 4 in'],
    'angle-size': [IRC_ANGLES, 'IRC Table R703.8.3.1'],
    'tie-spacing': [
      { form: 'tie-area', vertical: 609.6, horizontal: 812.8, area: 248_051.1168 },
      'IRC R703.8.4.1: 24 in up, 32 in across, 2.67 ft²',
    ],
    'tie-thickness': [is(0.75946), 'IRC R703.8.4.1: No. 22 gage, 0.0299 in'],
    'tie-width': [is(22.225), 'IRC R703.8.4.1: 7/8 in'],
    'tie-edge-distance': [is(304.8), 'IRC R703.8.4.1.1: 12 in'],
    'tie-edge-spacing': [is(914.4), 'IRC R703.8.4.1.1: 3 ft'],
    'tie-opening': [is(406.4), 'IRC R703.8.4.1.1: 16 in'],
    'tie-embedment': [is(38.1), 'IRC R703.8.4: 1 1/2 in'],
    'tie-cover': [is(15.875), 'IRC R703.8.4: 5/8 in'],
    'weep-spacing': [is(838.2), 'IRC R703.8.6: 33 in'],
    'weep-size': [is(4.7625), 'IRC R703.8.6: 3/16 in'],
    'flashing-present': [there, 'IRC R703.8.5'],
    'mortar-life': [is(150), 'ASTM C270: 2 1/2 h, as Masonry Magazine told in March 1978 and December 1988'],
    'sand-ratio': [is(3), 'IRC Table R606.2.8'],
  },
  'united-kingdom': {
    'bed-from-mean-of-eight': [is(5), 'LABC Warranty, version 8, chapter 1'],
    'head-joint-least': [is(7), 'LABC Warranty guide to laying bricks'],
    'course-level': [
      { form: 'pro-rata', run: 5000, value: 8, beyond: 12 },
      'NHBC 2011 1.2-S1(a): 8 mm in 5 m, in proportion below; 12 mm beyond',
    ],
    'face-line': [
      { form: 'any-run', runs: [{ run: 5000, value: 8 }], overall: 8 },
      'NHBC 2019 9.1.2: 8 mm in any length up to 5 m',
    ],
    plumb: [
      { form: 'any-run', runs: [{ run: 2500, value: 8 }], overall: 8 },
      'NHBC 2019 9.1.2: 8 mm in a storey of about 2.5 m',
    ],
    'overhang-fixed': [is(25), 'NHBC 2020 6.1.12'],
    'lintel-bearing': [
      {
        form: 'stepped',
        by: 'clear span',
        steps: [
          { upTo: 1200, value: 100 },
          { upTo: END, value: 150 },
        ],
      },
      'NHBC 2020 6.1.12 Table 5: 100 mm to 1.2 m, else 150',
    ],
    'tie-spacing': [
      { form: 'tie-rows', rows: [{ vertical: 450, horizontal: 600 }] },
      'NHBC 2020 6.2.14: 450 mm up, 600 along',
    ],
    'tie-edge-distance': [is(225), 'NHBC 2020 6.2.14'],
    'tie-edge-spacing': [is(300), 'NHBC 2020 6.2.14'],
    'tie-embedment': [is(50), 'NHBC 2020 6.1.18'],
    'weep-spacing': [is(900), 'LABC Warranty guide to weep holes and cavity trays: 900 mm centres'],
  },
  'good-practice': {
    'bed-joint-most': [is(13), 'CSA A371-14 as a trade body tells it: 10 mm, plus 3; NZS 4210 the same'],
    'bed-joint-least': [is(7), 'CSA A371-14 as a trade body tells it: 10 mm, less 3; NZS 4210 the same'],
    'head-joint-most': [is(13), 'CSA A371-14 as a trade body tells it: 10 mm, plus 3; NZS 4210 the same'],
    'head-joint-least': [is(7), 'CSA A371-14 as a trade body tells it: 10 mm, less 3; NZS 4210 the same'],
    'first-bed-most': [is(20), 'NZS 4210 as the federation of bricklayers tells it'],
    'first-bed-least': [is(6.35), 'IRC R606.3.1: 1/4 in'],
    'bed-taper': [is(4), 'ours, for training'],
    'head-fill': [is(95), 'C. Beall 2004, p. 157: full joints; 95 % is our reading of full'],
    'back-contact': [is(95), 'ANSI A108.5 as trade articles tell it'],
    'back-void': [is(1290), 'an article on tile: 2 in², 1,290 mm²'],
    'course-level': [
      { form: 'any-run', runs: [{ run: 3048, value: 6.35 }], overall: 12.7 },
      'TMS 602 3.3 F: 1/4 in in 10 ft, 1/2 in at most',
    ],
    plumb: [
      {
        form: 'any-run',
        runs: [
          { run: 3048, value: 6.35 },
          { run: 6096, value: 9.525 },
        ],
        overall: 12.7,
      },
      'TMS 602 3.3 F: 1/4 in in 10 ft, 3/8 in in 20 ft, 1/2 in at most',
    ],
    'face-line': [
      {
        form: 'any-run',
        runs: [
          { run: 3048, value: 6.35 },
          { run: 6096, value: 9.525 },
        ],
        overall: 12.7,
      },
      'TMS 602 3.3 F: true to a line as plumb',
    ],
    gauge: [is(3), 'ours, for training'],
    'perpend-line': [is(10), 'ours, for training'],
    'unit-twist': [is(3), 'ours, for training'],
    'unit-set': [is(3), 'ours, for training'],
    'corner-square': [is(5), 'ours, for training'],
    'smallest-piece': [
      { form: 'share-of-depth', share: 1 },
      'Masonry Construction, bricking around openings: no piece shorter than the brick is deep',
    ],
    'overhang-share': [third, 'NBC 9.20.8.5, borrowed'],
    'supported-share': [is(100), 'NBC 9.20.5.1.(1), borrowed'],
    'lintel-present': [there, 'IRC R703.8.3, borrowed'],
    'lintel-bearing': [is(101.6), 'IRC R703.8.3, borrowed: 4 in'],
    'angle-thickness': [is(6.35), 'C. Beall 2004, p. 258: 1/4 in'],
    'angle-leg': [is(76.2), 'C. Beall 2004, p. 258: 3 in'],
    'tie-spacing': [
      { form: 'tie-area', vertical: 457.2, horizontal: 812.8, area: 250_000 },
      'BIA Technical Note 28B: 18 in up, 32 in across, 0.25 m²',
    ],
    'tie-edge-distance': [is(304.8), 'IRC R703.8.4.1.1, borrowed: 12 in'],
    'tie-edge-spacing': [is(914.4), 'IRC R703.8.4.1.1, borrowed: 3 ft'],
    'tie-opening': [is(406.4), 'IRC R703.8.4.1.1, borrowed: 16 in'],
    'tie-embedment': [is(38.1), 'IRC R703.8.4, borrowed: 1 1/2 in'],
    'tie-cover': [is(15.875), 'IRC R703.8.4, borrowed: 5/8 in'],
    'tie-thickness': [is(0.76), 'NBC 9.20.9.5.(1), borrowed'],
    'tie-width': [is(22), 'NBC 9.20.9.5.(1), borrowed'],
    'weep-spacing': [is(609.6), 'BIA 28B: 24 in'],
    'weep-size': [is(4.7625), 'IRC R703.8.6, borrowed: 3/16 in'],
    'flashing-present': [there, 'IRC R703.8.5, borrowed'],
    'flashing-upstand': [is(203.2), 'BIA 28B: 8 in'],
    'flashing-past-face': [is(5), 'NBC 9.20.13.6, borrowed'],
    'end-dam': [is(25.4), 'BIA 28B: 1 in'],
    'mortar-life': [byAir, 'NBC 9.20.3.2.(5), borrowed'],
    'sand-ratio': [is(3), 'IRC Table R606.2.8, borrowed'],
  },
};
