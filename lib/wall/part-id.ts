/**
 * The names of a wall's parts, spelt and read in this file alone. Panels are letters from the left; courses count from the bottom; units and ties count from the
 * left within their course.
 */

/** `A`: a letter. */
export type PanelId = Uppercase<string>;
/** `A12`: the whole of course 12. */
export type CourseId = `${PanelId}${number}`;
/** `A12.5`: the fifth unit of course 12. */
export type UnitId = `${CourseId}.${number}`;
/** `A12.5-bed`: the bed under a unit. */
export type BedId = `${UnitId}-bed`;
/** `A12.4/5`: the head joint between units 4 and 5 of course 12. */
export type HeadId = `${UnitId}/${number}`;
/** `A-tie12.3`: the third tie in the bed on top of course 12. */
export type TieId = `${PanelId}-tie${number}.${number}`;
/** `A-window1`. */
export type OpeningId = `${PanelId}-${'window' | 'door'}${number}`;
/** `A-ledge`, `A-ledge2`, `A-lintel1`. */
export type SupportId = `${PanelId}-${'ledge' | 'lintel'}${number | ''}`;
/** `A-left-end`. */
export type EndId = `${PanelId}-${'left' | 'right'}-end`;
/** `A-B-corner`: where panel A meets panel B. */
export type CornerId = `${PanelId}-${PanelId}-corner`;
/** `batch-2`: the second mixing of mortar. */
export type BatchId = `batch-${number}`;
export type PartId =
  | PanelId
  | CourseId
  | UnitId
  | BedId
  | HeadId
  | TieId
  | OpeningId
  | SupportId
  | EndId
  | CornerId
  | BatchId;

/** A name taken apart. Panels, courses and places count as they do in the name. */
export type PartName =
  | { readonly kind: 'panel'; readonly panel: PanelId }
  | { readonly kind: 'course'; readonly panel: PanelId; readonly course: number }
  | ({ readonly kind: 'unit' | 'bed' } & PlaceInCourse)
  /** `position` is that of the unit on its left. */
  | ({ readonly kind: 'head'; readonly right: number } & PlaceInCourse)
  | ({ readonly kind: 'tie' } & PlaceInCourse)
  | { readonly kind: 'opening'; readonly panel: PanelId; readonly what: Opened }
  | { readonly kind: 'support'; readonly panel: PanelId; readonly what: Carrier }
  | { readonly kind: 'edge'; readonly panel: PanelId; readonly end: End }
  | { readonly kind: 'corner'; readonly panels: readonly [PanelId, PanelId] }
  | { readonly kind: 'batch'; readonly number: number };
export type PartKind = PartName['kind'];

interface PlaceInCourse {
  readonly panel: PanelId;
  readonly course: number;
  readonly position: number;
}
type Opened = 'window' | 'door';
type Carrier = 'ledge' | 'lintel';
type End = 'left' | 'right';

export function courseId(panel: PanelId, course: number): CourseId {
  return `${panel}${course}`;
}

export function unitId(panel: PanelId, course: number, position: number): UnitId {
  return `${courseId(panel, course)}.${position}`;
}

/** The bed under a unit: not stored, but it can be named. */
export function bedId(unit: UnitId): BedId {
  return `${unit}-bed`;
}

/** The head joint between a unit and the one at `rightPosition`: `A12.4` and 5 -> `A12.4/5`. */
export function headId(left: UnitId, rightPosition: number): HeadId {
  return `${left}/${rightPosition}`;
}

export function tieId(panel: PanelId, course: number, position: number): TieId {
  return `${panel}-tie${course}.${position}`;
}

export function openingId(panel: PanelId, what: Opened): OpeningId {
  return `${panel}-${what}1`;
}

export function ledgeId(panel: PanelId): SupportId {
  return `${panel}-ledge`;
}

/** A second piece of ledge beside the first. */
export function secondLedgeId(panel: PanelId): SupportId {
  return `${panel}-ledge2`;
}

