import { hash32 } from '../hash';
import { type QuickSort, sortNumber } from './quick-look';

export const WALLS_A_ROUND = 10;
/** A round is named by a whole number from 0 to this: short enough to read out. */
export const MOST_ROUND = 999_999;

/** Seconds to look at each wall; null: as long as the reader likes. */
export const LOOKING_TIMES = [10, 20, 30, null] as const;
export type LookingTime = (typeof LOOKING_TIMES)[number];

/** What a place in a round asks for. The seed is where the search for such a wall starts. */
export interface QuickAsk {
  readonly faulty: boolean;
  readonly seed: number;
  /** Draws the kind of wall: a whole number, evenly spread. */
  readonly draw: number;
}

/** Faulty walls in a round: one of these numbers, by chance. Near half, and not known, so that counting those gone by tells little of those to come. */
const FAULTY_IN_A_ROUND = [4, 5, 6] as const;

/** What place `place` (from 0) of a round asks for. The same for everyone who names the round; one number asks otherwise of each sort. */
export function askOf(
  { round: number, ...sort }: QuickSort & { readonly round: number },
  place: number,
  mostSeed: number,
): QuickAsk {
  const salt = sortNumber(sort);
  const round = salt === 0 ? number : hash32(number, 10 * WALLS_A_ROUND + salt);
  const many = FAULTY_IN_A_ROUND[hash32(round, WALLS_A_ROUND) % FAULTY_IN_A_ROUND.length] ?? 5;
  const places = Array.from({ length: WALLS_A_ROUND }, (_, each) => each);
  const shuffled = places.sort((a, b) => hash32(round, a) - hash32(round, b));
  return {
    faulty: shuffled.indexOf(place) < many,
    seed: hash32(round, 2 * WALLS_A_ROUND + place) % (mostSeed + 1),
    draw: hash32(round, 3 * WALLS_A_ROUND + place),
  };
}

export interface QuickState {
  /** `covered`: the time is up, the wall is hidden and the answer still open. */
  readonly phase: 'ready' | 'looking' | 'covered' | 'over';
  readonly time: LookingTime;
  /** Left for the wall shown, ms; null without a clock. */
  readonly left: number | null;
  readonly paused: boolean;
  /** True: said to be faulty. */
  readonly answers: readonly boolean[];
}

/** What a reload in the middle of a round must not lose. */
export type BegunRound = Pick<QuickState, 'time' | 'answers'>;

export type QuickAction =
  | { readonly kind: 'choose time'; readonly time: LookingTime }
  /** Goes back to a round that was broken off. */
  | { readonly kind: 'take up'; readonly begun: BegunRound }
  | { readonly kind: 'start' }
  | { readonly kind: 'pass'; readonly ms: number }
  | { readonly kind: 'pause'; readonly paused: boolean }
  | { readonly kind: 'answer'; readonly faulty: boolean };

export const QUICK_START: QuickState = { phase: 'ready', time: 30, left: null, paused: false, answers: [] };

/** An answer can be given while the wall is seen and after it is covered; time runs only while it is seen. */
export function quickReducer(state: QuickState, action: QuickAction): QuickState {
  switch (action.kind) {
    case 'choose time':
      return state.phase === 'ready' ? { ...state, time: action.time } : state;
    case 'take up':
      return state.phase === 'ready' ? { ...state, ...action.begun } : state;
    case 'start':
      return state.phase === 'ready' ? { ...state, phase: 'looking', left: full(state.time) } : state;
    case 'pass': {
      if (state.phase !== 'looking' || state.paused || state.left === null) return state;
      const left = Math.max(0, state.left - action.ms);
      return { ...state, left, phase: left === 0 ? 'covered' : 'looking' };
    }
    case 'pause':
      return state.phase === 'looking' ? { ...state, paused: action.paused } : state;
    case 'answer': {
      if (state.phase !== 'looking' && state.phase !== 'covered') return state;
      const answers = [...state.answers, action.faulty];
      const over = answers.length === WALLS_A_ROUND;
      return { ...state, answers, paused: false, phase: over ? 'over' : 'looking', left: full(state.time) };
    }
    default: {
      const unknown: never = action;
      return unknown;
    }
  }
}

function full(time: LookingTime): number | null {
  return time === null ? null : time * 1000;
}
