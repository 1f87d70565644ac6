import type { CheckId } from '../../lib/inspect/finding';
import type { Reading } from '../../lib/instruments/reading';
import type { Answer } from '../../lib/marking/five-marks';
import type { Sure } from '../../lib/marking/mark';
import type { LengthSystem } from '../../lib/units';
import type { MarkDetails } from './marking/mark-details';

/** One mark of the learner. Its number on the wall is its place in the list. */
export interface Mark extends Answer {
  readonly part: string;
  readonly fault: CheckId;
  readonly sure: Sure;
}

/** A mark that is being made: what its form holds, as typed. */
export interface HalfMark {
  /** What was typed to shorten the list of faults. */
  readonly words: string;
  readonly fault: CheckId | null;
  /** The part it goes on, where the reader chose one of several. */
  readonly place: string | null;
  readonly sure: Sure;
  readonly details: MarkDetails;
  /** The lengths in which the reading was typed. */
  readonly system: LengthSystem;
}

/** A mark half made, with its place. */
export interface HalfMade extends HalfMark {
  /** The part picked. */
  readonly part: string;
  /** The mark it changes, by its place in the list; null for a new one. */
  readonly changing: number | null;
}

export type Phase = 'looking' | 'review' | 'handed in';

/** What a reload must not lose. */
export interface Work {
  readonly marks: readonly Mark[];
  /** The learner says that nothing is wrong. Never together with marks. */
  readonly saysSound: boolean;
  readonly phase: Phase;
  /** Units in the order in which they were lifted. A real wall is opened sparingly: there is a limit. */
  readonly opened: readonly string[];
  /** The notebook, the latest last. */
  readonly readings: readonly Reading[];
  /** The mark that is being made, if any. */
  readonly half: HalfMade | null;
}

export interface WorkState extends Work {
  /** Marks as they were before each step, the latest last. */
  readonly past: readonly (readonly Mark[])[];
}

export type WorkAction =
  | { readonly kind: 'mark'; readonly mark: Mark }
  | { readonly kind: 'change'; readonly index: number; readonly mark: Mark }
  | { readonly kind: 'remove'; readonly index: number }
  | { readonly kind: 'undo' }
  | { readonly kind: 'say sound' }
  | { readonly kind: 'look once more' }
  | { readonly kind: 'back to the wall' }
  | { readonly kind: 'hand in' }
  | { readonly kind: 'start again' }
  /** `most`: how many units may be lifted. */
  | { readonly kind: 'open up'; readonly unit: string; readonly most: number }
  | { readonly kind: 'note'; readonly reading: Reading }
  | { readonly kind: 'forget'; readonly index: number }
  /** What the form of a mark holds; null when it is put away. */
  | { readonly kind: 'fill in'; readonly half: HalfMade | null }
  | { readonly kind: 'take up'; readonly work: Work };

export const FRESH: WorkState = {
  marks: [],
  saysSound: false,
  phase: 'looking',
  opened: [],
  readings: [],
  half: null,
  past: [],
};

/** After hand-in nothing changes but a fresh start. Handing in works only from the review, and only with an answer. */
export function workReducer(state: WorkState, action: WorkAction): WorkState {
  if (action.kind === 'take up') return { ...action.work, past: [] };
  if (action.kind === 'start again') return FRESH;
  if (state.phase === 'handed in') return state;
  switch (action.kind) {
    case 'mark':
      return { ...withMarks(state, [...state.marks, action.mark]), half: null };
    case 'change':
      return {
        ...withMarks(
          state,
          state.marks.map((mark, index) => (index === action.index ? action.mark : mark)),
        ),
        half: null,
      };
    case 'remove':
      return withMarks(
        state,
        state.marks.filter((_, index) => index !== action.index),
      );
    case 'undo': {
      const before = state.past.at(-1);
      return before
        ? { ...state, marks: before, past: state.past.slice(0, -1), half: halfOfNew(state) }
        : state;
    }
    case 'say sound':
      return state.marks.length === 0 ? { ...state, saysSound: true, phase: 'review' } : state;
    case 'look once more':
      return { ...state, phase: 'review' };
    case 'back to the wall':
      return { ...state, phase: 'looking', saysSound: false };
    case 'hand in':
      return canHandIn(state) ? { ...state, phase: 'handed in', half: null } : state;
    case 'open up':
      return state.opened.includes(action.unit) || state.opened.length >= action.most
        ? state
        : { ...state, opened: [...state.opened, action.unit] };
    case 'note':
      return { ...state, readings: [...state.readings, action.reading] };
    case 'forget':
      return { ...state, readings: state.readings.filter((_, index) => index !== action.index) };
    case 'fill in':
      return { ...state, half: action.half };
    default: {
      const unknown: never = action;
      return unknown;
    }
  }
}

export function canHandIn({ phase, marks, saysSound }: Work): boolean {
  return phase === 'review' && (marks.length > 0 || saysSound);
}

function withMarks(state: WorkState, marks: readonly Mark[]): WorkState {
  return { ...state, marks, saysSound: false, past: [...state.past, state.marks], half: halfOfNew(state) };
}

/** A half-made change is dropped when the list changes: its place there may now be another mark's. */
function halfOfNew({ half }: WorkState): HalfMade | null {
  return half?.changing === null ? half : null;
}
