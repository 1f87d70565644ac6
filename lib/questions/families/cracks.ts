import { KEEP_OUT, keepOutOf } from '../../limits/keep-out';
import { formatLength } from '../../units';
import { COMMON_PRACTICE, citeLimit } from '../cite';
import { type Choice, chooseDraft, lengthDraft, orderDraft, pickDraft } from '../drafts';
import { FALLS } from '../falls';
import { type Family, familyOf } from '../family';
import { limitKind, whichLimit } from '../limit-drafts';
import { pickLength } from '../measure';

const TOPIC = 'cracks';

const MAKE_SAFE: readonly Choice[] = [
  { text: 'Stop and step back', why: 'You cannot help from under it.' },
  { text: 'Move people and animals away', why: 'People come before anything else.' },
  {
    text: 'Close doors and paths below with a barrier',
    why: 'Nobody may walk in after you have cleared it.',
  },
  {
    text: 'Tell whoever is in charge, and call help',
    why: 'The place is closed, so now others can be told.',
  },
  { text: 'Take photos from a safe place', why: 'Records come once nobody is in danger.' },
  { text: 'Let an engineer say what holds it up meanwhile', why: 'Props are chosen by those who may.' },
  { text: 'Open the place when they say it is safe', why: 'The barrier stays until then.' },
];

export const CRACKS: readonly Family[] = [
  ...FALLS,
  familyOf(TOPIC, 'keep-out', (ask) => {
    const height = pickLength(ask, [1800, 2400, 3000, 3600, 4800, 6000]);
    const answer = keepOutOf(height);
    return lengthDraft(ask, {
      prompt: `A new wall stands ${formatLength(height, ask.system)} high and nothing holds it yet. Beside it the United States site rule keeps people out for the wall's height and 4 ft (1.2 m) more. How far is that?`,
      answer,
      tolerance: 25,
      mistakes: [
        { value: height, why: 'You left out the extra beside the height.' },
        { value: answer - height, why: 'You left out the height of the wall.' },
        { value: height / 2 + (answer - height), why: 'The whole height counts: a wall falls flat.' },
      ],
      explanation: `${formatLength(height, ask.system)} and 4 ft make ${formatLength(answer, ask.system)}. This rule is for walls while they are built. An old loose wall may need more: a competent person says.`,
      source: citeLimit(KEEP_OUT, KEEP_OUT.rules),
    });
  }),

  familyOf(TOPIC, 'make-safe', (ask) =>
    orderDraft(ask, {
      prompt: 'Bricks over a path look loose. Put these steps in order.',
      steps: MAKE_SAFE,
      explanation:
        'Stop, clear, close, tell, record, then leave it to those who may. Do not pull or push it.',
      source: COMMON_PRACTICE,
    }),
  ),

  familyOf(TOPIC, 'do-not', (ask) =>
    pickDraft(ask, {
      prompt: 'A wall bulges and some units are loose. What must you not do?',
      right: [
        { text: 'Pull at a unit to see if it is loose', why: 'It may be all that holds the next one.' },
        { text: 'Lean a ladder on it for a closer look', why: 'The ladder pushes it, and you are under it.' },
        {
          text: 'Fill the cracks so that it holds again',
          why: 'Filler hides the movement and holds nothing.',
        },
        { text: 'Prop it with timber you have at hand', why: 'A prop in the wrong place can bring it down.' },
      ],
      wrong: [
        { text: 'Keep people away on both sides of it', why: 'That is the first thing to do.' },
        {
          text: 'Take photos with a long lens from afar',
          why: 'Records from a safe place help the engineer.',
        },
        { text: 'Write down when you first saw it bulge', why: 'How fast it moves matters.' },
        { text: 'Ask an engineer to come and look at it', why: 'That is who may say what to do.' },
      ],
      explanation: 'Keep away and keep others away. Do not touch, load, prop or fill it.',
      source: COMMON_PRACTICE,
    }),
  ),

  familyOf(TOPIC, 'engineer-now', (ask) =>
    pickDraft(ask, {
      prompt: 'Which of these call for an engineer?',
      right: [
        { text: 'A crack with one side stepped out', why: 'The wall has moved out of its plane.' },
        { text: 'A crack that has grown since last month', why: 'It still moves.' },
        { text: 'A belly in an old wall', why: 'Ties may have gone.' },
        { text: 'A sagging head over a door', why: 'What carries it may be failing.' },
      ],
      wrong: [
        {
          text: 'White bloom on a new wall',
          why: 'Salts. They brush off. Watch for water if it comes back.',
        },
        { text: 'A hair crack in the skin of one brick', why: 'That is from the kiln.' },
        { text: 'Bricks of mixed colours', why: 'That is a blend, and it is wanted.' },
        { text: 'A newer patch of pointing', why: 'A note, not a fault, when it is full and tooled.' },
      ],
      explanation: 'Steps, growth, bellies and sags say that the wall moves. Looks alone do not.',
      source: COMMON_PRACTICE,
    }),
  ),

  familyOf(TOPIC, 'what-it-says', (ask) => {
    const signs = [
      {
        sign: 'A crack that steps up from the corner of an opening',
        says: 'What carries the opening may have moved',
      },
      { sign: 'Upright cracks near a corner of a long wall', says: 'The wall had no room to swell' },
      { sign: 'Flakes on the face where the wall stays wet', says: 'Frost works on water in the brick' },
      { sign: 'White bloom that brushes off', says: 'Water has carried salts to the face' },
      { sign: 'Level cracks in line with rows of steel', says: 'Rust may be pushing the bed apart' },
      { sign: 'A belly between two rows of ties', says: 'Ties may be missing or rusted through' },
    ] as const;
    const asked = ask.chance.pick(signs);
    return chooseDraft(ask, {
      prompt: `${asked.sign}: what is the first thing to think of?`,
      right: { text: asked.says, why: 'That is the usual cause to check first.' },
      wrong: signs
        .filter((sign) => sign !== asked)
        .map(({ sign, says }) => ({
          text: says,
          why: `That goes with another sign: ${sign.toLowerCase()}.`,
        })),
      explanation: `${asked.sign}: ${asked.says.toLowerCase()}. A sign points to a cause. It does not prove it.`,
      source: COMMON_PRACTICE,
    });
  }),

  familyOf(TOPIC, 'distance-limit', (ask) => whichLimit(ask, 'viewing-distance')),
  familyOf(TOPIC, 'kind', (ask) => limitKind(ask, TOPIC)),
];
