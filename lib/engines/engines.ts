import type { Brief } from '../generate/brief';
import * as today from '../generate/engine';
import type { CheckId } from '../inspect/finding';
import type { Wall } from '../wall/model';
import * as engine1 from './engine-1.mjs';
import * as engine2 from './engine-2.mjs';
import * as engine3 from './engine-3.mjs';
import * as engine4 from './engine-4.mjs';
import * as engine5 from './engine-5.mjs';
import { type EarlierWall, inTodaysModel } from './in-todays-model';

/** What a file made by tests/commands/freeze-engine.mjs holds: lib/generate/engine.ts as it was. */
export interface EarlierEngine {
  readonly lay: (brief: Brief) => EarlierWall;
  readonly layWithoutFaults: (brief: Brief) => EarlierWall;
  readonly plannedFaults: (brief: Brief) => readonly CheckId[];
}

/** By number less one. */
const EARLIER: readonly EarlierEngine[] = [engine1, engine2, engine3, engine4, engine5];

export interface Laid {
  /** In today's model, to be drawn and measured. */
  readonly wall: Wall;
  /** In the model of the day it was laid for: what its fingerprint is taken from. */
  readonly asLaid: EarlierWall;
}

/**
 * The wall of a brief, by the engine that its code names: the one that the code has always opened. It is measured by today's checks.
 * For the server and the command line alone: a browser that lays walls knows today's engine only (lib/generate).
 */
export function layByCode(brief: Brief): Laid {
  const asLaid = engineOf(brief).lay(brief);
  return { asLaid, wall: inTodaysModel(asLaid) };
}

/** The same wall by the same chance, but for its faults. */
export function layWithoutFaults(brief: Brief): Wall {
  return inTodaysModel(engineOf(brief).layWithoutFaults(brief));
}

export function plannedFaults(brief: Brief): readonly CheckId[] {
  return engineOf(brief).plannedFaults(brief);
}

function engineOf({ engine }: Brief): EarlierEngine {
  return (engine === undefined ? undefined : EARLIER[engine - 1]) ?? today;
}
