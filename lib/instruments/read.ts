import type { Part } from '../wall/parts';
import type { Survey } from '../wall/survey';
import { readBetween } from './between';
import { readGaugeRod } from './gauge-rod';
import type { InstrumentId } from './instrument';
import { INSTRUMENT } from './instrument-list';
import { readJointGauge } from './joint-gauge';
import { readMasonLine } from './mason-line';
import { readMirror } from './mirror';
import { readPlumbLine } from './plumb-line';
import { readProbe } from './probe';
import { type Place, type ReadingContext, seedOf } from './read-off';
import type { Reading } from './reading';
import { readScratch } from './scratch';
import { readSpiritLevel } from './spirit-level';
import { readSquare } from './square';
import { readStraightedge } from './straightedge';
import { readTap } from './tap';
import { readTape } from './tape';
import { readThermometer } from './thermometer';
import { readTieFinder } from './tie-finder';

/** How an instrument is held. All may be left out. */
export interface Turn {
  /** The level turned end for end. */
  readonly turned?: boolean;
  /** The unit has been lifted: its back can be read. */
  readonly lifted?: boolean;
  /** The first of two points; the part is then the second. */
  readonly from?: Part | null;
}

type Read = (place: Place, context: ReadingContext) => readonly Reading[];

const READ: Readonly<Record<InstrumentId, Read>> = {
  tape: readTape,
  'joint-gauge': readJointGauge,
  'spirit-level': readSpiritLevel,
  'plumb-line': readPlumbLine,
  'mason-line': readMasonLine,
  straightedge: readStraightedge,
  square: readSquare,
  'gauge-rod': readGaugeRod,
  mirror: readMirror,
  probe: readProbe,
  'tie-finder': readTieFinder,
  tap: readTap,
  scratch: readScratch,
  thermometer: readThermometer,
};

/** What an instrument reads at a part, the most telling first: the same every time. Empty where it cannot be held, or finds nothing to read. */
export function readAt(
  survey: Survey,
  instrument: InstrumentId,
  part: Part,
  turn: Turn = {},
): readonly Reading[] {
  const panel = survey.panels.find((each) => each.panel.id === part.panel);
  const { from = null, lifted = false, turned = false } = turn;
  const { on, between } = INSTRUMENT[instrument];
  if (panel === undefined || !(from === null ? on : between).includes(part.kind)) return [];
  const place: Place = { part, panel, survey, lifted };
  const context: ReadingContext = { instrument, part: part.id, seed: seedOf(survey.wall), turned };
  if (from === null) return READ[instrument](place, context);
  return between.includes(from.kind) ? readBetween(place, from, context) : [];
}
