import { type FailingWall, type Move, STILL } from '../../failing/state/model';
import type { Mm } from '../../units';
import type { Unit, Wall } from '../../wall/model';

const PER_METRE = 1000;

/** The wall as it stands now, to be drawn: every unit where it has gone, one that is cut through as two, without what has come away. Off the grid. */
export function movedWall({ survey: { wall }, state }: FailingWall): Wall {
  const blooms = state.zones.filter(({ kind }) => kind === 'bloom');
  const flaked = new Set(state.damage.filter(({ kind }) => kind === 'spall').map(({ unit }) => unit));
  const units = wall.units.flatMap((laid): readonly Unit[] => {
    if (state.missing.has(laid.id)) return [];
    const isWhite =
      !flaked.has(laid.id) &&
      blooms.some(
        ({ panel, box }) =>
          panel === laid.panel && laid.y >= box.y - 1 && laid.y + laid.height <= box.y + box.height + 1,
      );
    const unit: Unit = isWhite ? { ...laid, condition: 'bloom' } : laid;
    const move = state.moves.get(laid.id) ?? STILL;
    const split = state.splits.get(laid.id);
    if (split === undefined) return [moved(unit, unit, move)];
    return [
      moved(pieceOf(unit, unit.x, split.x), unit, move),
      moved(pieceOf(unit, split.x, unit.x + unit.length), unit, split.right),
    ];
  });
  return {
    ...wall,
    units,
    supports: wall.supports.map((support) => {
      const move = state.supports.get(support.id);
      return move === undefined ? support : { ...support, y: support.y + move.middle };
    }),
  };
}

/** What of a unit lies between two uprights. */
function pieceOf(unit: Unit, from: Mm, to: Mm): Unit {
  const share = (to - from) / unit.length;
  const { cut } = unit;
  return {
    ...unit,
    x: from,
    y: unit.y - (unit.fall * (from - unit.x)) / unit.length,
    length: to - from,
    fall: unit.fall * share,
    twist: unit.twist * share,
    ...(cut === undefined
      ? {}
      : {
          cut: {
            left: from === unit.x ? Math.min(cut.left, to - from) : 0,
            right: to === unit.x + unit.length ? Math.min(cut.right, to - from) : 0,
          },
        }),
  };
}

/** A piece moved with its unit: small turns, about the middle of the whole unit. */
function moved(piece: Unit, whole: Unit, { u, v, w, turn, lean }: Move): Unit {
  const angle = turn / PER_METRE;
  const out = piece.x - whole.x - whole.length / 2;
  return {
    ...piece,
    x: piece.x + u,
    y: piece.y + v + angle * out,
    fall: piece.fall - angle * piece.length,
    set: piece.set + w,
    lean: piece.lean + (lean * piece.height) / PER_METRE,
  };
}
