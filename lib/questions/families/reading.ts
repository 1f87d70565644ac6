import type { LimitKind } from '../../limits/limit';
import { limitsOf, ruleSetTitle } from '../../limits/limits';
import { formatLength, inches } from '../../units';
import { COMMON_PRACTICE, citeFormula, citeLimit, governingLimit } from '../cite';
import { chooseDraft, commonOrder, numberDraft, pickDraft } from '../drafts';
import { type Family, familyOf } from '../family';
import { isOfThisPlace, limitKind, whichLimit, whichPass } from '../limit-drafts';
import { formatNumber } from '../measure';

const TOPIC = 'reading';

const HAZARDS = {
  'Could fall': [
    'Steel that ends at the jamb',
    'A return that stands on nothing',
    'No ties beside a window',
    'A bare back behind a stone',
    'Brick past half its ledge',
  ],
  'Lets water in': [
    'Head joints that are hollow',
    'Weep holes rubbed over',
    'No flashing at the base',
    'Raked joints in thin veneer',
  ],
  'Looks only': [
    'A bed a little thick',
    'Head joints a little out of line',
    'One brick set a little proud',
    'A course a little off level',
  ],
} as const;

const TOOLS = [
  { job: 'The lean of a corner over its height', tool: 'Plumb bob' },
  { job: 'A belly in the face of a wall', tool: 'Long straightedge' },
  { job: 'Steel hidden behind a lip of brick', tool: 'Magnet' },
  { job: 'The fall of a course', tool: 'Level' },
  { job: 'The width of a crack', tool: 'Crack card' },
  { job: 'The height of courses', tool: 'Gauge rod' },
  { job: 'A corner that is not square', tool: 'Tape, by 3-4-5' },
] as const;

const WORDS: Readonly<Record<LimitKind, string>> = {
  'code minimum': 'It must be so',
  'standard tolerance': 'It is to stay within',
  'good practice': 'It should be so',
  looks: 'It may be asked for',
};

