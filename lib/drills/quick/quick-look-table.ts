import type { Topic } from '../../generate/topics';
import type { CheckId } from '../../inspect/finding';
import type { WallKind } from '../../wall/model';
import type { QuickLevel, QuickLook, QuickSort } from './quick-look';

type Sort = readonly [Topic, WallKind];

/** What a look of a round is called, which walls it is taken of, and which faults show in it at each level. */
interface QuickLookRow {
  readonly label: string;
  /** What is shown, in a sentence. */
  readonly shows: string;
  /** A sound wall is drawn from the same list, so that topic and kind give nothing away. */
  readonly sorts: readonly Sort[];
  readonly seen: Readonly<Record<QuickLevel, readonly CheckId[]>>;
}

const of = (topic: Topic, ...kinds: readonly WallKind[]): readonly Sort[] =>
  kinds.map((kind) => [topic, kind]);
const ALL: readonly WallKind[] = ['plain-panel', 'window-panel', 'door-corner', 'gable-end'];

const CLOSE: readonly CheckId[] = [
  'open-head',
  'tapering-bed',
  'thick-joint',
  'thin-joint',
  'twisted-unit',
  'proud-unit',
  'sliver-piece',
];
const TIES: readonly CheckId[] = ['ties-too-far-apart', 'no-tie-at-edge'];
const CUT: readonly CheckId[] = [
  'overhang-too-far',
  'no-bearing-return',
  'short-lintel-bearing',
  'weak-angle',
  'no-lintel',
];

const FLASHING: readonly CheckId[] = ['no-flashing', 'low-flashing', 'short-flashing'];

/**
 * A fault is in the list of a look where it was measured to show: the picture drawn 358 px wide with the fault and without, eight
 * walls a fault and level, changes by 29 pixels and more of more than 40 of 255 steps of a colour on every one of them.
 * Measured on 2026-11-25, least of eight, easy and harder: in front proud unit 39 and 29, bulge 78 and 156, no bearing 721 and 494, a whole bed
 * too thick or thin 198 easy, less when harder; up close open head 108 and 86, taper 500 and 253, thick joint 290 and 64, thin joint 208 and 139,
 * twist 573 and 293, proud 1,745 and 1,459, sliver 49 and 42; before cover ties too far apart 485 and 401, bare edge 255 and 126; cut through
 * 141 and more each; behind a unit bare 300 easy (1 when harder: left out there), ring 149 and 390; tickets 66 and more. Left out: shallow and thin
 * ties (2 to 48), what moves the whole wall a little (level, gauge, perpends, plumb), raked joints and the corner.
 * Measured on 2026-12-01, cut through, without the notes: no flashing 333 and 333, too low behind 313 and 315, short of the face 117 and 31, end dam
 * 62 easy (24 when harder: left out there).
 */
export const QUICK_LOOK_TABLE: Readonly<Record<QuickLook, QuickLookRow>> = {
  face: {
    label: 'From in front',
    shows: 'The whole wall, seen from in front. Joints that are wrong here are a whole bed.',
    sorts: [
      ...of('line', 'plain-panel', 'window-panel', 'gable-end'),
      ...of('joints', 'plain-panel', 'window-panel'),
      ...of('support', 'plain-panel', 'window-panel'),
    ],
    seen: {
      1: ['proud-unit', 'bulge-or-hollow', 'no-bearing-return', 'thick-joint', 'thin-joint'],
      3: ['proud-unit', 'bulge-or-hollow', 'no-bearing-return'],
    },
  },
  close: {
    label: 'Up close',
    shows: 'A piece of the wall, as near as your arm reaches.',
    sorts: [
      ...of('joints', 'plain-panel', 'window-panel', 'gable-end'),
      ...of('bond', 'plain-panel', 'window-panel', 'door-corner'),
      ...of('line', 'plain-panel', 'window-panel'),
    ],
    seen: {
      1: CLOSE,
      3: CLOSE,
    },
  },
  ties: {
    label: 'Before cover',
    shows: 'The backing before the brick went up, with every tie.',
    sorts: of('ties', ...ALL),
    seen: { 1: TIES, 3: TIES },
  },
  cut: {
    label: 'Cut through',
    shows: 'One cut: at the base, or over an opening.',
    sorts: [...of('support', ...ALL), ...of('water', ...ALL)],
    seen: { 1: [...CUT, ...FLASHING, 'no-end-dam'], 3: [...CUT, ...FLASHING] },
  },
  back: {
    label: 'Behind a unit',
    shows: 'The back of one unit that was lifted off.',
    sorts: of('back-mortar', ...ALL),
    seen: { 1: ['missing-back-mortar', 'ring-buttered-back'], 3: ['ring-buttered-back'] },
  },
  tickets: {
    label: 'Mixing tickets',
    shows: 'What was written down at the mixer.',
    sorts: of('mortar', ...ALL),
    seen: { 1: ['stale-mortar', 'lean-mortar'], 3: ['stale-mortar', 'lean-mortar'] },
  },
};

export function seenIn({ look, level }: QuickSort): readonly CheckId[] {
  return QUICK_LOOK_TABLE[look].seen[level];
}
