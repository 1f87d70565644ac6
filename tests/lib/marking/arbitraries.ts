import fc from 'fast-check';
import type { CheckId, Hazard } from '../../../lib/inspect/finding';
import type { PartId } from '../../../lib/wall/part-id';
import { sampleFinding, sampleMark } from './samples';

/** Width of the panel on which marks and findings fall, mm. */
export const PANEL_WIDTH = 400;
export const SLACK = 12;

// A small panel, few parts and few names: overlaps, ties and repeats are the rule here, not the exception.
const CHECKS: readonly CheckId[] = ['thick-joint', 'open-head', 'shallow-tie'];
const HAZARDS: readonly Hazard[] = ['could fall', 'lets water in', 'looks'];
const PARTS: readonly PartId[] = ['A', 'A1', 'A1.1', 'A1.2', 'A1.1-bed', 'A2.1'];

const eighths = (most: number) => fc.integer({ min: 0, max: most * 8 }).map((n) => n / 8);
const place = (most: number) => fc.oneof(fc.constantFrom(0, most / 4, most / 2, most), eighths(most));

export const findingsArb = fc.array(
  fc
    .record({
      check: fc.constantFrom(...CHECKS),
      parts: fc.uniqueArray(fc.constantFrom(...PARTS), { minLength: 1, maxLength: 2 }),
      x: place(PANEL_WIDTH / 2),
      y: place(100),
      width: place(PANEL_WIDTH / 2),
      height: place(100),
      hazard: fc.constantFrom(...HAZARDS),
    })
    .map(({ check, parts, x, y, width, height, hazard }) =>
      sampleFinding(check, parts, [x, y, width, height], { hazard }),
    ),
  { maxLength: 5 },
);

export const markArb = fc
  .record({
    part: fc.constantFrom<PartId[]>(...PARTS, 'A7.7', 'A8.8'),
    x: place(PANEL_WIDTH),
    y: place(200),
    fault: fc.constantFrom(...CHECKS),
    sure: fc.constantFrom(1 as const, 2 as const, 3 as const),
  })
  .map(({ part, x, y, fault, sure }) => sampleMark(part, [x, y], fault, { sure }));

export const marksArb = fc.array(markArb, { maxLength: 8 });