export const READING: readonly Family[] = [
  commonOrder(TOPIC, 'order-of-looking', {
    prompt: 'Put these steps of looking at a finished wall in order.',
    steps: {
      'Look whether anything could fall': 'Safety is looked at before you walk up.',
      'Stand far off and look at lines and cracks': 'The whole wall comes before its parts.',
      'Look along the wall in slanting light': 'It shows where to look closer.',
      'Look at the base, then at the openings': 'What carries comes before what is carried.',
      'Come close and look at the joints': 'Close looking follows the far view.',
      'Measure what looked wrong': 'You measure where you have seen something.',
      'Hold the reading against the rule': 'A rule needs a reading.',
      'Write down what was not seen': 'It ends the report, so that nobody relies on it.',
    },
    explanation: 'Safety, far, along, base and openings, close, measure, compare, and say what was not seen.',
  }),
  commonOrder(TOPIC, 'order-of-report', {
    prompt: 'You write down one finding. Put its parts in order.',
    steps: {
      'The place': 'It must be found again before anything else is said.',
      'What is seen, in plain words': 'Seeing comes before measuring.',
      'The reading, with its tool': 'The reading backs what was seen.',
      'The rule and its kind': 'The reading is held against it.',
      'What it may lead to': 'It follows from breaking the rule.',
      'Who should do what, and how soon': 'What to do follows from what may happen.',
    },
    explanation: 'Place, what is seen, reading, rule, what it leads to, what to do.',
  }),
  familyOf(TOPIC, 'hazard', (ask) => {
    const names = Object.keys(HAZARDS) as readonly (keyof typeof HAZARDS)[];
    const name = ask.chance.pick(names);
    const fault = ask.chance.pick(HAZARDS[name]);
    return chooseDraft(ask, {
      prompt: `${fault}: which hazard is it?`,
      right: { text: name, why: 'That is what it can lead to.' },
      wrong: names
        .filter((other) => other !== name)
        .map((text) => ({ text, why: 'Think of what it can lead to at worst.' })),
      explanation: `${fault}: ${name.toLowerCase()}. What could fall comes first, then water, then looks.`,
      source: COMMON_PRACTICE,
    });
  }),
  familyOf(TOPIC, 'could-fall', (ask) =>
    pickDraft(ask, {
      prompt: 'Which of these could fall, and so are told the same day?',
      right: HAZARDS['Could fall'].map((text) => ({
        text,
        why: 'What holds it up or back is missing or weak.',
      })),
      wrong: [...HAZARDS['Lets water in'], ...HAZARDS['Looks only']].map((text) => ({
        text,
        why: 'It should be put right or agreed, but it does not fall by itself.',
      })),
      explanation: 'What could fall: people are kept away now, and a competent person decides.',
      source: COMMON_PRACTICE,
    }),
  ),
  familyOf(TOPIC, 'which-tool', (ask) => {
    const asked = ask.chance.pick(TOOLS);
    return chooseDraft(ask, {
      prompt: `${asked.job}: what do you take to it?`,
      right: { text: asked.tool, why: 'It reads just that.' },
      wrong: TOOLS.filter((other) => other !== asked).map(({ tool, job }) => ({
        text: tool,
        why: `That is for another job: ${job.toLowerCase()}.`,
      })),
      explanation: `${asked.job}: ${asked.tool.toLowerCase()}.`,
      source: COMMON_PRACTICE,
    });
  }),
  familyOf(TOPIC, 'must-or-should', (ask) => {
    const known = [...limitsOf(ask.rules), ...limitsOf('good-practice')].filter(
      (limit) => limit.howSure !== 'memory' && isOfThisPlace(limit),
    );
    const kind = ask.chance.pick([...new Set(known.map((limit) => limit.kind))]);
    const limit = ask.chance.pick(known.filter((each) => each.kind === kind));
    return chooseDraft(ask, {
      prompt: `${limit.quantity}. The limit is of the kind "${kind}". Which words fit a report?`,
      right: { text: WORDS[kind], why: 'That is how strong this kind is.' },
      wrong: Object.values(WORDS)
        .filter((text) => text !== WORDS[kind])
        .map((text) => ({ text, why: 'Those words are stronger or weaker than this kind of limit.' })),
      explanation:
        'Code minimum: it must be. Standard tolerance: it is to stay within. Good practice: it should be. Looks: it may be asked for.',
      source: citeLimit(limit, limit.rules),
    });
  }),
  familyOf(TOPIC, 'how-far-off', (ask) => {
    const limit = governingLimit(ask.rules, 'bed-joint-most');
    // In whole steps of the reader's tape: what is shown is reckoned with.
    const step = ask.system === 'mm' ? 1 : inches(1 / 16);
    const value = Math.round((limit.bound.form === 'number' ? limit.bound.value : 15) / step);
    const reading = Math.round(value * ask.chance.pick([1.2, 1.4, 1.6, 2]));
    const shown = (steps: number) => formatLength(steps * step, ask.system);
    return numberDraft({
      prompt: `Rules in use: ${ruleSetTitle(ask.rules)}. A bed reads ${shown(reading)}, the limit is ${shown(value)}. By how many percent of the limit is it over?`,
      unit: '%',
      answer: (100 * (reading - value)) / value,
      tolerance: 1,
      mistakes: {
        'That is the whole reading. Take the limit off first.': (100 * reading) / value,
        'You divided by the reading. Divide by the limit.': (100 * (reading - value)) / reading,
        'That is a length. Divide by the limit.': reading - value,
      },
      explanation: `${ask.system === 'mm' ? '' : 'In sixteenths: '}(${reading} − ${value}) ÷ ${value} = ${formatNumber((100 * (reading - value)) / value, 1)} %.`,
      source: citeLimit(limit, ask.rules),
    });
  }),
  familyOf(TOPIC, 'mean-reading', ({ chance, system }) => {
    const [unit, each, decimals] = system === 'mm' ? (['mm', 100, 2] as const) : (['in', 4, 3] as const);
    const readings = Array.from({ length: chance.whole(4, 6) }, () => (chance.whole(7, 15) * each) / 100);
    const sum = readings.reduce((total, reading) => total + reading, 0);
    return numberDraft({
      prompt: `A joint gauge reads ${readings.join(', ')} ${unit}. What is the mean, in ${system === 'mm' ? 'millimetres' : 'inches'}?`,
      unit,
      answer: sum / readings.length,
      tolerance: each / 1000,
      mistakes: {
        'You forgot the last reading.': (sum - (readings.at(-1) ?? 0)) / (readings.length - 1),
        'Divide by how many readings there are.': sum / (readings.length - 1),
        'That is the greatest reading.': Math.max(...readings),
        'That is the middle of the ends, not the mean.': (Math.max(...readings) + Math.min(...readings)) / 2,
      },
      explanation: `${readings.join(' + ')} = ${formatNumber(sum, 2)}, and ${formatNumber(sum, 2)} ÷ ${readings.length} = ${formatNumber(sum / readings.length, decimals)} ${unit}.`,
      source: citeFormula('mean = sum ÷ how many'),
    });
  }),
  familyOf(TOPIC, 'far-limit', (ask) => whichLimit(ask, 'viewing-distance')),
  familyOf(TOPIC, 'readings-pass', (ask) => whichPass(ask, 'head-joint-least')),
  familyOf(TOPIC, 'kind', (ask) => limitKind(ask, TOPIC)),
];
