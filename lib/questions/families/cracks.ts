import { KEEP_OUT, keepOutOf } from '../../limits/keep-out';
import { formatLength } from '../../units';
import { COMMON_PRACTICE, citeLimit } from '../cite';
import { chooseDraft, commonOrder, commonPick, lengthDraft } from '../drafts';
import { FALLS } from '../falls';
import { type Family, familyOf } from '../family';
import { limitKind, whichLimit } from '../limit-drafts';
import { pickLength } from '../measure';

const TOPIC = 'cracks';

export const CRACKS: readonly Family[] = [
  ...FALLS,
  familyOf(TOPIC, 'keep-out', (ask) => {
    const height = pickLength(ask, [1800, 2400, 3000, 3600, 4800, 6000]);
    const answer = keepOutOf(height);
    return lengthDraft(ask, {
      prompt: `A new wall stands ${formatLength(height, ask.system)} high and nothing holds it yet. Beside it the United States site rule keeps people out for the wall's height and 4 ft (1.2 m) more. How far is that?`,
      answer,
      tolerance: 25,
      mistakes: {
        'You left out the extra beside the height.': height,
        'You left out the height of the wall.': answer - height,
        'The whole height counts: a wall falls flat.': height / 2 + (answer - height),
      },
      explanation: `${formatLength(height, ask.system)} and 4 ft make ${formatLength(answer, ask.system)}. This rule is for walls while they are built. An old loose wall may need more: a competent person says.`,
      source: citeLimit(KEEP_OUT, KEEP_OUT.rules),
    });
  }),

  commonOrder(TOPIC, 'make-safe', {
    prompt: 'Bricks over a path look loose. Put these steps in order.',
    steps: {
      'Stop and step back': 'You cannot help from under it.',
      'Move people and animals away': 'People come before anything else.',
      'Close doors and paths below with a barrier': 'Nobody may walk in after you have cleared it.',
      'Tell whoever is in charge, and call help': 'The place is closed, so now others can be told.',
      'Take photos from a safe place': 'Records come once nobody is in danger.',
      'Let an engineer say what holds it up meanwhile': 'Props are chosen by those who may.',
      'Open the place when they say it is safe': 'The barrier stays until then.',
    },
    explanation: 'Stop, clear, close, tell, record, then leave it to those who may. Do not pull or push it.',
  }),

  commonPick(TOPIC, 'do-not', {
    prompt: 'A wall bulges and some units are loose. What must you not do?',
    right: {
      'Pull at a unit to see if it is loose': 'It may be all that holds the next one.',
      'Lean a ladder on it for a closer look': 'The ladder pushes it, and you are under it.',
      'Fill the cracks so that it holds again': 'Filler hides the movement and holds nothing.',
      'Prop it with timber you have at hand': 'A prop in the wrong place can bring it down.',
    },
    wrong: {
      'Keep people away on both sides of it': 'That is the first thing to do.',
      'Take photos with a long lens from afar': 'Records from a safe place help the engineer.',
      'Write down when you first saw it bulge': 'How fast it moves matters.',
      'Ask an engineer to come and look at it': 'That is who may say what to do.',
    },
    explanation: 'Keep away and keep others away. Do not touch, load, prop or fill it.',
  }),

  commonPick(TOPIC, 'engineer-now', {
    prompt: 'Which of these call for an engineer?',
    right: {
      'A crack with one side stepped out': 'The wall has moved out of its plane.',
      'A crack that has grown since last month': 'It still moves.',
      'A belly in an old wall': 'Ties may have gone.',
      'A sagging head over a door': 'What carries it may be failing.',
    },
    wrong: {
      'White bloom on a new wall': 'Salts. They brush off. Watch for water if it comes back.',
      'A hair crack in the skin of one brick': 'That is from the kiln.',
      'Bricks of mixed colours': 'That is a blend, and it is wanted.',
      'A newer patch of pointing': 'A note, not a fault, when it is full and tooled.',
    },
    explanation: 'Steps, growth, bellies and sags say that the wall moves. Looks alone do not.',
  }),

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
