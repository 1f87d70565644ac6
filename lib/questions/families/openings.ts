import { boundAt } from '../../limits/bound';
import { ruleSetTitle } from '../../limits/limits';
import { triangleWeight } from '../../trade/lintel-bending';
import { formatLength, inches } from '../../units';
import { citeFormula, citeLimit, governingLimit } from '../cite';
import { type Choice, chooseDraft, commonOrder, commonPick, lengthDraft, numberDraft } from '../drafts';
import { type Ask, type Family, familyOf } from '../family';
import { limitKind, whichLimit, whichPass } from '../limit-drafts';
import { drawLength, formatNumber, pickLength, roundLength } from '../measure';
import { whichAngle } from '../which-angle';

const TOPIC = 'openings';

/** Openings, weights of a face and loads that are usual in each system, with their units; all go together. */
const LOADS = {
  mm: {
    spans: [1.2, 1.5, 1.8, 2, 2.4, 3],
    weights: [1.7, 1.8, 1.9, 2],
    length: 'm',
    area: 'metre',
    square: 'm²',
    force: 'kN',
    least: 0.03,
    load: 1,
  },
  inches: {
    spans: [4, 5, 6, 7, 8, 10],
    weights: [35, 38, 40, 42],
    length: 'ft',
    area: 'foot',
    square: 'sq ft',
    force: 'lbf',
    least: 5,
    load: 200,
  },
} as const;

function openingOf(ask: Ask) {
  const span = pickLength(ask, [900, 1000, 1100, 1500, 1800, 2100]);
  const limit = governingLimit(ask.rules, 'lintel-bearing');
  return { span, limit, bearing: boundAt(limit, { span }) };
}

