import type { Box } from '../../../lib/geometry/box';
import type { MappedTie, TieMap } from '../../../lib/trade/tie-map';
import type { Mm } from '../../../lib/units';
import { Sheet } from './sheet';

const SHEET = 420;
const EDGE = 10;

/** A panel with its ties and the patches of wall they hold. */
export function TieSheet(props: {
  readonly map: TieMap;
  readonly width: Mm;
  readonly height: Mm;
  readonly opening: Box | null;
  readonly label: string;
}) {
  const { map, width, height, opening, label } = props;
  const scale = (SHEET - 2 * EDGE) / width;
  const high = height * scale;
  const busiest = map.ties.reduce<number>(
    (best, tie, index) => (tie.area > (map.ties[best]?.area ?? 0) ? index : best),
    0,
  );
  return (
    <Sheet label={label} width={SHEET} height={high + 2 * EDGE}>
      <g transform={`translate(${EDGE} ${EDGE + high}) scale(${scale} ${-scale})`}>
        <rect width={width} height={height} fill="var(--clay)" fillOpacity="0.16" />
        <path
          d={patchesOf(map, width, height, (owner) => owner === busiest)}
          fill="var(--ochre)"
          fillOpacity="0.55"
        />
        <path d={bordersOf(map, width, height)} stroke="var(--slate)" strokeWidth="9" fill="none" />
        {opening && <rect {...opening} fill="var(--paper)" stroke="var(--ink)" strokeWidth="14" />}
        <rect width={width} height={height} fill="none" stroke="var(--ink)" strokeWidth="14" />
        {map.ties.map((tie, index) => (
          <TieMark key={`${tie.x} ${tie.y}`} tie={tie} isBusiest={index === busiest} />
        ))}
      </g>
    </Sheet>
  );
}

function TieMark({ tie, isBusiest }: { readonly tie: MappedTie; readonly isBusiest: boolean }) {
  return (
    <>
      <path
        d={`M${tie.x - 45} ${tie.y}h90M${tie.x} ${tie.y - 28}v56`}
        stroke="var(--chalk)"
        strokeWidth={24}
      />
      {isBusiest && (
        <path
          d={`M${tie.x - 80} ${tie.y - 80}l160 160M${tie.x - 80} ${tie.y + 80}l160 -160`}
          stroke="var(--ink)"
          strokeWidth="16"
        />
      )}
    </>
  );
}

/** The squares of chosen owners, one rectangle for each. */
function patchesOf(
  { columns, rows, owners }: TieMap,
  width: Mm,
  height: Mm,
  isChosen: (owner: number) => boolean,
): string {
  const wide = width / columns;
  const high = height / rows;
  return owners
    .flatMap((owner, index) => {
      if (!isChosen(owner)) return [];
      return [`M${(index % columns) * wide} ${Math.floor(index / columns) * high}h${wide}v${high}h${-wide}z`];
    })
    .join('');
}

/** Lines where the owner changes. */
function bordersOf({ columns, rows, owners }: TieMap, width: Mm, height: Mm): string {
  const wide = width / columns;
  const high = height / rows;
  let path = '';
  owners.forEach((owner, index) => {
    const column = index % columns;
    const row = Math.floor(index / columns);
    if (column + 1 < columns && owners[index + 1] !== owner)
      path += `M${(column + 1) * wide} ${row * high}v${high}`;
    if (row + 1 < rows && owners[index + columns] !== owner)
      path += `M${column * wide} ${(row + 1) * high}h${wide}`;
  });
  return path;
}
