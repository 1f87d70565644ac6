import { angleVerdict } from '../limits/bound';
import { limitOf, ruleSetTitle } from '../limits/limits';
import { formatLength, inches, type Mm } from '../units';
import { citeLimit, governingLimit } from './cite';
import { type Choice, chooseDraft } from './drafts';
import type { Ask, Draft } from './family';
import { roundLength } from './measure';
import { someInOrder, someOf } from './shuffle';

interface Angle {
  readonly vertical: Mm;
  readonly horizontal: Mm;
  readonly thickness: Mm;
}

const AT = { depth: 90, storeys: 0 };
const THINNER = inches(1 / 16);
const LISTED = 3;

/**
 * Some rows of the table are told: which angle serves an opening? Wrong ones have a large leg and a thin or a short one too, so that
 * the largest is not always right.
 */
export function whichAngle(ask: Ask): Draft {
  const limit = limitOf(ask.rules, 'angle-size') ?? governingLimit('canada', 'angle-size');
  const { bound } = limit;
  if (bound.form !== 'angle-table') throw new RangeError(`${limit.rules}: angle-size is no table`);
  const column = String(bound.caseBy === 'unit depth' ? AT.depth : AT.storeys);
  const rows = someInOrder(
    bound.rows.filter((row) => row.spans[column] !== undefined),
    LISTED,
    ask.chance,
  );
  const spans = rows.map((row) => row.spans[column] ?? 0);
  // Between the two shortest told, so that some of them carry it.
  const [shortest = 0, next = shortest] = [...spans].sort((a, b) => a - b);
  const span = roundLength((shortest + next) / 2, ask.system);
  const table = { ...bound, rows };
  const serves = (angle: Angle) => angleVerdict(table, angle, span, AT).passes;
  const size = (mm: Mm) => formatLength(mm, ask.system);
  const text = ({ vertical, horizontal, thickness }: Angle) =>
    [vertical, horizontal, thickness].map(size).join(' × ');
  const told = (angle: Angle): Choice => ({
    text: text(angle),
    why: serves(angle)
      ? 'It is no smaller than a listed angle that carries this span.'
      : 'Beside every listed angle that carries this span, one of its sizes is too small.',
  });
  const step = ask.system === 'mm' ? 25 : inches(1);
  // Right: of the smallest row that carries it. Wrong: of all rows.
  const smallest = rows.filter((_, index) => (spans[index] ?? 0) >= span).slice(0, 1);
  const right = smallest.flatMap((row) => variants(row, step)).filter(serves);
  const wrong = rows.flatMap((row) => variants(row, step)).filter((angle) => !serves(angle));
  const listed = rows.map((row, index) => `${text(row)} up to ${size(spans[index] ?? 0)}`);
  return chooseDraft(ask, {
    prompt: `Table in use: ${ruleSetTitle(limit.rules)}. Of its steel angles, upright leg first, these carry brick ${size(AT.depth)} deep with no storey above: ${listed.join('; ')}. Which angle serves an opening of ${size(span)}?`,
    right: told(ask.chance.pick(right)),
    wrong: someOf(wrong, wrong.length, ask.chance).map(told),
    explanation:
      'An angle serves when no leg and no thickness is less than that of a listed angle which carries the span. The table or an engineer decides.',
    source: citeLimit(limit, limit.rules),
  });
}

/** The row itself, larger in a leg, and larger in one size while smaller in another. */
function variants({ vertical, horizontal, thickness }: Angle, step: Mm): readonly Angle[] {
  return [
    { vertical, horizontal, thickness },
    { vertical: vertical + step, horizontal, thickness },
    { vertical, horizontal, thickness: thickness - THINNER },
    { vertical: vertical + step, horizontal: horizontal + step, thickness: thickness - THINNER },
    { vertical: vertical - step, horizontal: horizontal + 2 * step, thickness },
    { vertical: vertical + step, horizontal: horizontal - step, thickness },
  ];
}