export const OPENINGS: readonly Family[] = [
  familyOf(TOPIC, 'lintel-length', (ask) => {
    const { span, limit, bearing } = openingOf(ask);
    return lengthDraft(ask, {
      prompt: `Rules in use: ${ruleSetTitle(ask.rules)}. An opening is ${formatLength(span, ask.system)} wide. How long must a steel lintel be at least?`,
      answer: span + 2 * bearing,
      tolerance: 1,
      mistakes: {
        'You counted the bearing at one end only.': span + bearing,
        'Then it ends at the jambs and stands on nothing.': span,
        'That is the bearing of the wrong rule set.': [span + 2 * 90, span + 2 * 150, span + 2 * inches(4)],
      },
      explanation: `${formatLength(span, ask.system)} + 2 × ${formatLength(bearing, ask.system)} = ${formatLength(span + 2 * bearing, ask.system)}.`,
      source: citeLimit(limit, ask.rules),
    });
  }),

  familyOf(TOPIC, 'bearing-limit', (ask) => {
    const { span } = openingOf(ask);
    return whichLimit(ask, 'lintel-bearing', { span }, `, opening ${formatLength(span, ask.system)} wide`);
  }),
  familyOf(TOPIC, 'bearing-passes', (ask) => {
    const { span } = openingOf(ask);
    return whichPass(ask, 'lintel-bearing', { span }, `, opening ${formatLength(span, ask.system)} wide`);
  }),

  familyOf(TOPIC, 'which-lintel', (ask) => {
    const { span, limit, bearing } = openingOf(ask);
    const draw = (left: number, right: number): Choice => {
      const [atLeft, atRight] = [
        roundLength(bearing * left, ask.system),
        roundLength(bearing * right, ask.system),
      ];
      return {
        text: `${formatLength(atLeft, ask.system)} at the left, ${formatLength(atRight, ask.system)} at the right`,
        why: `Each end is held against ${formatLength(bearing, ask.system)} by itself.`,
        drawing: { kind: 'lintel', opening: span, left: atLeft, right: atRight },
      };
    };
    return chooseDraft(ask, {
      prompt: `Rules in use: ${ruleSetTitle(ask.rules)}. Opening ${formatLength(span, ask.system)} wide. Which lintel bears enough?`,
      right: draw(1.15, 1.2),
      wrong: [draw(0.6, 1.8), draw(1.9, 0.5), draw(0.7, 0.7)],
      explanation: `Both ends need at least ${formatLength(bearing, ask.system)}. Much at one end does not make up for little at the other.`,
      source: citeLimit(limit, ask.rules),
    });
  }),

  familyOf(TOPIC, 'triangle', (ask) => {
    const { spans, weights, length, area, square, force, least } = LOADS[ask.system];
    const span = ask.chance.pick(spans);
    const weight = ask.chance.pick(weights);
    // q L² ÷ 4 in any units that go together.
    const answer = triangleWeight(weight, span);
    return numberDraft({
      prompt: `Masonry weighs ${weight} ${force} to a square ${area} of face. Over an opening of ${span} ${length} it arches, so that the lintel carries only a triangle with sides at 45 degrees. How much does the triangle weigh?`,
      unit: force,
      answer,
      tolerance: Math.max(least, answer * 0.01),
      mistakes: {
        'The triangle is only half as high as the opening is wide. So: span × half the span ÷ 2.':
          (weight * span * span) / 2,
        'That is a whole square, as high as the opening is wide.': weight * span * span,
        [`That is a strip one ${area} high.`]: weight * span,
      },
      explanation: `The triangle is ${span} ${length} wide and ${span / 2} ${length} high: ${formatNumber((span * span) / 4, 3)} ${square} × ${weight} = ${formatNumber(answer, 2)} ${force}. Fresh mortar does not arch. The table or an engineer decides.`,
      source: citeFormula('weight = wall weight × span² ÷ 4'),
    });
  }),

  familyOf(TOPIC, 'which-angle', whichAngle),

  familyOf(TOPIC, 'share-of-load', (ask) => {
    const { force, load: each } = LOADS[ask.system];
    const load = ask.chance.whole(4, 16) * each;
    const width = drawLength(ask, 75, 100);
    const bearing = pickLength(ask, [90, 100, 150]);
    return numberDraft({
      prompt: `A lintel carries ${load} ${force}, spread alike over its length. It bears ${formatLength(bearing, ask.system)} at each end on brick ${formatLength(width, ask.system)} deep. How much does one end carry?`,
      unit: force,
      answer: load / 2,
      tolerance: 0.05 * each,
      mistakes: {
        'That is the whole load. Two ends share it.': load,
        'There are two ends, not four.': load / 4,
      },
      explanation: `Each end carries half: ${load / 2} ${force}. The longer the bearing, the less it presses the brick.`,
      source: citeFormula('reaction = load ÷ 2'),
    });
  }),

  commonPick(TOPIC, 'no-lintel-signs', {
    prompt: 'Which of these say that an opening may not be carried as it should?',
    right: {
      'Cracks that step up from the corners': 'The masonry above is moving down.',
      'The course over the opening sags': 'What carries it bends, or is not there.',
      'The window frame is jammed tight': 'Weight has come onto the frame.',
      'Only sealant can be seen under the brick': 'Steel or an arch must carry the brick.',
    },
    wrong: {
      'A row of open joints just above the head': 'Those are weep holes.',
      'A thin edge of metal past the face': 'That is flashing with its drip.',
      'A magnet holds behind the lip of brick': 'Then there is steel, out of sight.',
      'Bricks on end in a straight row above': 'They may stand on steel. A mirror on a pole shows it.',
    },
    explanation:
      'Steel and its ends show in a mirror on a pole. Do not stand under it to look up. Sag and stepping cracks show from far off. If in doubt keep clear and ask an engineer.',
  }),
  commonOrder(TOPIC, 'steps', {
    prompt: 'Put these steps of bridging an opening with steel in order.',
    steps: {
      'Check the steel against the drawing': 'The wrong angle is found before it is in the wall.',
      'Bring both jambs up to the same level': 'The steel needs two level seats.',
      'Set the steel with its bearing at both ends': 'It is set on the jambs that are ready.',
      'Measure and photograph both bearings': 'Once bricks cover the ends nobody can.',
      'Fit the flashing over the steel': 'Flashing lies on the steel and under the brick.',
      'Lay the first course over the opening': 'Bricks come when steel and flashing are seen.',
      'Leave weep holes above the flashing': 'They are left open in that first course.',
    },
    explanation: 'Check, level, set, record, flash, lay, weep.',
  }),
  familyOf(TOPIC, 'kind', (ask) => limitKind(ask, TOPIC)),
];
