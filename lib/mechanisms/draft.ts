import { laidContacts } from '../failing/state/contacts';
import type {
  Contact,
  Damage,
  FailingWall,
  Leaves,
  Move,
  Season,
  Split,
  SupportMove,
  WallState,
  Zone,
} from '../failing/state/model';
import { STILL } from '../failing/state/model';
import type { PartId, SupportId, UnitId } from '../wall/part-id';
import type { Survey } from '../wall/survey';

/** A wall's state while a mechanism works on it. */
export interface Draft {
  readonly contacts: Contact[];
  readonly moves: Map<UnitId, Move>;
  readonly splits: Map<UnitId, Split>;
  readonly supports: Map<SupportId, SupportMove>;
  readonly missing: Map<UnitId, Leaves>;
  readonly damage: Damage[];
  readonly zones: Zone[];
  readonly held: PartId[];
  stuff: WallState['stuff'];
}

/** The wall as it was laid: nothing has moved, every contact is bonded. */
export function freshDraft(survey: Survey): Draft {
  return {
    contacts: [...laidContacts(survey)],
    moves: new Map(),
    splits: new Map(),
    supports: new Map(),
    missing: new Map(),
    damage: [],
    zones: [],
    held: [],
    stuff: 'clay',
  };
}

export function finished(survey: Survey, draft: Draft, years: number, season: Season): FailingWall {
  return { survey, state: { years, season, ...draft } };
}

/** Moves a unit further. */
export function shift(draft: Draft, unit: UnitId, by: Partial<Move>): void {
  const was = draft.moves.get(unit) ?? STILL;
  draft.moves.set(unit, {
    u: was.u + (by.u ?? 0),
    v: was.v + (by.v ?? 0),
    w: was.w + (by.w ?? 0),
    turn: was.turn + (by.turn ?? 0),
    lean: was.lean + (by.lean ?? 0),
  });
}

/** Cracks every contact that `which` picks: nothing of its bond is left. */
export function crackWhere(draft: Draft, which: (contact: Contact) => boolean): void {
  for (const [index, contact] of draft.contacts.entries()) {
    if (contact.state === 'bonded' && which(contact))
      draft.contacts[index] = { ...contact, state: 'cracked', sound: 0 };
  }
}

/** Leaves `share` of the bond of every contact that `which` picks. */
export function weakenWhere(draft: Draft, share: number, which: (contact: Contact) => boolean): void {
  for (const [index, contact] of draft.contacts.entries()) {
    if (contact.state === 'bonded' && which(contact))
      draft.contacts[index] = { ...contact, sound: contact.sound * share };
  }
}

/** A unit comes away: whatever touched it touches nothing now. */
export function takeAway(draft: Draft, unit: UnitId, leaves: Leaves): void {
  draft.missing.set(unit, leaves);
  for (const [index, contact] of draft.contacts.entries()) {
    if (contact.unit === unit || contact.other === unit)
      draft.contacts[index] = { ...contact, state: 'gone', sound: 0 };
  }
}
