import { TEXT_SHARE } from '../../drawing/label-nodes';
import { ring } from '../../drawing/rings';
import { type Drawing, type Label, lines, type Pieces, rect, type Shape } from '../../drawing/shape';
import type { Box } from '../../geometry/box';
import { spacedOut } from '../../geometry/interval';
import type { Ring } from '../../geometry/polygon';
import type { Mm } from '../../units';
import type { Batch } from '../../wall/model';
import { batchNumber } from '../../wall/part-id';
import type { Survey } from '../../wall/survey';
import { ViewError } from '../view';
import { laidStrip } from './laid-strip';
import { ticketPaper } from './paper';
import { airTexts, coursesText, volumesText } from './words';

/** The sheet, mm: narrow enough to be read on a phone as it stands. */
const WIDE: Mm = 800;
const TEXT: Mm = Math.round(WIDE * TEXT_SHARE);
const LARGE: Mm = 40;
const PAPER: Box = { x: 22, y: 0, width: 568, height: 364 };
const INSIDE: Mm = 26;
/** From the foot of one ticket to the foot of the next: the bar, the clip, and what a result says of the lower one. */
const PITCH: Mm = 466;
const MARGIN: Mm = 30;
const STRIP: Pick<Box, 'x' | 'width'> = { x: 664, width: 116 };
/** From the strip to the bracket beside it, and how far its ends reach, mm. */
const BRACKET: Mm = 16;
const TAG: Pick<Box, 'width' | 'height'> = { width: 62, height: 44 };

/** Heights of the lines of a ticket above its foot, mm. */
const LINE = { head: 304, mix: 240, volumes: 192, sand: 146, air: 87, minutes: 31 } as const;
const RULES: readonly Mm[] = [270, 116, 59];

/**
 * What was written down at the mixer: a ticket a mixing, the first at the bottom, as the wall went up, each tied to the courses that
 * were laid with it in a strip of the wall. The strip is at one scale, the tickets are at none.
 */
export function ticketsView(survey: Survey): Drawing {
  const { batches } = survey.wall;
  if (batches.length === 0) throw new ViewError('tickets: this wall has no mixing tickets');
  const high = batches.length * PITCH;
  const strip = laidStrip(survey, { ...STRIP, y: 0, height: high - MARGIN });
  const tickets = batches.map((batch, index) => ticketAt(batch, index * PITCH));
  const reaches = batches.map((batch) => strip.reachOf(batch));
  const ties = reaches.map((reach, index) => tieTo(reach, strip.left, index * PITCH));
  const tags = tagsOf(
    batches.map((batch, index) => ({ ...batch, ...(reaches[index] ?? { low: 0, high: 0 }) })),
    high - MARGIN,
  );
  return {
    box: { x: 0, y: -MARGIN, width: WIDE, height: high + MARGIN },
    shapes: [
      ...strip.shapes,
      ...ties.flatMap((tie, at) => [
        tie,
        ...tags.flatMap(({ batch, shape }) => (batch === at ? [shape] : [])),
      ]),
      ...tickets.flatMap(({ shapes }) => shapes),
    ],
    labels: [...tags.map(({ label }) => label), ...tickets.flatMap(({ labels }) => labels)],
    // A mark lies on the ticket, not on the courses in the strip.
    frames: [],
    spots: batches.map(({ id }, index) => ({ part: id, ...PAPER, y: index * PITCH })),
  };
}

function ticketAt(batch: Batch, low: Mm): Pieces {
  const [left, right] = [PAPER.x + INSIDE, PAPER.x + PAPER.width - INSIDE];
  const printed = (y: Mm, text: string): Label => ({
    at: [left, low + y],
    text,
    anchor: 'start',
    written: TEXT,
    ofLook: true,
  });
  const filledIn = (y: Mm, text: string, written: Mm = TEXT): Label => ({
    at: [right, low + y],
    text,
    anchor: 'end',
    written,
    strong: true,
  });
  return {
    shapes: ticketPaper(
      batch.id,
      { ...PAPER, y: low },
      RULES.map((y) => low + y),
    ),
    labels: [
      {
        ...filledIn(LINE.head, `Mixing ${batchNumber(batch.id)}`, LARGE),
        at: [left, low + LINE.head],
        anchor: 'start',
        ofLook: true,
      },
      { ...filledIn(LINE.head, coursesText(batch)), ofLook: true },
      printed(LINE.mix, 'Cement : lime : sand'),
      filledIn(LINE.volumes, volumesText(batch), LARGE),
      printed(LINE.volumes, 'by volume'),
      printed(LINE.sand, 'sand damp and loose'),
      printed(LINE.air, 'Air'),
      filledIn(LINE.air, airTexts(batch).join(' · ')),
      printed(LINE.minutes, 'Mixing to last unit laid'),
      filledIn(LINE.minutes, `${batch.minutes} min`),
    ],
  };
}

/** A bracket along the courses laid with a mixing, and a string from it to the ticket. */
function tieTo({ low, high }: { readonly low: Mm; readonly high: Mm }, left: Mm, ticket: Mm): Shape {
  const x = left - BRACKET;
  const gap = Math.min(4, (high - low) / 4);
  const bracket: Ring = ring(left - 4, low + gap, x, low + gap, x, high - gap, left - 4, high - gap);
  const string: Ring = ring(x, (low + high) / 2, PAPER.x + PAPER.width, ticket + PAPER.height / 2);
  return lines([bracket, string], { paint: '--ink', width: 1.6, thin: true });
}

/** The numbers of the lowest and the highest course of each mixing, on the strip where those courses lie; none on another. */
function tagsOf(
  batches: readonly (Batch & { readonly low: Mm; readonly high: Mm })[],
  top: Mm,
): readonly { readonly batch: number; readonly shape: Shape; readonly label: Label }[] {
  const tags = batches.flatMap(({ fromCourse, toCourse, low, high }, batch) => {
    // Where a few courses have no room for two tags, one tells both.
    if (high - low < 2 * TAG.height) {
      const both = fromCourse === toCourse ? `${fromCourse}` : `${fromCourse}–${toCourse}`;
      return [{ batch, text: both, y: (low + high) / 2 }];
    }
    return [
      { batch, text: `${fromCourse}`, y: low + TAG.height / 2 },
      { batch, text: `${toCourse}`, y: high - TAG.height / 2 },
    ];
  });
  const levels = spacedOut(
    tags.map(({ y }) => y),
    TAG.height,
    top - TAG.height / 2,
  );
  const middle = STRIP.x + STRIP.width / 2;
  return tags.map(({ batch, text, y }, index) => {
    const level = levels[index] ?? y;
    return {
      batch,
      shape: rect({ ...TAG, x: middle - TAG.width / 2, y: level - TAG.height / 2 }, '#f5efdd'),
      label: { at: [middle, level], text, anchor: 'middle', written: TEXT, strong: true, ofLook: true },
    };
  });
}
