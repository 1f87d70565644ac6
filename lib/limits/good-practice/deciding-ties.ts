import { inches } from '../../units';
import type { Limit } from '../limit';
import { atLeast, atMost, stepped, under } from '../rows';
import { PRACTICE } from './practice';

const BIA_28B = {
  ...PRACTICE,
  topic: 'ties',
  source: 'bia-28b',
  edition: 'BIA Technical Note 28B, December 2005',
  clause: 'summary of recommendations',
} as const;
const FROM_IRC = {
  ...PRACTICE,
  source: 'irc-2021',
  edition: 'IRC 2021',
  note: 'Borrowed from the IRC.',
} as const;
const FROM_NBC = {
  ...PRACTICE,
  source: 'nbc-2020',
  edition: 'NBC 2020',
  note: 'Borrowed from Canada.',
} as const;
/** 0.25 m² */
const TIE_AREA = 250_000;

/** Ties and mortar: what the checks ask for. */
export const TIES_DECIDING: readonly Limit[] = [
  ...under(
    BIA_28B,
    atMost(
      'tie-spacing',
      'Ties of veneer, spacing up the wall and across it, and wall area of each',
      { form: 'tie-area', vertical: inches(18), horizontal: inches(32), area: TIE_AREA },
      'table',
      { note: 'The note prints one tie to 2 2/3 ft², 0.25 m²: the rounded metric figure is used.' },
    ),
  ),
  ...under(
    { ...FROM_IRC, topic: 'ties', clause: 'R703.8.4.1.1' },
    atMost('tie-edge-distance', 'Ties at openings and free ends, distance from the edge', inches(12)),
    atMost('tie-edge-spacing', 'Ties at openings and free ends, spacing up the edge', inches(36)),
    atMost('tie-opening', 'Opening that needs no ties round it, either way', inches(16)),
  ),
  ...under(
    { ...FROM_IRC, topic: 'ties', clause: 'R703.8.4' },
    atLeast('tie-embedment', 'Tie, length in the mortar of the veneer', inches(1.5)),
    atLeast('tie-cover', 'Tie, mortar between its end and the face', inches(5 / 8)),
  ),
  ...under(
    { ...FROM_NBC, topic: 'ties', clause: '9.20.9.5.(1)' },
    atLeast('tie-thickness', 'Corrugated strap tie, thickness', 0.76, 'mm', {
      note: 'Borrowed from Canada; the IRC asks for the same (No. 22 gage), BIA for No. 20, about 0.9 mm.',
    }),
    atLeast('tie-width', 'Corrugated strap tie, width', 22),
  ),
  ...under(
    { ...FROM_NBC, topic: 'mortar', clause: '9.20.3.2.(5)' },
    atMost(
      'mortar-life',
      'Mortar, from mixing to its final place',
      stepped('air temperature', [
        [24.999, 150],
        [Number.POSITIVE_INFINITY, 90],
      ]),
      'minutes',
      {
        note: 'Borrowed from Canada: an hour and a half when the air is at 25 °C or over, two and a half below that.',
      },
    ),
  ),
  ...under(
    { ...PRACTICE, topic: 'mortar', source: 'irc-2021', edition: 'IRC 2021', clause: 'Table R606.2.8' },
    atMost('sand-ratio', 'Sand, in volumes to one of cement and lime together', 3, 'volumes', {
      note: 'Borrowed from the IRC, which prints the table of ASTM C270.',
    }),
  ),
];
