import { spacingVerdict } from '../../limits/bound';
import { ruleSetTitle } from '../../limits/limits';
import { areaEach, fewestTies, tiesUpJamb } from '../../trade/tie-field';
import { formatLength, inches, type Mm, squareFeet } from '../../units';
import { COMMON_PRACTICE, citeFormula, citeLimit, governingLimit } from '../cite';
import { type Choice, chooseDraft, commonOrder, numberDraft, pickDraft } from '../drafts';
import { isOwn, mostUpEdge } from '../edge-ties';
import { type Family, familyOf } from '../family';
import { limitKind, whichLimit, whichPass } from '../limit-drafts';
import { formatNumber, roundLength, usualLengths } from '../measure';

const TOPIC = 'ties';
/** Inches. */
const ACROSS = [16, 24, 32, 36];
const UP = [12, 16, 18, 20, 24];

/** Areas of wall by the reader's lengths: how many mm² one is, and the length its sides are reckoned in, mm. */
const AREA = {
  mm: { unit: 'm²', words: 'square metres', each: 1e6, side: 'm', length: 1000 },
  inches: { unit: 'sq ft', words: 'square feet', each: squareFeet(1), side: 'ft', length: inches(0, 1) },
} as const;

export const TIES: readonly Family[] = [
  familyOf(TOPIC, 'spacings-pass', (ask) => {
    const limit = governingLimit(ask.rules, 'tie-spacing');
    const across = usualLengths(ask, [400, 600, 800, 900], ACROSS);
    const up = usualLengths(ask, [300, 400, 450, 500, 600], UP);
    const pairs = across.flatMap((horizontal) => up.map((vertical) => ({ horizontal, vertical })));
    // What fails only because 16 in stands for 400 mm is not asked.
    const clear = pairs.filter(
      ({ vertical, horizontal }) =>
        spacingVerdict(limit.bound, vertical, horizontal).passes ||
        !spacingVerdict(limit.bound, vertical * 0.97, horizontal * 0.97).passes,
    );
    const told = ({ vertical, horizontal }: { vertical: Mm; horizontal: Mm }): Choice => {
      const verdict = spacingVerdict(limit.bound, vertical, horizontal);
      const { unit, each } = AREA[ask.system];
      const area = formatNumber(areaEach(horizontal, vertical) / each, 2);
      return {
        text: `${formatLength(vertical, ask.system)} up, ${formatLength(horizontal, ask.system)} across`,
        why: `Each tie holds ${area} ${unit}. ${verdict.passes ? 'Both spacings are allowed together.' : `At that width the spacing ${verdict.which === 'vertical' ? 'up' : 'across'} is too much.`}`,
      };
    };
    const passes = ({ vertical, horizontal }: { vertical: Mm; horizontal: Mm }) =>
      spacingVerdict(limit.bound, vertical, horizontal).passes;
    return pickDraft(ask, {
      prompt: `Rules in use: ${ruleSetTitle(ask.rules)}. Which tie spacings pass?`,
      right: clear.filter(passes).map(told),
      wrong: clear.filter((pair) => !passes(pair)).map(told),
      explanation:
        'Look at both spacings together. The most up and the most across are not allowed at once where the rule also limits the pair or the area.',
      source: citeLimit(limit, ask.rules),
    });
  }),

  familyOf(TOPIC, 'fewest', (ask) => {
    const limit = governingLimit(ask.rules, 'tie-spacing');
    const [across = 400] = usualLengths(ask, [400], ACROSS);
    const up = ask.chance.pick(usualLengths(ask, [300, 400, 450], [12, 16, 18]));
    const { unit, each, side, length } = AREA[ask.system];
    const one = areaEach(across, up) / each;
    const panel =
      (ask.system === 'mm' ? ask.chance.whole(6, 30) : ask.chance.whole(60, 300)) +
      ask.chance.pick([0.2, 0.5, 0.7]);
    const answer = fewestTies(panel * each, one * each);
    const squareOf = (spacing: Mm) => Math.ceil((panel * each) / (spacing * spacing));
    return numberDraft({
      prompt: `Ties are set ${formatLength(up, ask.system)} apart up the wall and ${formatLength(across, ask.system)} across. A panel has ${panel} ${unit}. How many ties does the field need at least, by area?`,
      unit: 'ties',
      answer,
      tolerance: 0.4,
      mistakes: {
        'You rounded down. The last bit of wall needs a tie too.': answer - 1,
        'You used the spacing up for both. Use both spacings.': squareOf(up),
        'You used the spacing across for both. Use both spacings.': squareOf(across),
        'You used one spacing only. Multiply both to get the area of each tie.': Math.ceil(
          panel / (across / length),
        ),
      },
      explanation: `Each tie holds ${formatNumber(up / length, 3)} ${side} × ${formatNumber(across / length, 3)} ${side} = ${formatNumber(one, 4)} ${unit}. ${panel} ÷ ${formatNumber(one, 4)}, rounded up: ${answer}. Ties at edges come on top.`,
      source: citeLimit(limit, ask.rules),
    });
  }),

  familyOf(
    TOPIC,
    'up-a-jamb',
    (ask) => {
      const { limit, most } = mostUpEdge(ask.rules);
      const height = roundLength(
        most * (ask.chance.whole(1, 5) + ask.chance.pick([0.3, 0.5, 0.7])),
        ask.system,
      );
      const answer = tiesUpJamb(height, most);
      return numberDraft({
        prompt: `Rules in use: ${ruleSetTitle(ask.rules)}. Ties beside an opening may be ${formatLength(most, ask.system)} apart at most. The jamb is ${formatLength(height, ask.system)} high, with a tie at its foot and one at its top. How many ties does it need at least?`,
        unit: 'ties',
        answer,
        tolerance: 0.4,
        mistakes: {
          'You counted gaps. There is one tie more than gaps.': answer - 1,
          'You rounded the gaps down and forgot the tie at the end.': answer - 2,
          'That is one more than needed.': answer + 1,
        },
        explanation: `${formatLength(height, ask.system)} ÷ ${formatLength(most, ask.system)}, rounded up, is ${answer - 1} gaps. So ${answer} ties.`,
        source: citeLimit(limit, ask.rules),
      });
    },
    (rules) => isOwn(rules, 'tie-edge-spacing'),
  ),

  familyOf(TOPIC, 'area-each', (ask) => {
    const across = ask.chance.pick(usualLengths(ask, [400, 600, 800], ACROSS));
    const up = ask.chance.pick(usualLengths(ask, [300, 400, 450, 500, 600], UP));
    const { unit, words, each, side, length } = AREA[ask.system];
    const area = areaEach(across, up) / each;
    return numberDraft({
      prompt: `Ties are ${formatLength(up, ask.system)} apart up the wall and ${formatLength(across, ask.system)} across. How much wall does each tie hold, in ${words}?`,
      unit,
      answer: area,
      tolerance: ask.system === 'mm' ? 0.004 : 0.02,
      mistakes: {
        'You used only the spacing across.': (across * across) / each,
        'You used only the spacing up.': (up * up) / each,
        [`That is how many ties one ${unit} has.`]: 1 / area,
        'Staggering the rows does not halve the area.': area / 2,
        ...(ask.system === 'mm'
          ? {}
          : { 'You divided by twelve once. A square foot is twelve times twelve.': area * 12 }),
      },
      explanation: `${formatNumber(up / length, 3)} ${side} × ${formatNumber(across / length, 3)} ${side} = ${formatNumber(area, 3)} ${unit}.`,
      source: citeFormula('area of each = spacing up × spacing across'),
    });
  }),

  familyOf(TOPIC, 'which-fall', (ask) => {
    const outward = ask.chance.whole(2, 6);
    const inward = [4, 7, 10].map((mm) => roundLength(mm + ask.chance.whole(0, 2), ask.system));
    const shown = (mm: Mm) => formatLength(mm, ask.system);
    return chooseDraft(ask, {
      prompt:
        'These ties cross the air space. The backing is at the left, the brick at the right. Which one is right?',
      right: {
        text: `The brick end is ${shown(outward)} lower`,
        why: 'It falls outward: water drips off away from the backing.',
        drawing: { kind: 'tie', fall: outward },
      },
      wrong: inward.map((mm) => ({
        text: `The backing end is ${shown(mm)} lower`,
        why: 'It leads water to the backing.',
        drawing: { kind: 'tie', fall: -mm },
      })),
      explanation: 'A tie lies level or falls outward, and still does after the frame has shrunk.',
      source: COMMON_PRACTICE,
    });
  }),

  familyOf(TOPIC, 'embedment-limit', (ask) => whichLimit(ask, 'tie-embedment')),
  familyOf(TOPIC, 'embedment-passes', (ask) => whichPass(ask, 'tie-embedment')),
  familyOf(
    TOPIC,
    'edge-passes',
    (ask) => whichPass(ask, 'tie-edge-distance'),
    (rules) => isOwn(rules, 'tie-edge-distance'),
  ),
  commonOrder(TOPIC, 'steps', {
    prompt: 'Put these steps of building in a tie in order.',
    steps: {
      'Mark the studs where they can be seen': 'A tie in the sheathing alone holds nothing.',
      'Bring the bed up to the height of the tie': 'The tie goes where a bed is, not the bed to the tie.',
      'Fix the tie to the stud, bent at the fastener': 'It is fixed at the height of the bed.',
      'Lay the end of the tie in fresh mortar': 'Mortar has to be below the tie.',
      'Spread mortar over the tie': 'Mortar has to be above it too.',
      'Photograph the row with a tape in it': 'This is the last moment it can be seen.',
      'Lay the next course on top': 'That covers the tie for good.',
    },
    explanation: 'Studs, bed, fix, lay in, cover, photograph, next course.',
  }),
  familyOf(TOPIC, 'kind', (ask) => limitKind(ask, TOPIC)),
];
