import { breakLine, cut, SHEATHING, sheetMetal } from '../../drawing/cut';
import { ring } from '../../drawing/rings';
import { lines, rect, type Shape } from '../../drawing/shape';
import { type Ring, rectRing } from '../../geometry/polygon';
import type { Mm } from '../../units';
import type { Support, Wall } from '../../wall/model';
import type { PanelSurvey } from '../../wall/survey';
import { flashingAt } from './cut-parts';

/** Head of the frame and the glass, with the room's lining behind. */
export function frameUnder(wall: Wall, head: Mm, low: Mm): readonly Shape[] {
  const back = -wall.family.depth - wall.cavity - SHEATHING;
  const frame = { x: back - 10, y: head - 78, width: 78, height: 66 };
  const pane = frame.x + 36;
  return [
    rect({ x: back - 140, y: head - 12, width: 140 + SHEATHING, height: 12 }, 'url:cut-wood'),
    cut(rectRing(frame.x, frame.y, frame.width, frame.height), 'url:cut-wood'),
    rect({ x: pane, y: low, width: 22, height: frame.y - low }, '#9db6c4', 0.6),
    lines([ring(pane, low, pane, frame.y), ring(pane + 22, low, pane + 22, frame.y)], {
      paint: '#4d6472',
      width: 1.4,
    }),
    breakLine(pane - 30, pane + 52, low),
  ];
}

export function flashingOver(wall: Wall, survey: PanelSurvey, lintel: Support, x: Mm): readonly Shape[] {
  const laid = flashingAt(wall, survey, x, lintel.y);
  if (laid === undefined || lintel.angle === undefined) return [];
  const { back, front, y, angle } = lintel;
  const behind = -wall.family.depth - wall.cavity + 2;
  const crest = y - angle.thickness + angle.vertical + 2;
  const over: Ring = ring(front + 3, y + 1.5, front + 9, y - 7);
  // An angle shallower than the units stands inside them: the flashing then drops behind the units.
  const within = back > -wall.family.depth;
  const run: Ring = within
    ? [[behind, crest + 130], [behind, y + 46], [-wall.family.depth - 3, y + 1.5], ...over]
    : [
        [behind, crest + 130],
        [behind, crest + 44],
        [Math.max(back, behind), crest],
        [back + angle.thickness + 1.5, crest],
        [back + angle.thickness + 1.5, y + 1.5],
        ...over,
      ];
  return sheetMetal(run);
}
