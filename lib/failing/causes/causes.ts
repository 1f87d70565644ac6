import type { FailingWall } from '../state/model';
import type { Sign } from './named-signs';
import * as there from './named-signs';
import { signsOf } from './signs';

/** A cause: what must be there, what rules it out, and what speaks for it but need not be there. In our drawn walls: strong evidence, not law. */
interface Cause {
  readonly cause: string;
  readonly needs: readonly Sign[];
  readonly bars: readonly Sign[];
  readonly fits: readonly Sign[];
}

/** In the order in which they are told. */
const CAUSES: readonly Cause[] = [
  {
    cause: 'corner-settlement',
    needs: [there.ONE_END_DOWN, there.TEAR_WIDE_AT_HEAD],
    bars: [there.TEAR_EVEN, there.BOTH_ENDS_DOWN, there.OUT_AT_CORNER],
    fits: [there.THROUGH_UNITS],
  },
  {
    cause: 'tree-drying',
    needs: [there.ONE_END_DOWN, there.TEAR_WIDE_AT_HEAD],
    bars: [there.TEAR_EVEN, there.BOTH_ENDS_DOWN, there.OUT_AT_CORNER],
    fits: [there.DRY_SEASON],
  },
  {
    cause: 'sagging',
    needs: [there.MIDDLE_DOWN, there.TEAR_WIDE_AT_FOOT],
    bars: [there.LEVEL_HOLDS],
    fits: [there.THROUGH_UNITS],
  },
  {
    cause: 'hogging',
    needs: [there.BOTH_ENDS_DOWN, there.TEAR_WIDE_AT_HEAD],
    bars: [there.LEVEL_HOLDS],
    fits: [there.THROUGH_UNITS],
  },
  {
    cause: 'clay-expansion',
    needs: [there.CLAY, there.OUT_AT_CORNER],
    bars: [there.CONCRETE, there.ONE_END_DOWN],
    fits: [there.DRY_SEASON, there.THROUGH_UNITS],
  },
  {
    cause: 'drying-shrinkage',
    needs: [there.CONCRETE, there.TEAR_EVEN, there.LEVEL_HOLDS],
    bars: [there.CLAY, there.OUT_AT_CORNER],
    fits: [there.THROUGH_UNITS],
  },
  {
    cause: 'sulphates',
    needs: [there.OPEN_EVERYWHERE, there.WHITE],
    bars: [there.OPEN_AT_TIES_ALONE],
    fits: [there.LINTEL_UP],
  },
  {
    cause: 'lintel-sags',
    needs: [there.LINTEL_LOW_IN_MIDDLE, there.CRACKS_OVER_OPENING],
    bars: [there.LINTEL_UP, there.LINTEL_END_DOWN],
    fits: [],
  },
  {
    cause: 'lintel-short',
    needs: [there.LINTEL_END_DOWN, there.CRACKS_OVER_OPENING],
    bars: [there.LINTEL_UP],
    fits: [there.CRUSHED],
  },
  {
    cause: 'rusting-lintel',
    needs: [there.LINTEL_UP, there.OPEN_OVER_BEARING, there.RUST_AT_LINTEL],
    bars: [there.LINTEL_LOW_IN_MIDDLE],
    fits: [],
  },
  {
    cause: 'rusting-ties',
    needs: [there.OPEN_AT_TIES_ALONE],
    bars: [there.OPEN_EVERYWHERE, there.WHITE],
    fits: [there.RUST_AT_TIES, there.LINTEL_UP],
  },
  { cause: 'missing-ties', needs: [there.BELLY, there.OPEN_AT_BELLY], bars: [there.LEAN], fits: [] },
  { cause: 'leaning-out', needs: [there.LEAN], bars: [there.BELLY, there.BOW], fits: [] },
  {
    cause: 'frost',
    needs: [there.FLAKES, there.FLAKES_WET],
    bars: [there.FLAKES_IN_BLOOM, there.FLAKES_BESIDE_PATCH],
    fits: [there.SOFT, there.COLD_SEASON],
  },
  {
    cause: 'salts',
    needs: [there.FLAKES, there.FLAKES_IN_BLOOM],
    bars: [there.FLAKES_WET, there.FLAKES_BESIDE_PATCH],
    fits: [there.DRY_SEASON],
  },
  {
    cause: 'water-at-cap',
    needs: [there.FLAKES_AT_TOP, there.FLAKES_WET, there.LIME],
    bars: [there.FLAKES_IN_BLOOM],
    fits: [there.SOFT, there.COLD_SEASON],
  },
  { cause: 'weak-mortar', needs: [there.SOFT], bars: [there.FLAKES, there.WHITE], fits: [] },
  {
    cause: 'hard-repointing',
    needs: [there.FLAKES, there.FLAKES_BESIDE_PATCH],
    bars: [there.FLAKES_WET, there.FLAKES_IN_BLOOM],
    fits: [],
  },
  { cause: 'peeling-back', needs: [there.HOLLOW], bars: [there.FLAKES], fits: [] },
  {
    cause: 'blow',
    needs: [there.CRUSHED, there.DRIVEN_IN],
    bars: [there.LEAN, there.BELLY],
    fits: [there.SCUFF],
  },
  { cause: 'bowing', needs: [there.CLAY, there.BOW], bars: [there.CONCRETE], fits: [there.BOTH_HELD] },
];

/** A sign of a cause, and whether the wall shows it. */
export interface Seen {
  readonly sign: string;
  readonly there: boolean;
}

/** A cause held against a wall. */
export interface Weighed {
  readonly cause: string;
  readonly needs: readonly Seen[];
  readonly bars: readonly Seen[];
  readonly fits: readonly Seen[];
  /** All that it needs is there, and nothing that bars it: the wall allows it. No likelihood is meant. */
  readonly inK: boolean;
}

/** Every cause held against a wall. From its state and geometry alone. */
export function causesOf(failing: FailingWall): readonly Weighed[] {
  const signs = signsOf(failing);
  const seen = (list: readonly Sign[]): readonly Seen[] =>
    list.map(({ sign: words, isThere }) => ({ sign: words, there: isThere(signs) }));
  return CAUSES.map(({ cause, needs, bars, fits }) => {
    const needed = seen(needs);
    const barred = seen(bars);
    return {
      cause,
      needs: needed,
      bars: barred,
      fits: seen(fits),
      inK: needed.every(({ there }) => there) && !barred.some(({ there }) => there),
    };
  });
}

/** K: the causes that the wall allows. */
export function allowedBy(weighed: readonly Weighed[]): readonly string[] {
  return weighed.filter(({ inK }) => inK).map(({ cause }) => cause);
}
