import { boundAt } from '../../limits/bound';
import { COMMON_PRACTICE, citeFormula, citeLimit, governingLimit } from '../cite';
import { chooseDraft, commonPick, numberDraft, orderDraft, pickDraft } from '../drafts';
import { isOwn, mostUpEdge } from '../edge-ties';
import { type Family, familyOf } from '../family';
import { limitKind, passDraft, whichLimit } from '../limit-drafts';

const TOPIC = 'hold-points';

/** Hold points in the order of building, with what can be seen for the last time. Common practice. */
const POINTS: readonly { readonly point: string; readonly seen: readonly string[] }[] = [
  {
    point: 'The ledge is ready, no brick yet',
    seen: ['Ledge wide and level enough', 'Overhang set out on the ledge'],
  },
  {
    point: 'The backing is ready, no brick yet',
    seen: ['Laps of the barrier', 'Studs marked for ties', 'End dams of the base flashing'],
  },
  { point: 'The first course lies dry', seen: ['Small pieces before they are laid', 'Bond at the openings'] },
  {
    point: 'A row of ties is in its bed',
    seen: ['How deep a tie lies in mortar', 'Spacing of the ties', 'Thickness of a tie'],
  },
  {
    point: 'A fresh unit is lifted',
    seen: ['Mortar on the back of a unit', 'Hearts of the bed and head joints'],
  },
  {
    point: 'The steel over a window is set',
    seen: ['Bearing at the ends of the steel', 'Flashing over the steel'],
  },
  {
    point: 'Before the next lift closes the air space',
    seen: ['Droppings in the air space', 'Mortar fins behind the brick'],
  },
  { point: 'The joint is open, before sealant', seen: ['Mortar left in a movement joint'] },
];

const lower = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);