export function lintelId(panel: PanelId): SupportId {
  return `${panel}-lintel1`;
}

export function endId(panel: PanelId, end: End): EndId {
  return `${panel}-${end}-end`;
}

export function cornerId(left: PanelId, right: PanelId): CornerId {
  return `${left}-${right}-corner`;
}

export function batchId(number: number): BatchId {
  return `batch-${number}`;
}

/** 'batch-2' -> 2. */
export function batchNumber(id: BatchId): number {
  return Number(id.slice('batch-'.length));
}

const IN_COURSE = /^([A-Z])(?:([1-9]\d*)(?:\.([1-9]\d*)(?:(-bed)|\/([1-9]\d*))?)?)?$/;
const BESIDE =
  /^([A-Z])-(?:tie([1-9]\d*)\.([1-9]\d*)|(window|door)[1-9]\d*|(ledge|lintel)(?:[1-9]\d*)?|(left|right)-end|([A-Z])-corner)$/;
const BATCH = /^batch-([1-9]\d*)$/;

/** Reads a name; null for what no part of any wall is called. */
export function parsePartId(id: string): PartName | null {
  return inCourse(IN_COURSE.exec(id)) ?? beside(BESIDE.exec(id)) ?? batch(BATCH.exec(id));
}

export function kindOf(id: string): PartKind | null {
  return parsePartId(id)?.kind ?? null;
}

/** Whether a name is that of a part of this kind. */
export function isOfKind<K extends PartKind>(id: string, kind: K): id is IdOf[K] {
  return kindOf(id) === kind;
}

export interface IdOf {
  readonly panel: PanelId;
  readonly course: CourseId;
  readonly unit: UnitId;
  readonly bed: BedId;
  readonly head: HeadId;
  readonly tie: TieId;
  readonly opening: OpeningId;
  readonly support: SupportId;
  readonly edge: EndId;
  readonly corner: CornerId;
  readonly batch: BatchId;
}

/** The unit that a name is of: itself, the one on a bed, or the one on the left of a head joint; null for other parts. */
export function unitOf(id: string): UnitId | null {
  const name = parsePartId(id);
  return name?.kind === 'unit' || name?.kind === 'bed' || name?.kind === 'head'
    ? unitId(name.panel, name.course, name.position)
    : null;
}

/** The course that a unit, or a joint of one, is laid in; null for other parts. */
export function courseOf(id: string): CourseId | null {
  const name = parsePartId(id);
  return name?.kind === 'unit' || name?.kind === 'bed' || name?.kind === 'head'
    ? courseId(name.panel, name.course)
    : null;
}

function inCourse(match: RegExpExecArray | null): PartName | null {
  const [, panel, course, position, bed, right] = match ?? [];
  if (panel === undefined || !isPanelId(panel)) return null;
  if (course === undefined) return { kind: 'panel', panel };
  if (position === undefined) return { kind: 'course', panel, course: Number(course) };
  const place = { panel, course: Number(course), position: Number(position) };
  if (right !== undefined) return { kind: 'head', ...place, right: Number(right) };
  return { kind: bed === undefined ? 'unit' : 'bed', ...place };
}

function beside(match: RegExpExecArray | null): PartName | null {
  const [, panel, course, position, opened, carrier, end, second] = match ?? [];
  if (panel === undefined || !isPanelId(panel)) return null;
  if (opened === 'window' || opened === 'door') return { kind: 'opening', panel, what: opened };
  if (carrier === 'ledge' || carrier === 'lintel') return { kind: 'support', panel, what: carrier };
  if (end === 'left' || end === 'right') return { kind: 'edge', panel, end };
  if (second !== undefined && isPanelId(second)) return { kind: 'corner', panels: [panel, second] };
  return { kind: 'tie', panel, course: Number(course), position: Number(position) };
}

function batch(match: RegExpExecArray | null): PartName | null {
  return match === null ? null : { kind: 'batch', number: Number(match[1]) };
}

function isPanelId(text: string): text is PanelId {
  return /^[A-Z]$/.test(text);
}
