import {
  bondOffsetsOf,
  headJointFor,
  lapOf,
  openingWidth,
  piecesOf,
  pierLength,
  returnLength,
} from '../../trade/bond';
import { formatLength } from '../../units';
import { citeFormula, citeLimit, governingLimit } from '../cite';
import { type Choice, commonOrder, commonPick, lengthDraft, pickDraft } from '../drafts';
import { type Ask, type Family, familyOf } from '../family';
import { limitKind, whichLimit, whichPass } from '../limit-drafts';
import { pickLength, roundLength } from '../measure';

const TOPIC = 'bond';

function brickOf(ask: Ask) {
  return { length: pickLength(ask, [190, 194, 215, 230, 257]), joint: pickLength(ask, [10, 12]) };
}

export const BOND: readonly Family[] = [
  familyOf(TOPIC, 'cut-piece', (ask) => {
    const { length, joint } = brickOf(ask);
    const pieces = piecesOf(length, joint);
    const name = ask.chance.pick(['half', 'quarter', 'three-quarter'] as const);
    const { share, answer } = {
      half: { share: 1 / 2, answer: pieces.half },
      quarter: { share: 1 / 4, answer: pieces.quarter },
      'three-quarter': { share: 3 / 4, answer: pieces.threeQuarter },
    }[name];
    return lengthDraft(ask, {
      prompt: `Bricks are ${formatLength(length, ask.system)} long, head joints ${formatLength(joint, ask.system)}. How long is a ${name} bat that keeps the bond?`,
      answer,
      tolerance: 1,
      mistakes: {
        'You left out the joint. Pieces and the joints between them make up a brick.': length * share,
        'That is a piece with its whole joint. Take the joint off.': (length + joint) * share,
      },
      explanation: `A ${name} with its joint is ${share} of brick and joint: ${share} × ${formatLength(length + joint, ask.system)} − ${formatLength(joint, ask.system)} = ${formatLength(answer, ask.system)}.`,
      source: citeFormula('piece = share × (brick + joint) − joint'),
    });
  }),

  familyOf(TOPIC, 'pier-or-opening', (ask) => {
    const { length, joint } = brickOf(ask);
    const bricks = ask.chance.whole(2, 9);
    const kinds = {
      'A pier with two free ends': { width: pierLength, joints: bricks - 1 },
      'An opening between two jambs': { width: openingWidth, joints: bricks + 1 },
      'A wall from a return to an opening': { width: returnLength, joints: bricks },
    } as const;
    const kind = ask.chance.pick(Object.keys(kinds) as readonly (keyof typeof kinds)[]);
    const { width, joints } = kinds[kind];
    const at = (count: number) => bricks * length + count * joint;
    return lengthDraft(ask, {
      prompt: `${kind} is set out for ${bricks} bricks of ${formatLength(length, ask.system)} with joints of ${formatLength(joint, ask.system)}. How wide must it be?`,
      answer: width(bricks, length, joint),
      tolerance: 1,
      mistakes: Object.fromEntries(
        [bricks - 1, bricks, bricks + 1].map((count) => [
          `You counted ${count} joints. Here there are ${joints}: think of its two ends.`,
          at(count),
        ]),
      ),
      explanation: `${bricks} bricks and ${joints} joints: ${formatLength(at(joints), ask.system)}. A pier has a joint less than bricks, an opening one more.`,
      source: citeFormula('bricks × length + joints × joint'),
    });
  }),

  familyOf(TOPIC, 'eased-joint', (ask) => {
    const length = pickLength(ask, [190, 194, 215]);
    const bricks = ask.chance.whole(6, 16);
    const wall = roundLength(bricks * length + (bricks - 1) * ask.chance.whole(8, 13), ask.system);
    const answer = headJointFor(
      wall,
      Array.from({ length: bricks }, () => length),
    );
    const rest = wall - bricks * length;
    return lengthDraft(ask, {
      prompt: `A wall with two free ends is ${formatLength(wall, ask.system)} long. You want ${bricks} whole bricks of ${formatLength(length, ask.system)} and no cut. How wide must the head joints be?`,
      answer,
      tolerance: 0.3,
      mistakes: {
        'One joint too many: the last brick ends the wall.': rest / bricks,
        'Two joints too many: free ends have no joint.': rest / (bricks + 1),
        'That is all the joints together. Share it out.': rest,
      },
      explanation: `What the bricks leave, ${formatLength(rest, ask.system)}, is shared by ${bricks - 1} joints: ${formatLength(answer, ask.system)}.`,
      source: citeFormula('joint = (wall − all bricks) ÷ (bricks − 1)'),
    });
  }),

  familyOf(TOPIC, 'offset', (ask) => {
    const { length, joint } = brickOf(ask);
    const offsets = bondOffsetsOf(length, joint);
    const name = ask.chance.pick(['half', 'third', 'quarter'] as const);
    const share = { half: 2, third: 3, quarter: 4 }[name];
    return lengthDraft(ask, {
      prompt: `Bricks of ${formatLength(length, ask.system)} with joints of ${formatLength(joint, ask.system)} are laid in ${name} bond. How far is each head joint from the nearest one below, from the middle of one to the middle of the other?`,
      answer: offsets[name],
      tolerance: 1,
      mistakes: {
        'You left out the joint: the bond steps by brick and joint.': length / share,
        'You took the joint off. It is added: the bond steps by brick and joint.': (length - joint) / share,
      },
      explanation: `(${formatLength(length, ask.system)} + ${formatLength(joint, ask.system)}) ÷ ${share} = ${formatLength(offsets[name], ask.system)}.`,
      source: citeFormula('offset = (brick + joint) ÷ 2, 3 or 4'),
    });
  }),

  familyOf(TOPIC, 'which-lap', (ask) => {
    const length = pickLength(ask, [190, 215, 257]);
    const draw = (share: number): Choice => {
      const offset = roundLength(length * share, ask.system);
      const lap = lapOf(offset, length, 0.25);
      return {
        text: `Head joints ${formatLength(offset, ask.system)} apart`,
        why:
          lap === 'enough'
            ? 'That laps by a quarter of the brick or more.'
            : 'That is less than a quarter of the brick.',
        drawing: { kind: 'lap', length, offset },
      };
    };
    return pickDraft(ask, {
      prompt: `Running bond, bricks ${formatLength(length, ask.system)} long. In which drawings do the head joints lap too little?`,
      right: [0.08, 0.14, 0.2].map(draw),
      wrong: [0.29, 0.36, 0.5].map(draw),
      count: 4,
      explanation: `At least a quarter of the brick is asked: ${formatLength(length / 4, ask.system)}.`,
      source: citeLimit(governingLimit(ask.rules, 'lap-least'), ask.rules),
    });
  }),

  familyOf(TOPIC, 'piece-passes', (ask) => {
    const depth = pickLength(ask, [75, 90, 100]);
    return whichPass(ask, 'smallest-piece', { depth }, `, unit ${formatLength(depth, ask.system)} deep`);
  }),
  familyOf(TOPIC, 'lap-limit', (ask) => whichLimit(ask, 'lap-least')),
  commonPick(TOPIC, 'sliver-or-closer', {
    prompt: 'Which of these short pieces are signs of poor setting out?',
    right: {
      'A thin piece in the middle of a long run': 'The run could have been eased instead.',
      'A piece shorter than the wall is deep, at a window': 'It is held weakly and can work loose.',
      'Two short cuts side by side at a jamb': 'A half and a three-quarter would have done.',
      'A cut that grows from course to course': 'The bond drifts: it was not set out dry.',
    },
    wrong: {
      'A closer beside the corner in every other course': 'It makes the bond and belongs there.',
      'Half bricks in every other course at a free end': 'Half bond ends so.',
      'A closer at the reveal in every other course': 'It repeats and makes the bond.',
      'Cut bricks along the slope of a gable': 'The slope cannot be met without cuts.',
    },
    explanation:
      'A short piece is right where it repeats and makes the bond. It is wrong where it only fills a gap.',
  }),
  commonOrder(TOPIC, 'steps', {
    prompt: 'Put these steps of setting out a course in order.',
    steps: {
      'Measure some bricks from several pallets': 'The mean brick is what the wall is set out by.',
      'Mark the openings on the base': 'The bond has to meet the openings.',
      'Lay one course dry from end to end': 'Dry bricks show what is left over.',
      'Open or close the joints a little along the run': 'What is left over is shared out before any cut.',
      'Put the cut that is left where it shows least': 'A cut is chosen when easing was not enough.',
      'Mark the joints on the base': 'Marks keep what the dry course has shown.',
      'Take the dry bricks up and spread the bed': 'Mortar comes when the marks are there.',
    },
    explanation: 'Measure, mark openings, lay dry, ease, choose the cut, mark, then bed.',
  }),
  familyOf(TOPIC, 'kind', (ask) => limitKind(ask, TOPIC)),
];