export const HOLD_POINTS: readonly Family[] = [
  familyOf(TOPIC, 'last-moment', (ask) => {
    const asked = ask.chance.pick(POINTS);
    const what = ask.chance.pick(asked.seen);
    return chooseDraft(ask, {
      prompt: `${what}: when can it be seen for the last time?`,
      right: { text: asked.point, why: 'After that it is covered.' },
      wrong: POINTS.filter((point) => point !== asked).map(({ point, seen }) => ({
        text: point,
        why: `At that point you look at this: ${seen.map(lower).join(', ')}.`,
      })),
      explanation: `${what}: look when ${lower(asked.point)}.`,
      source: COMMON_PRACTICE,
    });
  }),
  familyOf(TOPIC, 'what-to-see', (ask) => {
    const asked = ask.chance.pick(POINTS.filter(({ seen }) => seen.length > 1));
    return pickDraft(ask, {
      prompt: `${asked.point}. What must be seen now, before it is covered?`,
      right: asked.seen.map((text) => ({ text, why: 'This is the last moment for it.' })),
      wrong: POINTS.filter((point) => point !== asked).flatMap(({ point, seen }) =>
        seen.map((text) => ({ text, why: `Its moment is another one: ${lower(point)}.` })),
      ),
      explanation: `Now: ${asked.seen.map(lower).join(', ')}.`,
      source: COMMON_PRACTICE,
    });
  }),
  familyOf(TOPIC, 'order', (ask) =>
    orderDraft(ask, {
      prompt: 'Put these hold points of one wall in the order they come in.',
      steps: [0, 1, 2, 3, 5].map((index) => ({
        text: POINTS[index]?.point ?? '',
        why: 'Each one comes before what covers it.',
      })),
      count: 4,
      explanation: 'Ledge, backing, dry course, ties, steel over the window.',
      source: COMMON_PRACTICE,
    }),
  ),
  commonPick(TOPIC, 'hidden', {
    prompt: 'The wall is finished. What can nobody see any more from the front?',
    right: {
      'Whether the ties lie deep enough': 'They are inside the beds.',
      'How far the flashing goes up': 'It is behind the brick.',
      'Mortar on the back of the units': 'Only a lifted unit shows it.',
      'Droppings in the air space': 'They lie behind the brick.',
    },
    wrong: {
      'Whether the courses are level': 'A level shows it at any time.',
      'Pinholes in the head joints': 'They are on the face.',
      'Weep holes at the base': 'They open to the face.',
      'A piece that is too short': 'It is on the face.',
    },
    explanation: 'Most of what can fall is hidden when the wall is done. That is what hold points are for.',
  }),
  commonPick(TOPIC, 'record', {
    prompt: 'What belongs to a photo that is kept as proof of a hold point?',
    right: {
      'A tape or rule in the picture, held straight': 'Without a scale nobody can measure it later.',
      'The place: which wall, course and end': 'It must be found again.',
      'The date on which it was taken': 'It shows that it was taken before it was covered.',
      'A wide view beside the close one': 'It shows where the close one is.',
    },
    wrong: {
      'A filter that makes colours stronger': 'It changes what was there.',
      'Only the part that came out well': 'The weak part is what matters.',
      'A thumb over what is still to do': 'Show what is there.',
      'A picture from last year of such a wall': 'It shows another wall.',
    },
    explanation: 'Scale, place, date, and a wide view beside the close one.',
  }),
  familyOf(TOPIC, 'lifted-units', ({ chance, rules }) => {
    const sample = boundAt(governingLimit(rules, 'back-contact-sample'), {});
    const lot = governingLimit(rules, 'back-contact-lot');
    const size = boundAt(lot, {});
    const lots = chance.whole(2, 12);
    const units = lots * size - chance.whole(0, 9) * 10;
    return numberDraft({
      prompt: `Of every ${size} thin units set, or a part of so many, ${sample} are lifted. A wall has ${units} units. How many are lifted at least?`,
      unit: 'units',
      answer: sample * lots,
      tolerance: 0.4,
      mistakes: {
        [`That is how many lots of ${size} there are. Of each, ${sample} are lifted.`]: lots,
        'That is for the first lot only.': sample,
        'You left out the last lot. It counts though it is not full.': sample * (lots - 1),
        [`${sample} of every ${size} are lifted, not one in ${sample}.`]: Math.round(units / sample),
      },
      explanation: `${units} ÷ ${size}, rounded up, is ${lots} lots. ${sample} × ${lots} = ${sample * lots}. One unit alone may be luck.`,
      source: citeLimit(lot, rules),
    });
  }),
  familyOf(TOPIC, 'rows-to-photograph', ({ chance }) => {
    const rows = chance.whole(4, 12);
    const walls = chance.whole(2, 4);
    const missed = chance.whole(1, 3);
    const all = rows * walls;
    return numberDraft({
      prompt: `${walls} walls have ${rows} rows of ties each. Of all the rows ${missed} were covered without a photo. How many percent of the rows are on record?`,
      unit: '%',
      answer: (100 * (all - missed)) / all,
      tolerance: 0.6,
      mistakes: {
        'That is the share without a photo.': (100 * missed) / all,
        'You counted the rows of one wall only.': (100 * (rows - missed)) / rows,
        'That is a count of rows. Divide by all of them.': all - missed,
      },
      explanation: `(${all} − ${missed}) ÷ ${all}. What is not on record has to be opened up or doubted.`,
      source: citeFormula('share = rows on record ÷ all rows'),
    });
  }),
  familyOf(
    TOPIC,
    'tie-before-cover',
    (ask) => {
      const { limit, most } = mostUpEdge(ask.rules);
      return passDraft(ask, { limit, value: most, quantity: 'Ties beside an opening, spacing up the jamb' });
    },
    (rules) => isOwn(rules, 'tie-edge-spacing'),
  ),
  familyOf(
    TOPIC,
    'edge-limit',
    (ask) => whichLimit(ask, 'tie-edge-distance'),
    (rules) => isOwn(rules, 'tie-edge-distance'),
  ),
  familyOf(TOPIC, 'kind', (ask) => limitKind(ask, TOPIC)),
];
