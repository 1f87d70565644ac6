import { layByCode, layWithoutFaults } from '../engines/engines';
import type { Brief } from '../generate/brief';
import type { InstrumentId } from '../instruments/instrument';
import { readAt } from '../instruments/read';
import type { Reading } from '../instruments/reading';
import type { LengthSystem } from '../units';
import { drawingOf } from '../views/draw-view';
import type { View } from '../views/view';
import type { ViewingConditions } from '../views/viewing-conditions';
import type { Wall } from '../wall/model';
import { type SurveyedWall, surveyedWall } from '../wall/surveyed';
import { bareWall } from './bare-wall';
import { meantParts } from './meant-parts';
import { type SentLook, sentLook } from './sent-look';

/** A wall that the site draws, with what a device is given of it. */
export interface SiteWall {
  readonly wall: SurveyedWall;
  readonly bare: SurveyedWall;
}

export function siteWall(brief: Brief): SiteWall {
  const { wall } = layByCode(brief);
  return { wall: surveyedWall(wall), bare: surveyedWall(bareOf(brief, wall)) };
}

/** The bare wall of a brief's wall. */
export function bareOf(brief: Brief, wall: Wall): Wall {
  return bareWall(wall, layWithoutFaults(brief));
}

/** What is looked at, drawn from the wall. @throws ViewError for a place that the bare wall does not have. */
export function lookAt(
  { wall, bare }: SiteWall,
  view: View,
  system: LengthSystem,
  viewing: ViewingConditions,
): SentLook {
  const shown = drawingOf(bare, view, system, viewing);
  const meant = (id: string) => meantParts(bare, wall, id).at(-1)?.id ?? id;
  return sentLook(drawingOf(wall, meantView(view, meant), system, viewing), shown);
}

function meantView(view: View, meant: (id: string) => string): View {
  if (view.kind === 'section' && view.support !== undefined) return { ...view, support: meant(view.support) };
  if (view.kind === 'below') return { ...view, at: meant(view.at) };
  return view.kind === 'behind' ? { ...view, unit: meant(view.unit) } : view;
}

/** An instrument in use: what it is held to by the names of the bare wall, and how. */
export interface Use {
  readonly instrument: InstrumentId;
  readonly part: string;
  readonly turned: boolean;
  /** The first of two points. */
  readonly from: string | null;
}

/** What an instrument reads. Of two pieces that stand in the place of one unit it reads both. */
export function readingsOf({ wall, bare }: SiteWall, use: Use, lifted: boolean): readonly Reading[] {
  const kind = bare.parts.get(use.part)?.kind;
  // What is wanting has no length: a mirror shows that it is wanting.
  const places = meantParts(bare, wall, use.part).filter(
    (part) => part.kind === kind || use.instrument === 'mirror',
  );
  const from = use.from === null ? null : meantParts(bare, wall, use.from)[0];
  if (from === undefined) return [];
  return places.flatMap((place, index) =>
    readAt(wall, use.instrument, place, { turned: use.turned, lifted, from }).map((reading) => ({
      ...reading,
      part: use.part,
      what: places.length === 1 ? reading.what : `${reading.what}, ${PIECES[index] ?? 'next'} piece`,
    })),
  );
}

const PIECES: readonly string[] = ['left', 'right'];
