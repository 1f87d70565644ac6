import { slopeVerdict } from '../../limits/bound';
import { ruleSetTitle } from '../../limits/limits';
import { cornerOf, offAtEnd, squareDiagonal } from '../../trade/corner-square';
import { driftAfter, heightOfCourses, nearestGauge } from '../../trade/coursing';
import { reversalOf } from '../../trade/spirit-level';
import { lineWeight, sagInBays, USUAL_LINE_MASS } from '../../trade/string-line';
import { formatLength, inches, type Mm } from '../../units';
import { citeFormula, citeLimit, governingLimit } from '../cite';
import { type Choice, chooseDraft, commonOrder, lengthDraft, pickDraft } from '../drafts';
import { type Family, familyOf } from '../family';
import { limitKind, whichLimit, whichPass } from '../limit-drafts';
import { formatNumber, pickLength, roundLength } from '../measure';

const TOPIC = 'line';

export const LINE: readonly Family[] = [
  familyOf(TOPIC, 'gauge', (ask) => {
    const height = pickLength(ask, [2400, 2440, 2700, 3000, 3300, 1200, 1500, 1800]);
    const unit = pickLength(ask, [57, 65, 70, 76]);
    const wished = roundLength(10, ask.system);
    const { courses, gauge } = nearestGauge(height, unit, wished);
    return lengthDraft(ask, {
      prompt: `A wall must be ${formatLength(height, ask.system)} high, in whole courses of brick ${formatLength(unit, ask.system)} high, with beds as near to ${formatLength(wished, ask.system)} as can be and a bed under each course. What gauge do you mark on the rod?`,
      answer: gauge,
      tolerance: 0.2,
      mistakes: {
        'That gauge does not end at the height. Make the courses whole, then divide.': unit + wished,
        'That is one course too many.': height / (courses + 1),
        ...(courses > 1 ? { 'That is one course too few.': height / (courses - 1) } : {}),
        'That is the joint alone. The gauge is brick and joint.': gauge - unit,
      },
      explanation: `${formatLength(height, ask.system)} ÷ (${formatLength(unit, ask.system)} + ${formatLength(wished, ask.system)}) is nearest to ${courses} courses. ${formatLength(height, ask.system)} ÷ ${courses} = ${formatLength(gauge, ask.system)}.`,
      source: citeFormula('gauge = height ÷ whole courses'),
    });
  }),

  familyOf(TOPIC, 'height-of-courses', (ask) => {
    const courses = ask.chance.whole(5, 24);
    const unit = pickLength(ask, [57, 65, 70, 76]);
    const joint = pickLength(ask, [10, 11, 12]);
    const answer = heightOfCourses(courses, unit, joint);
    return lengthDraft(ask, {
      prompt: `${courses} courses of brick ${formatLength(unit, ask.system)} high, with beds of ${formatLength(joint, ask.system)} and a bed under each course. How high is the top?`,
      answer,
      tolerance: 1,
      mistakes: {
        'You forgot a joint: there is a bed under the first course too.': heightOfCourses(
          courses,
          unit,
          joint,
          'none-under-first',
        ),
        'You counted a joint above the last course.': heightOfCourses(courses, unit, joint, 'above-last-too'),
        'You left out the joints.': courses * unit,
      },
      explanation: `${courses} × (${formatLength(unit, ask.system)} + ${formatLength(joint, ask.system)}) = ${formatLength(answer, ask.system)}.`,
      source: citeFormula('height = courses × (brick + bed)'),
    });
  }),

  familyOf(TOPIC, 'drift', (ask) => {
    const courses = ask.chance.whole(8, 30);
    const off = roundLength(ask.chance.whole(1, 3), ask.system) || roundLength(2, ask.system);
    const answer = driftAfter(courses, off);
    return lengthDraft(ask, {
      prompt: `At one lead every course comes out ${formatLength(off, ask.system)} too high. How far is the top off after ${courses} courses?`,
      answer,
      tolerance: 0.5,
      mistakes: {
        'That is the fault of one course. It adds up.': off,
        'You left out one course.': driftAfter(courses - 1, off),
        'Every course adds the whole amount, not half of it.': driftAfter(courses, off) / 2,
      },
      explanation: `${courses} × ${formatLength(off, ask.system)} = ${formatLength(answer, ask.system)}. Small faults add up: check with the rod.`,
      source: citeFormula('drift = courses × fault of each'),
    });
  }),

  familyOf(TOPIC, 'level-reversed', (ask) => {
    const truth = ask.chance.whole(2, 8);
    const tool = ask.chance.whole(1, Math.max(1, truth - 1));
    const first = roundLength(truth + tool, ask.system);
    const second = roundLength(truth - tool, ask.system);
    const { slope, error } = reversalOf(first, second);
    return lengthDraft(ask, {
      prompt: `A level laid on a course shows a fall of ${formatLength(first, ask.system)} to the right. Turned end for end on the same spot it shows ${formatLength(second, ask.system)}, also to the right. How much does the course really fall over the level's length?`,
      answer: slope,
      tolerance: 0.3,
      mistakes: {
        'That is the fault of the level itself.': error,
        'That trusts the first reading. The level has a fault of its own.': first,
        'That trusts the second reading. The level has a fault of its own.': second,
        'Halve the sum: both readings hold the true fall.': first + second,
      },
      explanation: `The level's own fault adds in one reading and takes away in the other. The mean, (${formatLength(first, ask.system)} + ${formatLength(second, ask.system)}) ÷ 2 = ${formatLength(slope, ask.system)}, is the true fall.`,
      source: citeFormula('true fall = mean of the two readings'),
    });
  }),

  familyOf(TOPIC, 'sag', (ask) => {
    const length = pickLength(ask, [9000, 10000, 12000, 15000, 18000]);
    const pull = ask.chance.pick([20, 30, 40, 50]);
    const sag = (bays: number) => sagInBays(lineWeight(USUAL_LINE_MASS), length, pull, bays);
    // Finer than a tape: hundredths of a mm, or thousandths of an inch.
    const shown = (mm: Mm) =>
      ask.system === 'mm' ? `${formatNumber(mm, 2)} mm` : `${formatNumber(mm / inches(1), 3)} in`;
    return chooseDraft(ask, {
      prompt: `A line of ${formatLength(length, ask.system)} sags ${shown(sag(1))} in the middle. You hold it up at mid-span and keep the same pull. How much does each half sag?`,
      right: { text: shown(sag(2)), why: 'Half the span gives a quarter of the sag.' },
      wrong: [
        {
          text: shown(sag(1) / 2),
          why: 'That is half. Sag goes by the square of the span.',
        },
        {
          text: shown(sag(1) / 8),
          why: 'That is an eighth. Sag goes by the square of the span.',
        },
        { text: shown(sag(1)), why: 'That is the sag without the support.' },
      ],
      explanation: 'Sag goes by the square of the span: half the span, a quarter of the sag.',
      source: citeFormula('sag = weight × span² ÷ (8 × pull)'),
    });
  }),

  familyOf(TOPIC, 'plumb', (ask) => {
    const run = pickLength(ask, [1200, 1500, 2000]);
    const limit = governingLimit(ask.rules, 'plumb');
    const shown = (mm: number) => formatLength(mm, ask.system);
    const verdictOf = (mm: number) => slopeVerdict(limit.bound, mm / run, run);
    const bound = verdictOf(run / 50).limit;
    const readings = [0, 0.25, 0.45, 0.6, 1.5, 1.8, 2.2, 3].map((factor) =>
      roundLength(bound * factor, ask.system),
    );
    const choice = (mm: number): Choice => ({
      text: shown(mm),
      why: `This lean is ${verdictOf(mm).passes ? 'within' : 'beyond'} the limit for the height.`,
    });
    return pickDraft(ask, {
      prompt: `Rules in use: ${ruleSetTitle(ask.rules)}. Plumb was read at several places over a height of ${shown(run)}. Which readings are out?`,
      right: readings.filter((mm) => !verdictOf(mm).passes).map(choice),
      wrong: readings.filter((mm) => verdictOf(mm).passes).map(choice),
      explanation: `Over ${shown(run)} the face may lean about ${shown(bound)}.`,
      source: citeLimit(limit, ask.rules),
    });
  }),

  familyOf(TOPIC, 'corner', (ask) => {
    const base = roundLength(ask.chance.pick([1, 2]) * 300, ask.system);
    const [along, across] = [4 * base, 3 * base];
    const off = roundLength(ask.chance.whole(4, 12), ask.system);
    const wall = pickLength(ask, [4000, 5000, 6000, 8000]);
    const answer = Math.abs(offAtEnd(wall, cornerOf(along, across, squareDiagonal(along, across) + off)));
    return lengthDraft(ask, {
      prompt: `You set out a corner with sides of ${formatLength(across, ask.system)} and ${formatLength(along, ask.system)}. The diagonal is ${formatLength(off, ask.system)} too long. The second wall leaves the corner along the side of ${formatLength(across, ask.system)} and is ${formatLength(wall, ask.system)} long. How far is its end off the square line?`,
      answer,
      tolerance: Math.max(2, answer * 0.02),
      mistakes: {
        'That is the fault of the diagonal. It grows along the wall.': off,
        'The diagonal lies aslant: the end of the side is off by 5/4 of its fault.': (off * wall) / across,
        'Go by the side that the wall runs along, and mind that the diagonal lies aslant.':
          (off * wall) / along,
      },
      explanation: `The diagonal's fault turns the corner a little. Over the whole wall that makes ${formatLength(answer, ask.system)}.`,
      source: citeFormula('3-4-5 triangle, and the angle from its three sides'),
    });
  }),

  familyOf(TOPIC, 'perpends-pass', (ask) => whichPass(ask, 'perpend-line')),
  familyOf(TOPIC, 'proud-limit', (ask) => whichLimit(ask, 'unit-set')),
  commonOrder(TOPIC, 'steps', {
    prompt: 'Put these steps of laying to a line in order.',
    steps: {
      'Mark the gauge on the rod': 'Both leads are built to the same rod.',
      'Build a lead at either end': 'The line needs something to be held by.',
      'Check the leads for plumb and gauge': 'A line copies the faults of its leads.',
      'Stretch the line between the leads': 'It is stretched once the leads are true.',
      'Hold up the middle where it sags': 'Sag is taken out before a brick is laid to it.',
      'Lay the course just clear of the line': 'A brick that touches pushes the line out.',
      'Move the line up to the next course': 'The line goes up when the course is done.',
    },
    explanation: 'Rod, leads, check, line, middle, course, then up.',
  }),
  familyOf(TOPIC, 'kind', (ask) => limitKind(ask, TOPIC)),
];
