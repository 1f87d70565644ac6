import { boundAt } from '../../limits/bound';
import { ruleSetTitle } from '../../limits/limits';
import { formatLength, type Mm } from '../../units';
import { COMMON_PRACTICE, citeLimit, governingLimit } from '../cite';
import { chooseDraft, commonOrder, commonPick, lengthDraft, numberDraft } from '../drafts';
import { type Family, familyOf } from '../family';
import { limitKind, whichLimit, whichPass } from '../limit-drafts';
import { drawLength, roundLength } from '../measure';

const TOPIC = 'water';

export const WATER: readonly Family[] = [
  familyOf(TOPIC, 'weep-count', (ask) => {
    const limit = governingLimit(ask.rules, 'weep-spacing');
    const spacing = boundAt(limit, {});
    const run = roundLength(
      spacing * (ask.chance.whole(3, 11) + ask.chance.pick([0.3, 0.5, 0.7])),
      ask.system,
    );
    const gaps = Math.ceil(run / spacing);
    return numberDraft({
      prompt: `Rules in use: ${ruleSetTitle(ask.rules)}. Weep holes may be ${formatLength(spacing, ask.system)} apart at most. The first and the last are ${formatLength(run, ask.system)} apart. How many weep holes are there at least, both ends counted?`,
      unit: 'holes',
      answer: gaps + 1,
      tolerance: 0.4,
      mistakes: {
        'You counted the gaps. There is one hole more than gaps.': gaps,
        'You rounded down and forgot the hole at the end.': gaps - 1,
        'That is one more than needed.': gaps + 2,
      },
      explanation: `${formatLength(run, ask.system)} ÷ ${formatLength(spacing, ask.system)}, rounded up, is ${gaps} gaps. So ${gaps + 1} holes.`,
      source: citeLimit(limit, ask.rules),
    });
  }),

  familyOf(TOPIC, 'air-space-left', (ask) => {
    const limit = governingLimit(ask.rules, 'air-space');
    const design = drawLength(ask, 32, 60);
    const lump = drawLength(ask, 5, 24);
    const back = drawLength(ask, 1, 6);
    const answer = design - lump - back;
    return lengthDraft(ask, {
      prompt: `The air space is drawn ${formatLength(design, ask.system)} wide. The brick was laid ${formatLength(back, ask.system)} too far back, and mortar stands ${formatLength(lump, ask.system)} out of the joints behind it. How wide is the clear space that is left?`,
      answer,
      tolerance: 1,
      mistakes: {
        'You forgot that the brick stands too far back.': design - lump,
        'You forgot the mortar that stands into the space.': design - back,
        'A brick too far back makes the space smaller, not bigger.': design - lump + back,
      },
      explanation: `${formatLength(design, ask.system)} − ${formatLength(back, ask.system)} − ${formatLength(lump, ask.system)} = ${formatLength(answer, ask.system)}. At least ${formatLength(boundAt(limit, {}), ask.system)} is asked.`,
      source: citeLimit(limit, ask.rules),
    });
  }),

  familyOf(TOPIC, 'flashing-width', (ask) => {
    const limit = governingLimit(ask.rules, 'flashing-upstand');
    const up = boundAt(limit, {});
    const depth = drawLength(ask, 75, 100);
    const space = drawLength(ask, 25, 50);
    const past = drawLength(ask, 5, 10);
    const all: Mm = past + depth + space + up;
    return lengthDraft(ask, {
      prompt: `Rules in use: ${ruleSetTitle(ask.rules)}. Base flashing runs from ${formatLength(past, ask.system)} past the face, under brick ${formatLength(depth, ask.system)} deep, over an air space of ${formatLength(space, ask.system)}, then up the wall as far as the rules ask at least. How wide must the strip be?`,
      answer: all,
      tolerance: 1,
      mistakes: {
        'You forgot what stands past the face.': all - past,
        'You forgot the air space.': all - space,
        'You forgot the part that goes up the wall.': all - up,
        'You forgot what lies under the brick.': all - depth,
      },
      explanation: `${[past, depth, space, up].map((mm) => formatLength(mm, ask.system)).join(' + ')} = ${formatLength(all, ask.system)}.`,
      source: citeLimit(limit, ask.rules),
    });
  }),

  familyOf(TOPIC, 'which-flashing', (ask) =>
    chooseDraft(ask, {
      prompt: 'Four ways of flashing the base of a wall, cut through. Which one leads water out?',
      right: {
        text: 'Behind the barrier, out past the face',
        why: 'Water runs from the barrier onto the flashing and off it outside.',
        drawing: { kind: 'flashing', lap: 'behind the barrier', reach: 'past the face' },
      },
      wrong: [
        {
          text: 'In front of the barrier, out past the face',
          why: 'Water runs down behind the flashing and into the wall.',
          drawing: { kind: 'flashing', lap: 'in front', reach: 'past the face' },
        },
        {
          text: 'Behind the barrier, short of the face',
          why: 'Water leaves the flashing inside the wall.',
          drawing: { kind: 'flashing', lap: 'behind the barrier', reach: 'short' },
        },
        {
          text: 'In front of the barrier, short of the face',
          why: 'Both its top and its edge are wrong.',
          drawing: { kind: 'flashing', lap: 'in front', reach: 'short' },
        },
      ],
      explanation:
        'Like roof tiles: what is above laps over what is below. The edge comes out where it can drip.',
      source: COMMON_PRACTICE,
    }),
  ),

  familyOf(TOPIC, 'weep-limit', (ask) => whichLimit(ask, 'weep-spacing')),
  familyOf(TOPIC, 'weeps-pass', (ask) => whichPass(ask, 'weep-spacing')),
  familyOf(TOPIC, 'air-space-passes', (ask) => whichPass(ask, 'air-space')),
  familyOf(TOPIC, 'dam-passes', (ask) => whichPass(ask, 'end-dam')),
  familyOf(TOPIC, 'edge-limit', (ask) => whichLimit(ask, 'flashing-past-face')),
  familyOf(TOPIC, 'upstand-limit', (ask) => whichLimit(ask, 'flashing-upstand')),
  commonPick(TOPIC, 'weep-or-fault', {
    prompt: 'Which of these let water out as they should, and are no fault?',
    right: {
      'Open upright joints at even steps on the flashing': 'They are weep holes.',
      'Wicks of rope that hang out of the lowest joints': 'They lead water out.',
      'Plastic cells in the joints over a window': 'They keep the weep hole open.',
      'A metal edge with a drip under the first course': 'Water leaves the wall there.',
    },
    wrong: {
      'Sealant run along the flashing under the brick': 'It dams the water in.',
      'Soil heaped up over the lowest joints': 'Weep holes below the ground drain nothing.',
      'Mortar rubbed over the holes to tidy up': 'The holes must stay open.',
      'Random pinholes high up in the wall': 'They let water in. They are joints not filled.',
    },
    explanation: 'Weep holes are open, regular, and right on the flashing. Leave them open.',
  }),
  commonOrder(TOPIC, 'steps', {
    prompt: 'Put these steps of keeping water out at the base in order.',
    steps: {
      'Clean the ledge': 'Grit would pierce the flashing.',
      'Lay the flashing past the face and up the wall': 'It lies on the clean ledge.',
      'Lap the barrier of the wall over the flashing': 'What is above laps over what is below.',
      'Turn up the ends as dams': 'Ends are closed before brick hides them.',
      'Lay the first course with open weep holes': 'Weep holes sit right on the flashing.',
      'Keep droppings out of the air space': 'Droppings fall from the courses above.',
      'Look down the air space with a light': 'You look at what the courses have left.',
    },
    explanation: 'Clean, flash, lap, dam, weep, keep clear, look.',
  }),
  familyOf(TOPIC, 'kind', (ask) => limitKind(ask, TOPIC)),
];
