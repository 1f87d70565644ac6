import { boundAt } from '../../limits/bound';
import { formatLength, inches } from '../../units';
import { citeFormula, citeLimit, governingLimit } from '../cite';
import { chooseDraft, commonOrder, commonPick, numberDraft, pickDraft } from '../drafts';
import { type Family, familyOf } from '../family';
import { limitKind, whichLimit, whichPass } from '../limit-drafts';
import { drawLength, formatArea, formatNumber, formatValue } from '../measure';

const TOPIC = 'back-buttering';

export const BACK_BUTTERING: readonly Family[] = [
  familyOf(TOPIC, 'contact-by-grid', ({ chance, rules, system }) => {
    const squares = chance.pick([40, 50, 80, 100, 120]);
    const bare = chance.whole(2, Math.floor(squares / 4));
    const contact = (100 * (squares - bare)) / squares;
    const limit = governingLimit(rules, 'back-contact');
    const least = boundAt(limit, {});
    return numberDraft({
      prompt: `You lift a unit and lay a grid of ${squares} squares over its back. In ${bare} squares no mortar touched. How many percent of the back had contact?`,
      unit: '%',
      answer: contact,
      tolerance: 0.5,
      mistakes: {
        'That is the bare share. The question asks for what touched.': 100 - contact,
        'That is a count of squares. Divide it by all the squares.': squares - bare,
        'That compares bare squares with covered ones. Compare covered ones with all.':
          (100 * bare) / (squares - bare),
      },
      explanation: `(${squares} − ${bare}) ÷ ${squares} = ${formatNumber(contact, 1)} %. The limit is at least ${formatValue(least, '%', system)}, so this back ${contact >= least ? 'passes' : 'fails'}.`,
      source: citeLimit(limit, rules),
    });
  }),

  familyOf(TOPIC, 'bare-places', (ask) => {
    const limit = governingLimit(ask.rules, 'back-void');
    const most = boundAt(limit, {});
    const places = Array.from({ length: 12 }, () => {
      const wide = drawLength(ask, 14, 70);
      const high = drawLength(ask, 14, 55);
      return { wide, high, area: wide * high };
    }).filter(({ area }) => Math.abs(area - most) > most * 0.05);
    const shown = ({ wide, high }: { wide: number; high: number }) =>
      `${formatLength(wide, ask.system)} × ${formatLength(high, ask.system)}`;
    const choices = [{ wide: 20, high: 25, area: 500 }, { wide: 60, high: 60, area: 3600 }, ...places].map(
      (place) => ({
        text: shown(place),
        why: `Its area is ${formatArea(place.area, ask.system)}, ${place.area <= most ? 'within' : 'above'} the limit.`,
        passes: place.area <= most,
      }),
    );
    return pickDraft(ask, {
      prompt:
        'These bare places were found on lifted backs, each about a rectangle, one on a back. Which are small enough?',
      right: choices.filter(({ passes }) => passes).map(({ text, why }) => ({ text, why })),
      wrong: choices.filter(({ passes }) => !passes).map(({ text, why }) => ({ text, why })),
      explanation: `Length times height gives the area. At most ${formatArea(most, ask.system)} is allowed in one place.`,
      source: citeLimit(limit, ask.rules),
    });
  }),

  familyOf(TOPIC, 'which-back', (ask) => {
    const backs = [
      {
        spread: 'ring',
        text: 'Mortar round the rim, none in the middle',
        why: 'The rim traps air. The middle never touches.',
      },
      {
        spread: 'dabs',
        text: 'Five dabs, one in each corner and one between',
        why: 'Dabs leave most of the back bare.',
      },
      {
        spread: 'ridges',
        text: 'Ridges side by side that were not pressed flat',
        why: 'Between ridges that stand, the back is bare.',
      },
    ] as const;
    return chooseDraft(ask, {
      prompt: 'Four units were pulled off fresh. Which back shows good contact?',
      right: {
        text: 'Mortar pressed flat right out to the edges',
        why: 'Mortar touched all of this back.',
        drawing: { kind: 'back', spread: 'full' },
      },
      wrong: backs.map(({ spread, text, why }) => ({ text, why, drawing: { kind: 'back', spread } })),
      explanation:
        'Good contact is mortar over the whole back. What shows at the edges says nothing of the middle.',
      source: citeLimit(governingLimit(ask.rules, 'back-contact'), ask.rules),
    });
  }),

  familyOf(TOPIC, 'mortar-for-units', ({ chance, system }) => {
    const isMetric = system === 'mm';
    const units = chance.whole(20, 60);
    const share = chance.pick([5, 10, 20]);
    // Litres from m² and mm; cubic feet from square feet and twelfths of a foot.
    const [area, bed] = isMetric
      ? [chance.pick([0.02, 0.03, 0.04, 0.05]), chance.pick([10, 12, 13])]
      : [chance.pick([0.2, 0.3, 0.4, 0.5]), chance.pick([3 / 8, 1 / 2, 5 / 8])];
    const perArea = isMetric ? bed : bed / 12;
    const whole = units * area * perArea;
    const answer = whole * (1 + share / 100);
    const [square, unit, because] = isMetric
      ? (['m²', 'litres', 'one millimetre over one square metre is a litre'] as const)
      : (['sq ft', 'cu ft', 'an inch is a twelfth of a foot'] as const);
    const thick = isMetric ? `${bed} mm` : formatLength(inches(bed), system);
    return numberDraft({
      prompt: `You set ${units} adhered units. The back of each is ${area} ${square}. The setting bed is ${thick} thick and covers all of it. Add ${share} % for waste. How much mortar is that, in ${isMetric ? 'litres' : 'cubic feet'}?`,
      unit,
      answer,
      tolerance: isMetric ? Math.max(0.2, answer * 0.02) : Math.max(0.005, answer * 0.02),
      mistakes: {
        'You left out the waste.': whole,
        'That is enough for one unit only.': area * perArea * (1 + share / 100),
        'That is area, not volume. Multiply by the thickness.': isMetric ? units * area * 1000 : units * area,
        ...(isMetric ? {} : { 'The thickness is in inches. Divide it by twelve.': answer * 12 }),
      },
      explanation: `${units} × ${area} ${square} × ${thick} = ${formatNumber(whole, 2)} ${unit}, since ${because}. With ${share} % more: ${formatNumber(answer, 2)} ${unit}.`,
      source: citeFormula('volume = area × thickness'),
    });
  }),

  familyOf(TOPIC, 'contact-limit', (ask) => whichLimit(ask, 'back-contact')),
  familyOf(TOPIC, 'contact-passes', (ask) => whichPass(ask, 'back-contact')),
  commonPick(TOPIC, 'hollow-sound', {
    prompt: 'A set unit sounds hollow when you tap it. What are good next steps?',
    right: {
      'Note the place and tap the units around it': 'A map of what sounds hollow tells more than one tap.',
      'Keep people from below until it is known': 'A unit without bond can fall.',
      'Ask for the photos of lifted units': 'They show how the back was covered.',
      'Have a competent person open up one unit': 'Only the back itself shows what is behind.',
    },
    wrong: {
      'Reject the wall because of the sound alone': 'A hollow sound is a sign, not a finding. Probe further.',
      'Pry at the edge from below to see whether it moves': 'It may come down on you.',
      'Squirt mortar in at the edge and close the joint': 'That hides the hollow and fills little of it.',
      'Hit it harder to see whether it stays on': 'A blow can break what bond there is.',
    },
    explanation: 'A hollow sound is a sign. It tells you where to look further, not what you will find.',
  }),
  commonOrder(TOPIC, 'steps', {
    prompt: 'Put these steps of setting an adhered unit in order.',
    steps: {
      'Brush the dust off the back of the unit': 'Mortar on dust holds the dust, not the unit.',
      'Damp the unit and the wall until no water stands': 'A thirsty back drinks the water the mortar needs.',
      'Rub a thin key coat onto the wall': 'The key coat must be wet when the unit arrives.',
      'Spread mortar over the whole back': 'The back is buttered once the wall is ready for it.',
      'Press the unit and slide it a little': 'Sliding lets the air out while the mortar is soft.',
      'See mortar squeeze out on every side': 'Squeeze-out is what the pressing must lead to.',
      'Leave the unit alone once it grips': 'A unit moved after it grips has lost its bond.',
    },
    explanation:
      'Clean, damp, key the wall, butter the whole back, press and slide, look for squeeze-out, then hands off.',
  }),
  familyOf(TOPIC, 'kind', (ask) => limitKind(ask, TOPIC)),
];
