import type { Wall } from './model';
import { type PartId, parsePartId } from './part-id';
import type { Part } from './parts';
import type { SurveyedWall } from './surveyed';

/** What a reader calls a part. Courses count from the bottom, units from the left. */
export function partName(part: Part, wall: Wall): string {
  const name = bareName(part, wall);
  return wall.panels.length > 1 && part.kind !== 'corner' && part.kind !== 'batch' && part.kind !== 'panel'
    ? `${name}, wall ${part.panel}`
    : name;
}

/** Names the parts of a wall as a reader does; what is no part of it by its id. */
export function namesOf({ wall, parts }: SurveyedWall): (id: string) => string {
  return (id) => {
    const part = parts.get(id);
    return part ? partName(part, wall) : id;
  };
}

function bareName(part: Part, wall: Wall): string {
  const name = parsePartId(part.id);
  if (name === null) return part.id;
  switch (name.kind) {
    case 'unit':
      return `Course ${name.course}, ${tallName(part, wall)}unit ${name.position}`;
    case 'bed':
      return `Bed joint under unit ${name.position}, course ${name.course}`;
    case 'head':
      return `Head joint between units ${name.position} and ${name.right}, course ${name.course}`;
    case 'course':
      return `The whole of course ${name.course}`;
    case 'panel':
      return wall.panels.length > 1 ? `The whole of wall ${name.panel}` : 'The whole panel';
    case 'corner':
      return 'The corner';
    case 'edge':
      return `The ${name.end} end`;
    case 'support':
      return supportName(part.id, wall);
    case 'opening':
      return `The ${name.what} opening`;
    case 'tie':
      return `Tie ${name.position} on course ${name.course}`;
    case 'batch':
      return `Mixing ${name.number}`;
    default: {
      const unknown: never = name;
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

function supportName(id: PartId, wall: Wall): string {
  const support = wall.supports.find((each) => each.id === id);
  if (support?.kind === 'ledge') return `The ${support.material} ledge`;
  const over = wall.openings.find((each) => each.id === support?.opening);
  return `The lintel over the ${over?.kind ?? 'window'}`;
}
