import { mixingNumber } from '../../lib/views/tickets/words';
import type { Wall } from '../../lib/wall/model';
import type { Part } from '../../lib/wall/parts';

/** What a reader calls a part. Courses count from the bottom, units from the left. */
export function partName(part: Part, wall: Wall): string {
  const name = bareName(part, wall);
  return wall.panels.length > 1 && part.kind !== 'corner' && part.kind !== 'batch' && part.kind !== 'panel'
    ? `${name}, wall ${part.panel}`
    : name;
}

function bareName(part: Part, wall: Wall): string {
  const { id, kind, course } = part;
  switch (kind) {
    case 'unit':
      return `Course ${course}, ${tallName(part, wall)}unit ${position(id)}`;
    case 'bed':
      return `Bed joint under unit ${position(id)}, course ${course}`;
    case 'head':
      return `Head joint between units ${position(id).replace('/', ' and ')}, course ${course}`;
    case 'course':
      return `The whole of course ${course}`;
    case 'panel':
      return wall.panels.length > 1 ? `The whole of wall ${id}` : 'The whole panel';
    case 'corner':
      return 'The corner';
    case 'edge':
      return id.endsWith('left-end') ? 'The left end' : 'The right end';
    case 'support':
      return supportName(id, wall);
    case 'opening':
      return id.includes('door') ? 'The door opening' : 'The window opening';
    case 'tie':
      return `Tie ${position(id)} on course ${course}`;
    case 'batch':
      return `Mixing ${mixingNumber(id)}`;
    default: {
      const unknown: never = kind;
      return unknown;
    }
  }
}

/** What stands through three courses is called by its kind, a quoin with the end it stands at. */
function tallName({ id, panel, x, width }: Part, wall: Wall): string {
  const unit = wall.units.find((each) => each.id === id);
  if (unit?.kind === 'soldier') return 'soldier, ';
  const long = wall.panels.find((each) => each.id === panel)?.length ?? 0;
  return unit?.kind === 'quoin' ? `quoin at the ${x + width / 2 < long / 2 ? 'left' : 'right'} end, ` : '';
}

/** 'A12.5' -> '5'; 'A12.4/5' -> '4/5'; 'A12.5-bed' -> '5'; 'A-tie12.3' -> '3'. */
function position(id: string): string {
  return id.slice(id.indexOf('.') + 1).replace(/-bed$/, '');
}

function supportName(id: string, wall: Wall): string {
  const support = wall.supports.find((each) => each.id === id);
  if (support?.kind === 'ledge') return `The ${support.material} ledge`;
  return support?.opening?.includes('door') ? 'The lintel over the door' : 'The lintel over the window';
}
