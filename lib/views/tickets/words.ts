import { inSystem } from '../../units';
import type { Batch } from '../../wall/model';
import { batchNumber } from '../../wall/part-id';

/** "courses 1 to 9", or "course 4". */
export function coursesText({ fromCourse, toCourse }: Batch): string {
  return fromCourse === toCourse ? `course ${fromCourse}` : `courses ${fromCourse} to ${toCourse}`;
}

/** Cement, lime and sand as they were counted: "1 : 0.5 : 4". */
export function volumesText({ portland, lime, sand }: Batch): string {
  return [portland, lime, sand].map(shortNumber).join(' : ');
}

/** "25 °C" and "77 °F". */
export function airTexts({ air }: Batch): readonly [celsius: string, fahrenheit: string] {
  const degrees = (value: number) => `${value}`.replace('-', '−');
  return [`${degrees(air)} °C`, `${degrees(Math.round(inSystem(air, '°C', 'inches').value))} °F`];
}

/** All that a ticket says, in one line to be read aloud or listed; never whether it is right. */
export function ticketName(batch: Batch): string {
  return `Mixing ${batchNumber(batch.id)}${ticketReadout(batch)}`;
}

/** The same without the name of the mixing: ", courses 1 to 9, 1 cement, …". */
export function ticketReadout(batch: Batch): string {
  const { portland, lime, sand, minutes } = batch;
  const [celsius, fahrenheit] = airTexts(batch);
  return [
    '',
    coursesText(batch),
    `${shortNumber(portland)} cement, ${shortNumber(lime)} lime, ${shortNumber(sand)} sand by volume`,
    'sand damp and loose',
    `air ${celsius} or ${fahrenheit}`,
    `${minutes} minutes from mixing to the last unit laid`,
  ].join(', ');
}

function shortNumber(value: number): string {
  return String(Math.round(value * 100) / 100);
}
