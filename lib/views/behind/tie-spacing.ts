import { ring } from '../../drawing/rings';
import { type Label, lines, type Pieces } from '../../drawing/shape';
import { overlaps } from '../../geometry/box';
import type { Point, Ring } from '../../geometry/polygon';
import { formatLength, type LengthSystem, type Mm } from '../../units';
import type { Tie } from '../../wall/model';
import type { PanelSurvey } from '../../wall/survey';

/** The widest spacing up a column of ties and the widest along a row, dimensioned where they are on a sheet whose texts are `size` mm high. */
export function spacingDimensions(
  panels: readonly PanelSurvey[],
  frames: readonly { readonly panel: string; readonly x: Mm }[],
  size: Mm,
  system: LengthSystem,
): Pieces {
  const up = widest(
    panels.flatMap((survey) => neighbours(survey, 'up')),
    1,
  );
  // From the other end, so that the two stand apart.
  const along = widest(panels.flatMap((survey) => neighbours(survey, 'along')).reverse(), 1);
  const drawn = [up, along].flatMap((pair) => {
    if (pair === undefined) return [];
    const [from, to] = pair;
    const x = frames.find(({ panel }) => panel === from.panel)?.x ?? 0;
    const isUp = pair === up;
    // Beside the straps of the column, or under the heads of the row: on neither.
    const aside = isUp ? size : 0;
    const over = isUp ? 0 : size * 0.5;
    const place = (tie: Tie): Point => [x + tie.x + aside, tie.y + over];
    return [dimension(place(from), place(to), isUp ? to.y - from.y : to.x - from.x, size, system)];
  });
  return { shapes: drawn.flatMap(({ shapes }) => shapes), labels: drawn.map(({ label }) => label) };
}

/** Ties next to each other in a column or a row with no opening between. */
function neighbours({ ties, openings }: PanelSurvey, way: 'up' | 'along'): readonly (readonly [Tie, Tie])[] {
  const far = (tie: Tie): Mm => (way === 'up' ? tie.y : tie.x);
  const line = (tie: Tie): number => (way === 'up' ? Math.round(tie.x) : tie.course);
  return ties.flatMap((tie) => {
    const beyond = ties.filter((other) => line(other) === line(tie) && far(other) > far(tie));
    const next = beyond.reduce<Tie | null>(
      (best, other) => (best && far(best) < far(other) ? best : other),
      null,
    );
    if (next === null) return [];
    const between = { x: tie.x, y: tie.y, width: next.x - tie.x + 1, height: next.y - tie.y + 1 };
    return openings.some((opening) => overlaps(opening, between)) ? [] : [[tie, next] as const];
  });
}

/** The widest; of those no more than `like` mm apart the first. */
function widest(pairs: readonly (readonly [Tie, Tie])[], like: Mm): readonly [Tie, Tie] | undefined {
  const reach = ([from, to]: readonly [Tie, Tie]) => Math.max(to.x - from.x, to.y - from.y);
  return pairs.reduce<readonly [Tie, Tie] | undefined>(
    (best, pair) => (best && reach(best) >= reach(pair) - like ? best : pair),
    undefined,
  );
}

function dimension(from: Point, to: Point, long: Mm, size: Mm, system: LengthSystem) {
  const isUp = from[0] === to[0];
  const [across, up] = isUp ? [size * 0.4, 0] : [0, size * 0.4];
  const end = ([x, y]: Point): Ring => ring(x - across, y - up, x + across, y + up);
  const rings: readonly Ring[] = [[from, to], end(from), end(to)];
  return {
    shapes: [
      lines(rings, { paint: '--raised', width: 5, thin: true }),
      lines(rings, { paint: '--chalk', width: 2.4, thin: true }),
    ],
    label: {
      at: [(from[0] + to[0]) / 2 + (isUp ? size * 0.6 : 0), (from[1] + to[1]) / 2 + (isUp ? 0 : size)],
      text: formatLength(system === 'mm' ? Math.round(long) : long, system),
      anchor: isUp ? 'start' : 'middle',
      strong: true,
      plate: true,
    } as Label,
  };
}
