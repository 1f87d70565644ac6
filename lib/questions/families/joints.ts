import { boundAt } from '../../limits/bound';
import { headJointFor } from '../../trade/bond';
import { gaugeForCourses } from '../../trade/coursing';
import { formatLength } from '../../units';
import { citeFormula, citeLimit, governingLimit } from '../cite';
import { type Choice, choices, commonOrder, lengthDraft, numberDraft, pickDraft } from '../drafts';
import { type Family, familyOf } from '../family';
import { limitKind, whichLimit, whichPass } from '../limit-drafts';
import { drawLength, formatNumber, pickLength, roundLength } from '../measure';

const TOPIC = 'joints';

export const JOINTS: readonly Family[] = [
  familyOf(TOPIC, 'mean-head-joint', (ask) => {
    const bricks = ask.chance.whole(4, 12);
    const length = pickLength(ask, [190, 194, 215, 203]);
    const joint = ask.chance.whole(6, 16);
    const run = roundLength(bricks * length + (bricks - 1) * joint, ask.system);
    const answer = headJointFor(
      run,
      Array.from({ length: bricks }, () => length),
    );
    const rest = run - bricks * length;
    return lengthDraft(ask, {
      prompt: `${bricks} whole bricks of ${formatLength(length, ask.system)} take up ${formatLength(run, ask.system)}, from the end of the first to the end of the last. How wide are the head joints between them, on average?`,
      answer,
      tolerance: 0.3,
      mistakes: {
        'You counted one joint for each brick. Between them there is one joint less.': rest / bricks,
        'You counted a joint at both ends. The run ends with a brick at both ends.': rest / (bricks + 1),
        'That is all the joints together. Share it out.': rest,
      },
      explanation: `${bricks} bricks have ${bricks - 1} joints between them: (${formatLength(run, ask.system)} − ${bricks} × ${formatLength(length, ask.system)}) ÷ ${bricks - 1} = ${formatLength(answer, ask.system)}.`,
      source: citeFormula('joint = (run − all the bricks) ÷ (bricks − 1)'),
    });
  }),

  familyOf(TOPIC, 'mean-bed-joint', (ask) => {
    const courses = ask.chance.whole(4, 12);
    const unit = pickLength(ask, [57, 65, 70, 76]);
    const height = roundLength(courses * (unit + ask.chance.whole(7, 15)), ask.system);
    const { joint } = gaugeForCourses(height, courses, unit);
    return lengthDraft(ask, {
      prompt: `From the ledge to the top of course ${courses} you measure ${formatLength(height, ask.system)}. The bricks are ${formatLength(unit, ask.system)} high. How thick are the beds on average? There is a bed under every course.`,
      answer: joint,
      tolerance: 0.3,
      mistakes: {
        'You left out one joint: there is a bed under the first course too.':
          (height - courses * unit) / (courses - 1),
        'That is the gauge: brick and joint together. Take the brick off.': height / courses,
        'That is all the beds together. Share it out.': height - courses * unit,
      },
      explanation: `${formatLength(height, ask.system)} ÷ ${courses} − ${formatLength(unit, ask.system)} = ${formatLength(joint, ask.system)}.`,
      source: citeFormula('bed = height ÷ courses − brick height'),
    });
  }),

  familyOf(TOPIC, 'which-beds-taper', (ask) => {
    const limit = governingLimit(ask.rules, 'bed-taper');
    const most = boundAt(limit, {});
    const bed = (factor: number): Choice => {
      const thin = drawLength(ask, 7, 10);
      const thick = thin + roundLength(most * factor, ask.system);
      const [left, right] = ask.chance.happens(50) ? [thin, thick] : [thick, thin];
      return {
        text: `${formatLength(left, ask.system)} at the left end, ${formatLength(right, ask.system)} at the right`,
        why: `Its ends differ by ${factor > 1 ? 'more' : 'less'} than the limit.`,
        drawing: { kind: 'bed', left, right },
      };
    };
    return pickDraft(ask, {
      prompt: 'Which of these beds under one brick taper too much?',
      right: [1.5, 2, 2.75].map(bed),
      wrong: [0, 0.4, 0.75].map(bed),
      count: 4,
      explanation: `Take one end from the other. At most ${formatLength(most, ask.system)} is allowed under one unit.`,
      source: citeLimit(limit, ask.rules),
    });
  }),

  familyOf(TOPIC, 'head-fill', (ask) => {
    const depth = pickLength(ask, [75, 90, 100]);
    const filled = drawLength(ask, 40, depth - 2);
    const share = (100 * filled) / depth;
    const limit = governingLimit(ask.rules, 'head-fill');
    const least = boundAt(limit, {});
    return numberDraft({
      prompt: `A lifted brick is ${formatLength(depth, ask.system)} deep. Its head joint was filled for ${formatLength(filled, ask.system)} of that depth. How many percent are filled?`,
      unit: '%',
      answer: share,
      tolerance: 1,
      mistakes: {
        'That is the empty share.': 100 - share,
        'You divided the wrong way round: filled by whole depth.': (100 * depth) / filled,
      },
      explanation: `${formatLength(filled, ask.system)} ÷ ${formatLength(depth, ask.system)} = ${formatNumber(share, 1)} %. At least ${least} % is asked, so this joint ${share >= least ? 'passes' : 'fails'}.`,
      source: citeLimit(limit, ask.rules),
    });
  }),

  familyOf(TOPIC, 'bed-passes', (ask) => whichPass(ask, 'bed-joint-most')),
  familyOf(TOPIC, 'head-passes', (ask) => whichPass(ask, 'head-joint-most')),
  familyOf(TOPIC, 'bed-limit', (ask) => whichLimit(ask, 'bed-joint-most')),
  familyOf(TOPIC, 'full-heads', (ask) =>
    pickDraft(ask, {
      prompt: 'Which of these show that head joints are not full?',
      right: choices({
        'Daylight through the joint before it is covered': 'Light goes where no mortar is.',
        'A lifted brick with mortar only at its corners': 'The heart of the joint was empty.',
        'A thin probe slides in past the face': 'It meets no mortar.',
        'Small dark holes at the edges of the bricks': 'They lead to a hollow joint.',
      }),
      wrong: choices({
        'Open joints at even steps just above the flashing': 'Those are weep holes: leave them open.',
        'A joint that is one shade paler than its neighbours': 'Colour says nothing of how full a joint is.',
        'Soft filler in an upright joint from top to bottom': 'That is a movement joint.',
        'A joint tooled to a hollow curve': 'That is a shape of the face. It sheds water well.',
      }),
      explanation:
        'A head joint is full when mortar fills its depth. What the face shows can deceive, so lift and probe.',
      source: citeLimit(governingLimit(ask.rules, 'head-fill'), ask.rules),
    }),
  ),
  commonOrder(TOPIC, 'steps', {
    prompt: 'Put these steps of making a joint in order.',
    steps: {
      'Spread the bed over a few bricks': 'Nothing can be laid before there is a bed.',
      'Make a shallow furrow in the bed': 'The furrow is made in the bed that was spread.',
      'Butter the whole end of the brick': 'The end must carry its mortar when the brick is shoved.',
      'Shove the brick into place against its neighbour': 'The shove is what fills the head joint.',
      'Cut off what squeezed out': 'Squeezed mortar is cut while it is soft.',
      'Wait until a thumb leaves only a print': 'Too soft smears, too hard will not close.',
      'Tool the joint to a dense face': 'Tooling waits for thumbprint-hard mortar.',
      'Brush the face when the crumbs are dry': 'Brushing soft mortar smears it over the bricks.',
    },
    explanation: 'Bed, furrow, butter, shove, cut, wait, tool, brush.',
  }),
  familyOf(TOPIC, 'kind', (ask) => limitKind(ask, TOPIC)),
];
