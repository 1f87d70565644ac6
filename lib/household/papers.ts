/** A question for the mason or the builder, and how to tell a good answer. */
export interface Paper {
  readonly ask: string;
  readonly good: string;
}

export interface PaperSet {
  readonly id: string;
  readonly title: string;
  readonly lead: string;
  readonly papers: readonly Paper[];
}

/** What to ask and which papers to keep. Source: trade brief of this site, section 4; common practice, in our own words. */
export const PAPER_SETS: readonly PaperSet[] = [
  {
    id: 'before',
    title: 'Before you hire',
    lead: 'Ask these before you sign. Write the answers into the agreement.',
    papers: [
      {
        ask: 'Which code and which guide will you work to?',
        good: 'They name one, with its year. “The way we always do it” is not an answer.',
      },
      {
        ask: 'May I see a sample, about a square metre or yard, before you start?',
        good: 'Yes. It stays on site until the end, and the wall is compared with it.',
      },
      {
        ask: 'Which ties do you use, how far apart, and what do you fix them to?',
        good: 'They name the make, both spacings and the fixing. The spacing is within the limit for your place.',
      },
      {
        ask: 'Will you photograph each row of ties with a tape in the picture?',
        good: 'Yes, with the date, before it is covered. You get the pictures.',
      },
      {
        ask: 'What carries the bricks over each opening, and how far does it reach on both sides?',
        good: 'They give a size for each opening, from a table or from an engineer.',
      },
      {
        ask: 'How does water behind the bricks get out?',
        good: 'They speak of a clear gap, a sheet that leads water out, and open slots. They say who fits each.',
      },
      {
        ask: 'What mortar do you use, and how do you measure it?',
        good: 'They name the type and measure by a box or a bucket. They do not count shovels.',
      },
      {
        ask: 'What do you do in frost, in heat and in rain?',
        good: 'They say when they stop, and how they cover the wall.',
      },
      {
        ask: 'At which points will you stop, so that I or an inspector can look?',
        good: 'They list them: the base, the ties, the steel over openings, the gap behind the bricks. Nothing is covered before someone has looked.',
      },
      {
        ask: 'Do you have insurance, and who asks for the permit?',
        good: 'They show the paper. One person is named for the permit.',
      },
      {
        ask: 'When do I pay?',
        good: 'In parts, each after a stop that you have seen. The last part comes after the papers.',
      },
    ],
  },
  {
    id: 'while',
    title: 'While it is being built',
    lead: 'These are the last moments to see what the wall will hide. Stay off the scaffold. Ask for photographs.',
    papers: [
      {
        ask: 'The ledge that the first row will stand on: how wide is it, is it level and clean?',
        good: 'A photograph with a tape. All of the wall’s length has something to stand on.',
      },
      {
        ask: 'The sheet that leads water out: is it in, with its corners closed?',
        good: 'A photograph of the base, and of each opening, before bricks cover it.',
      },
      {
        ask: 'Each row of ties: how far apart, and how near to openings and ends?',
        good: 'Photographs with a tape up and along. Ties sit in the mortar and slope down to the outside or lie level.',
      },
      {
        ask: 'The gap behind the bricks: is it clear of mortar?',
        good: 'A photograph from above with a light, each day.',
      },
      {
        ask: 'The steel over each opening: which size, and how far past each side?',
        good: 'A photograph of both ends with a tape, before bricks stand on it.',
      },
      {
        ask: 'One brick lifted while the mortar is fresh: is there mortar on the whole of it?',
        good: 'They do it when you ask, at a place that you choose. Stuck-on stone needs a full back.',
      },
      {
        ask: 'The end of the day: is the top covered?',
        good: 'A cover that sheds rain and is held down.',
      },
      {
        ask: 'The upright joints that get a soft filler: are they open all the way, with no mortar in them?',
        good: 'You can see through them before the filler goes in.',
      },
    ],
  },
  {
    id: 'finished',
    title: 'When it is finished',
    lead: 'A wall can look perfect and still lack its ties. Now only papers can show them. Ask for these before the last payment, or from the seller.',
    papers: [
      {
        ask: 'Dated photographs of the ties, with a tape in them',
        good: 'Every wall and both sides of every opening. You can tell from the pictures where they were taken.',
      },
      {
        ask: 'The make of the ties, and how far apart they are',
        good: 'A delivery note or a box label, and two figures: up the wall and along it.',
      },
      {
        ask: 'The sizes of the lintels, which carry the bricks over openings, and how far each one reaches past both sides',
        good: 'A list, opening by opening, with the table or the engineer it came from.',
      },
      {
        ask: 'The record of the inspections',
        good: 'Dates, what was seen, and a name. Ask the building department for its copy.',
      },
      {
        ask: 'Who signed for the work?',
        good: 'A name, a firm and a date on paper.',
      },
      {
        ask: 'The mortar, the bricks and where to get more of them',
        good: 'The type of mortar and the name of the brick. A few spare bricks stay with you.',
      },
      {
        ask: 'How to clean the wall, and what to leave alone',
        good: 'Water and a soft brush first. No strong acid, no pressure washer. Slots stay open.',
      },
      {
        ask: 'What the warranty covers, and for how long',
        good: 'A paper with dates, and the name of who stands behind it.',
      },
    ],
  },
];

/** If there are no papers. */
export const NO_PAPERS =
  'No papers do not prove that ties are missing. They mean that nobody can say. An engineer can look behind the bricks through a small hole, or search for metal from outside.';
