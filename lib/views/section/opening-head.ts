import { breakLine, cut, SHEATHING } from '../../drawing/cut';
import { ring } from '../../drawing/rings';
import { lines, rect, type Shape } from '../../drawing/shape';
import { rectRing } from '../../geometry/polygon';
import type { Mm } from '../../units';
import type { Wall } from '../../wall/model';

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
