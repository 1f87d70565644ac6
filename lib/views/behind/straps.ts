import { type Label, rect, type Shape } from '../../drawing/shape';
import type { Box } from '../../geometry/box';
import type { LengthSystem, Mm } from '../../units';
import type { Tie, Wall } from '../../wall/model';
import type { PanelSurvey } from '../../wall/survey';
import { caliper } from '../pointing/part-readouts';

/** A tie this near an end of its panel carries its text inward, mm. */
const NEAR_END: Mm = 200;

/** A strap hanging from its fixing: width as it is, length = air space and what will lie in the bed. */
export function strapBox(wall: Wall, tie: Tie): Box {
  const long = wall.cavity + tie.embedment;
  return { x: tie.x - tie.width / 2, y: tie.y - long, width: tie.width, height: long };
}

/** A strap on the sheet, with its shadow and the head of its fixing; its panel starts at x. */
export function hangingStrap(wall: Wall, tie: Tie, x: Mm): readonly Shape[] {
  const { x: left, y, width, height } = strapBox(wall, tie);
  return [
    rect({ x: x + left + 5, y: y - 4, width, height }, '#1a1310', 0.4),
    {
      ...rect({ x: x + left, y, width, height }, '#aeb8bd'),
      pen: { paint: '#30383d', width: 1.2, thin: true },
    },
    { kind: 'dot', at: [x + tie.x, tie.y - 9], radius: 5, fill: '#30383d' },
  ];
}

/** What a caliper on the strap reads; shown once the reader is near enough that the texts do not touch. */
export function strapLabel(wall: Wall, { panel }: PanelSurvey, tie: Tie, x: Mm, system: LengthSystem): Label {
  const gaps = panel.studs.filter((stud) => stud !== tie.x).map((stud) => Math.abs(stud - tie.x));
  const room = Math.min(6 * wall.gauge, ...gaps);
  // Beside an end of the panel the text runs inward, so that it covers neither the tape nor the edge of the sheet.
  const anchor = tie.x < NEAR_END ? 'start' : panel.length - tie.x < NEAR_END ? 'end' : 'middle';
  const aside = anchor === 'start' ? -14 : anchor === 'end' ? 14 : 0;
  return {
    at: [x + tie.x + aside, tie.y + 8],
    text: caliper(tie.thickness, system),
    anchor,
    rise: 0.75,
    plate: true,
    room: room * (anchor === 'middle' ? 0.98 : 0.65),
  };
}
