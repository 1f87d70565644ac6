import type { Arrangement } from '../../../lib/trade/set-out';
import { formatLength, type LengthSystem, type Mm } from '../../../lib/units';
import { DimensionLine, Sheet } from './sheet';

const LEFT = 10;
const WIDE = 400;
const ROW = 46;

/** A row of units and, above it, the same row turned end for end. */
export function CourseSheet(props: {
  readonly way: Arrangement;
  readonly wall: Mm;
  readonly unit: Mm;
  readonly system: LengthSystem;
}) {
  const { way, wall, unit, system } = props;
  const scale = WIDE / wall;
  return (
    <Sheet
      label={`A row of ${way.pieces.length} pieces on ${formatLength(wall, system)}, and the same turned`}
      width={420}
      height={170}
    >
      <RowOfPieces
        pieces={[...way.pieces].reverse()}
        y={60}
        shade={0.25}
        {...{ joint: way.joint, unit, scale }}
      />
      <RowOfPieces pieces={way.pieces} y={60 + ROW + 4} shade={0.55} {...{ joint: way.joint, unit, scale }} />
      <DimensionLine x1={LEFT} y1={40} x2={LEFT + WIDE} y2={40} text={formatLength(wall, system)} />
    </Sheet>
  );
}

function RowOfPieces(props: {
  readonly pieces: readonly Mm[];
  readonly joint: Mm;
  readonly unit: Mm;
  readonly scale: number;
  readonly y: number;
  readonly shade: number;
}) {
  const { pieces, joint, unit, scale, y, shade } = props;
  return placesOf(pieces, joint).map(([x, piece]) => (
    <rect
      key={x}
      x={LEFT + x * scale}
      y={y}
      width={piece * scale}
      height={ROW}
      fill="var(--clay)"
      fillOpacity={shade}
      stroke="var(--ink)"
      strokeWidth={piece < unit ? 2 : 0.8}
      strokeDasharray={piece < unit ? '2 2' : undefined}
    />
  ));
}

function placesOf(pieces: readonly Mm[], joint: Mm): readonly (readonly [x: Mm, piece: Mm])[] {
  let x = 0;
  return pieces.map((piece) => {
    const place = [x, piece] as const;
    x += piece + joint;
    return place;
  });
}
