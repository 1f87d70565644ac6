import { isOver, tellsDrainage } from '../wall/drainage';
import type { Support } from '../wall/model';
import type { Placed, Survey } from '../wall/survey';
import { inWords, type Place, type ReadingContext, worked } from './read-off';
import type { Reading } from './reading';
import { unitAt } from './unit-at';

const THERE = { unit: 'there or not', resolution: 1, error: 0 } as const;

/** Looks up from below: is there a lintel over the opening, and what does a unit or a course stand on? */
export function readMirror({ part, panel, survey }: Place, context: ReadingContext): readonly Reading[] {
  if (part.kind === 'opening') {
    const opening = panel.openings.find(({ id }) => id === part.id);
    if (opening === undefined) return [];
    const head = opening.y + opening.height;
    const over = panel.supports.filter(
      ({ kind, y, fromX, toX }) =>
        kind === 'lintel' &&
        Math.abs(y - head) < survey.wall.gauge / 2 &&
        Math.min(toX, opening.x + opening.width) > Math.max(fromX, opening.x),
    );
    const bears = over.find(({ material }) => material !== 'wood');
    const words = bears ? wordsOf(bears) : over.length > 0 ? 'wood only' : 'no lintel to be seen';
    return [worked(context, 'Lintel over the opening', { ...THERE, value: bears ? 1 : 0, words })];
  }
  if (part.kind === 'support') {
    const support = panel.supports.find(({ id }) => id === part.id);
    return support
      ? [inWords(context, 'Made of', wordsOf(support)), ...flashingOn(survey, support, context)]
      : [];
  }
  const placed = unitAt(part, panel);
  return placed ? [inWords(context, 'Stands on', under(placed))] : [];
}

function flashingOn({ wall }: Survey, support: Support, context: ReadingContext): readonly Reading[] {
  if (!tellsDrainage(wall)) return [];
  const isThere = wall.flashings.some((flashing) => isOver(flashing, support, wall.gauge));
  const words = isThere ? 'a flashing' : 'no flashing to be seen';
  return [worked(context, 'Flashing on it', { ...THERE, value: isThere ? 1 : 0, words })];
}

function under({ support, below }: Placed): string {
  if (support !== null) return wordsOf(support);
  return below.length > 0 ? 'the course below' : 'nothing to be seen';
}

function wordsOf({ kind, material, angle }: Support): string {
  if (angle !== undefined) return 'a steel angle';
  return `${material} ${kind}`;
}
