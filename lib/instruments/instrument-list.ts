import type { PartKind } from '../wall/part-id';
import { INSTRUMENTS, type Instrument, type InstrumentId } from './instrument';

const TAPE: Instrument = {
  id: 'tape',
  name: 'Tape',
  reads: 'Lengths, bearings, overhangs, ties and how much of a back is covered.',
  resolution: 0.5,
  error: 1,
  unit: 'mm',
  source: 'common practice',
  lies: 'A bent hook or a sagging blade adds to every length. Start at the 100 mark and take 100 off to prove it.',
  on: ['unit', 'tie', 'support', 'edge', 'opening', 'course', 'panel'],
  between: ['unit', 'tie'],
};

const JOINT_GAUGE: Instrument = {
  id: 'joint-gauge',
  name: 'Joint gauge',
  reads: 'How thick a joint is, at each end, and how thick a steel is.',
  resolution: 0.1,
  error: 0.2,
  unit: 'mm',
  source: 'common practice',
  lies: 'A crumb of mortar or a chipped arris holds the jaws apart. Read each end twice.',
  on: ['bed', 'head', 'support'],
  between: [],
};

const SPIRIT_LEVEL: Instrument = {
  id: 'spirit-level',
  name: 'Spirit level, 1.2 m',
  reads: 'Slope: how far a course is off level, or a face off plumb.',
  resolution: 0.1,
  error: 0.5,
  unit: 'mm per m',
  source: 'common practice',
  lies: 'Every level has an error of its own. Turn it end for end: the wall is half the sum of both readings, the error is half the difference.',
  on: ['course', 'panel', 'support'],
  between: [],
};

const PLUMB_LINE: Instrument = {
  id: 'plumb-line',
  name: 'Plumb line',
  reads: 'Lean of a face over its height, and how far a line of head joints wanders.',
  resolution: 0.5,
  error: 1,
  unit: 'mm',
  source: 'common practice',
  lies: 'Wind moves the bob, and it swings before it stands. Still it in a bucket of water.',
  on: ['panel', 'head'],
  between: ['unit'],
};

const MASON_LINE: Instrument = {
  id: 'mason-line',
  name: 'Mason’s line and blocks',
  reads: 'Drop and dip of a course, and how far a face bows off its plane.',
  resolution: 0.5,
  error: 1,
  unit: 'mm',
  source: 'common practice',
  lies: 'The line sags by its own weight, four times as much for twice the length, and the wind blows it aside.',
  on: ['course', 'panel'],
  between: [],
};

const STRAIGHTEDGE: Instrument = {
  id: 'straightedge',
  name: 'Straightedge and feelers',
  reads: 'Steps of a face: how far a unit is twisted or stands out, and how thick a strap is.',
  resolution: 0.1,
  error: 0.2,
  unit: 'mm',
  source: 'common practice',
  lies: 'It rocks on one proud unit. Rest it on two sound ones, and prove it by turning it over.',
  on: ['unit', 'tie'],
  between: ['unit'],
};

const SQUARE: Instrument = {
  id: 'square',
  name: 'Square, 3-4-5',
  reads: 'How far a corner is off square, from three tapes.',
  resolution: 0.1,
  error: 1.5,
  unit: 'mm per m',
  source: 'our proposal',
  lies: 'A slip on the long side is 1.67 times as much at the end of the middle one. Use the largest triangle that fits.',
  on: ['corner'],
  between: [],
};

const GAUGE_ROD: Instrument = {
  id: 'gauge-rod',
  name: 'Gauge rod',
  reads: 'Courses against their marks: how much the wall gains or loses as it rises.',
  resolution: 0.5,
  error: 1,
  unit: 'mm',
  source: 'common practice',
  lies: 'A rod that does not stand on the datum is wrong at every mark by the same amount.',
  on: ['panel', 'course', 'bed'],
  between: ['unit'],
};

const MIRROR: Instrument = {
  id: 'mirror',
  name: 'Mirror',
  reads: 'Undersides: what carries the units over an opening and on a ledge.',
  resolution: 1,
  error: 0,
  unit: 'there or not',
  source: 'read off the object',
  lies: 'It turns left and right about, and shows only what has light on it.',
  on: ['opening', 'unit', 'support'],
  between: [],
};

const PROBE: Instrument = {
  id: 'probe',
  name: 'Probe',
  reads: 'How full a head joint is, and how far the mortar lies back.',
  resolution: 1,
  error: 3,
  unit: '%',
  source: 'our proposal',
  lies: 'It stops at the first hard crumb. Try five heights, and never push it as a lever.',
  on: ['head', 'bed', 'panel'],
  between: [],
};

const TIE_FINDER: Instrument = {
  id: 'tie-finder',
  name: 'Tie finder',
  reads: 'Where there is metal behind the face. It says nothing of how far a tie reaches in.',
  resolution: 10,
  error: 15,
  unit: 'mm',
  source: 'our proposal',
  lies: 'It cannot tell a tie from a nail or a lintel, nor a good tie from a short one.',
  on: ['unit', 'course', 'panel'],
  between: [],
};

const TAP: Instrument = {
  id: 'tap',
  name: 'Tap',
  reads: 'A sound: solid or hollow. A hollow sound is a sign to look further, not a finding.',
  resolution: 0,
  error: 0,
  unit: '',
  source: 'common practice',
  lies: 'A mat or a soft backing sounds hollow too, and a void can ring solid at its edge.',
  on: ['unit'],
  between: [],
};

const SCRATCH: Instrument = {
  id: 'scratch',
  name: 'Scratch',
  reads: 'Hard or soft mortar, by a nail. A sign to ask for the mixing ticket.',
  resolution: 0,
  error: 0,
  unit: '',
  source: 'common practice',
  lies: 'Young mortar is soft, and a hard skin can hide a weak heart.',
  on: ['bed', 'head', 'batch'],
  between: [],
};

const THERMOMETER: Instrument = {
  id: 'thermometer',
  name: 'Air thermometer and mixing ticket',
  reads: 'Air when the mortar was used, minutes from mixing, and parts of sand.',
  resolution: 0.5,
  error: 0.5,
  unit: '°C',
  source: 'our proposal',
  lies: 'In the sun it reads the sun. Hang it in the shade at the wall.',
  on: ['batch'],
  between: [],
};

/** Every instrument by its id. */
export const INSTRUMENT: Readonly<Record<InstrumentId, Instrument>> = {
  tape: TAPE,
  'joint-gauge': JOINT_GAUGE,
  'spirit-level': SPIRIT_LEVEL,
  'plumb-line': PLUMB_LINE,
  'mason-line': MASON_LINE,
  straightedge: STRAIGHTEDGE,
  square: SQUARE,
  'gauge-rod': GAUGE_ROD,
  mirror: MIRROR,
  probe: PROBE,
  'tie-finder': TIE_FINDER,
  tap: TAP,
  scratch: SCRATCH,
  thermometer: THERMOMETER,
};

/** Those that can be held to such a part, the likeliest first (by the place of the kind in `on`); then those that cannot. */
export function instrumentsFor(kind: PartKind): {
  readonly fits: readonly Instrument[];
  readonly others: readonly Instrument[];
} {
  const all = INSTRUMENTS.map((id) => INSTRUMENT[id]);
  const likely = ({ on }: Instrument) => (on.includes(kind) ? on.indexOf(kind) : on.length);
  const fits = all.filter(({ on, between }) => on.includes(kind) || between.includes(kind));
  return {
    fits: fits.toSorted((a, b) => likely(a) - likely(b)),
    others: all.filter((each) => !fits.includes(each)),
  };
}
