import { overhangBound } from '../../limits/bound';
import { RULE_SETS } from '../../limits/limit';
import { limitOf, limitsUnder, ruleSetTitle } from '../../limits/limits';
import { bearingOf, overhangMarksOf, peakStressRatio, standingOf } from '../../trade/overhang';
import { formatLength, type Mm } from '../../units';
import { citeFormula, citeLimit, governingLimit } from '../cite';
import { type Choice, choices, lengthDraft, numberDraft, pickDraft } from '../drafts';
import { type Ask, type Family, familyOf } from '../family';
import { limitKind, whichLimit } from '../limit-drafts';
import { drawLength, formatNumber, pickLength, roundLength } from '../measure';

const TOPIC = 'support';
const TIED = 'A real veneer is tied back. Judge it by the rules, not by this sum.';

/** The limit that decides the overhang: the stricter of the two. */
function overhangSource({ rules }: Ask, depth: Mm): string {
  const fixed = limitOf(rules, 'overhang-fixed');
  const share = governingLimit(rules, 'overhang-share');
  const governs = fixed !== undefined && overhangBound(limitsUnder(rules), depth) < depth / 3 ? fixed : share;
  return citeLimit(governs, rules);
}

export const SUPPORT: readonly Family[] = [
  familyOf(TOPIC, 'tipping', (ask) => {
    const depth = drawLength(ask, 70, 110);
    const { tipping, third, kern } = overhangMarksOf(depth);
    return lengthDraft(ask, {
      prompt: `A loose brick ${formatLength(depth, ask.system)} deep is pushed out over the edge of a ledge. Nothing ties it back. At which overhang does it tip?`,
      answer: tipping,
      tolerance: 1,
      mistakes: {
        'A third is where several codes stop, well before it tips.': third,
        'At a quarter the inner edge begins to lift. It does not tip yet.': kern,
        'Then all of it is in the air. It tips long before.': depth,
      },
      explanation: `It tips when the middle of its weight passes the edge: ${formatLength(depth, ask.system)} ÷ 2 = ${formatLength(tipping, ask.system)}. ${TIED}`,
      source: citeFormula('a block balances at half its depth'),
    });
  }),

  familyOf(TOPIC, 'bearing', (ask) => {
    const depth = drawLength(ask, 75, 110);
    const overhang = drawLength(ask, 8, 30);
    const answer = bearingOf(depth, overhang);
    return lengthDraft(ask, {
      prompt: `A brick is ${formatLength(depth, ask.system)} deep. It stands ${formatLength(overhang, ask.system)} past its ledge. How much of its depth stands on the ledge?`,
      answer,
      tolerance: 1,
      mistakes: {
        'That is what hangs over, not what stands.': overhang,
        'Take the overhang off. It does not stand on anything.': depth + overhang,
        'You took the overhang off twice.': depth - 2 * overhang,
      },
      explanation: `${formatLength(depth, ask.system)} − ${formatLength(overhang, ask.system)} = ${formatLength(answer, ask.system)}.`,
      source: citeFormula('bearing = depth − overhang'),
    });
  }),

  familyOf(TOPIC, 'most-overhang', (ask) => {
    const depth = pickLength(ask, [70, 75, 80, 89, 90, 100, 110]);
    const answer = overhangBound(limitsUnder(ask.rules), depth);
    const elsewhere = Object.fromEntries(
      RULE_SETS.map((rules) => [
        `That is the wrong rule set: ${ruleSetTitle(rules)}.`,
        overhangBound(limitsUnder(rules), depth),
      ]),
    );
    return lengthDraft(ask, {
      prompt: `Rules in use: ${ruleSetTitle(ask.rules)}. A solid brick is ${formatLength(depth, ask.system)} deep. How far may its face stand past the support at most?`,
      answer,
      tolerance: 0.6,
      mistakes: {
        ...elsewhere,
        'You used only the third of the depth. The fixed length is stricter here.': depth / 3,
        'At half its depth a loose brick tips.': depth / 2,
        'Two thirds is what must stand on the support.': (depth * 2) / 3,
      },
      explanation: `The stricter of a third of the depth and a fixed length holds: ${formatLength(answer, ask.system)}.`,
      source: overhangSource(ask, depth),
    });
  }),

  familyOf(TOPIC, 'overhangs-pass', (ask) => {
    const depth = pickLength(ask, [75, 90, 100]);
    const most = overhangBound(limitsUnder(ask.rules), depth);
    const choices = [0.3, 0.5, 0.8, 1.3, 1.6, 2].map((factor) => roundLength(most * factor, ask.system));
    const told = (mm: Mm): Choice => ({
      text: formatLength(mm, ask.system),
      why: `The most here is ${formatLength(most, ask.system)}.`,
    });
    return pickDraft(ask, {
      prompt: `Rules in use: ${ruleSetTitle(ask.rules)}. Bricks ${formatLength(depth, ask.system)} deep. Which of these overhangs pass?`,
      right: choices.filter((mm) => mm <= most).map(told),
      wrong: choices.filter((mm) => mm > most).map(told),
      explanation: `At most ${formatLength(most, ask.system)}: the stricter of a third of the depth and a fixed length.`,
      source: overhangSource(ask, depth),
    });
  }),

  familyOf(TOPIC, 'which-tips', (ask) => {
    const depth = pickLength(ask, [90, 100, 110]);
    const draw = (share: number): Choice => {
      const overhang = roundLength(depth * share, ask.system);
      return {
        text: `${formatLength(depth, ask.system)} deep, ${formatLength(overhang, ask.system)} past the edge`,
        why:
          standingOf(depth, overhang) === 'tipping'
            ? 'Its middle is past the edge.'
            : 'Its middle is still over the ledge.',
        drawing: { kind: 'ledge', depth, overhang },
      };
    };
    return pickDraft(ask, {
      prompt: 'Loose bricks on a ledge, with no tie and no mortar. Which ones tip?',
      right: [0.55, 0.62, 0.7].map(draw),
      wrong: [0.2, 0.33, 0.44].map(draw),
      count: 4,
      explanation: `A loose brick tips when more than half of its depth hangs over. ${TIED}`,
      source: citeFormula('a block balances at half its depth'),
    });
  }),

  familyOf(TOPIC, 'edge-stress', (ask) => {
    const depth = pickLength(ask, [90, 100, 108]);
    const overhang = roundLength(depth * ask.chance.pick([0.1, 0.15, 0.2, 0.3]), ask.system);
    const answer = peakStressRatio(depth, overhang);
    return numberDraft({
      prompt: `A loose brick ${formatLength(depth, ask.system)} deep stands ${formatLength(overhang, ask.system)} past its ledge. How many times is the edge of the ledge pressed, against a brick with no overhang? (Up to a quarter of the depth: depth ÷ bearing × (1 + 3 × overhang ÷ bearing). Beyond: 2 × depth ÷ (1.5 × (bearing − overhang)).)`,
      unit: 'times',
      answer,
      tolerance: 0.05,
      mistakes: {
        'That spreads the weight evenly. It leans to the edge.': depth / bearingOf(depth, overhang),
        'The overhang changes it: less stands, and the weight is off the middle.': 1,
      },
      explanation: `It comes to ${formatNumber(answer, 2)} times. The edge crushes before the brick tips. ${TIED}`,
      source: citeFormula('statics of a block on a bed that takes no pull'),
    });
  }),

  familyOf(TOPIC, 'what-may-carry', (ask) =>
    pickDraft(ask, {
      prompt: 'What may carry the first course of brick veneer?',
      right: choices({
        'The ledge of a concrete foundation': 'Concrete may carry masonry.',
        'A steel angle fixed as drawn': 'Steel may carry masonry.',
        'A masonry foundation wall': 'Masonry may carry masonry.',
        'A concrete beam on its own bearings': 'Concrete may carry masonry.',
      }),
      wrong: choices({
        'The flashing at the base': 'Flashing leads water out. It carries nothing.',
        'The sheathing behind the air space': 'Ties reach it, weight must not.',
        'The frame of the window below': 'A frame is no lintel.',
        'The shingles of a lower roof': 'A roof needs an angle made for it.',
        'Ties fixed close together': 'Ties hold a wall back. They do not hold it up.',
      }),
      explanation:
        'Masonry, concrete or steel carries the first course along its whole length. Exceptions are for an engineer.',
      source: citeLimit(governingLimit(ask.rules, 'supported-share'), ask.rules),
    }),
  ),
  familyOf(TOPIC, 'share-limit', (ask) => {
    const depth = pickLength(ask, [75, 90, 102]);
    return whichLimit(ask, 'overhang-share', { depth }, `, unit ${formatLength(depth, ask.system)} deep`);
  }),
  familyOf(TOPIC, 'supported-passes', (ask) => {
    const total = ask.chance.whole(4, 9);
    const missing = ask.chance.whole(1, total - 1);
    const unit = ask.system === 'mm' ? 'm' : 'ft';
    return numberDraft({
      prompt: `A first course is ${total} ${unit} long. At the return, ${missing} ${unit} of it stand on nothing. How many percent are supported?`,
      unit: '%',
      answer: (100 * (total - missing)) / total,
      tolerance: 0.6,
      mistakes: {
        'That is the share on nothing.': (100 * missing) / total,
        [`That is ${unit}. Divide by the whole length.`]: total - missing,
      },
      explanation: `${total - missing} ÷ ${total}. All of it has to stand on something, so this fails and could fall.`,
      source: citeLimit(governingLimit(ask.rules, 'supported-share'), ask.rules),
    });
  }),
  familyOf(TOPIC, 'kind', (ask) => limitKind(ask, TOPIC)),
];
