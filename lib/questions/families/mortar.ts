import { boundAt } from '../../limits/bound';
import { ruleSetTitle } from '../../limits/limits';
import { dampSandFor } from '../../trade/mortar-bulking';
import { sandRatio } from '../../trade/mortar-mix';
import { fromSystem } from '../../units';
import { citeFormula, citeLimit, governingLimit } from '../cite';
import { type Choice, chooseDraft, commonOrder, commonPick, numberDraft, pickDraft } from '../drafts';
import { type Family, familyOf } from '../family';
import { limitKind, whichLimit, whichPass } from '../limit-drafts';
import { formatNumber, formatValue, pickUsual } from '../measure';

const TOPIC = 'mortar';

/** 545 -> "9:05". Minutes from midnight. */
function clock(minutes: number): string {
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
}

export const MORTAR: readonly Family[] = [
  familyOf(TOPIC, 'sand-ratio', ({ chance, rules }) => {
    const mix = chance.pick([
      { cement: 1, lime: 0.5 },
      { cement: 1, lime: 1 },
      { cement: 1, lime: 0.25 },
      { cement: 2, lime: 1 },
      { cement: 1, lime: 2 },
    ]);
    const sand = chance.whole(5, 24) / 2;
    const answer = sandRatio({ ...mix, sand });
    const limit = governingLimit(rules, 'sand-ratio');
    const most = boundAt(limit, {});
    return numberDraft({
      prompt: `A batch has ${mix.cement} of cement, ${mix.lime} of lime and ${sand} of sand, all by volume, the sand damp and loose. How many volumes of sand come to one of cement and lime together?`,
      unit: 'volumes',
      answer,
      tolerance: 0.03,
      mistakes: {
        'You left out the lime. It counts with the cement.': sand / mix.cement,
        'You divided the wrong way round.': (mix.cement + mix.lime) / sand,
        'That is the share of sand in the whole mix.': sand / (mix.cement + mix.lime + sand),
      },
      explanation: `${sand} ÷ (${mix.cement} + ${mix.lime}) = ${formatNumber(answer, 2)}. At most ${most} is allowed, so this batch ${answer <= most ? 'is not over-sanded' : 'has too much sand'}.`,
      source: citeLimit(limit, rules),
    });
  }),

  familyOf(TOPIC, 'most-sand', ({ chance, rules }) => {
    const cement = chance.whole(1, 6);
    const lime = (cement * chance.pick([1, 2, 4])) / 4;
    const limit = governingLimit(rules, 'sand-ratio');
    const most = boundAt(limit, {});
    return numberDraft({
      prompt: `Rules in use: ${ruleSetTitle(rules)}. You put in ${cement} boxes of cement and ${lime} of lime. How many boxes of damp, loose sand may go in at most?`,
      unit: 'volumes',
      answer: most * (cement + lime),
      tolerance: 0.05,
      mistakes: {
        'You left out the lime. It counts with the cement.': most * cement,
        'That is for one box of cement and lime together.': most,
        'You left out the cement.': most * lime,
      },
      explanation: `${most} × (${cement} + ${lime}) = ${formatNumber(most * (cement + lime), 2)}.`,
      source: citeLimit(limit, rules),
    });
  }),

  familyOf(TOPIC, 'bulking', ({ chance }) => {
    const dry = chance.whole(6, 24);
    const percent = chance.pick([10, 15, 20, 25, 30]);
    const answer = dampSandFor(dry, percent / 100);
    return numberDraft({
      prompt: `A mix by dry sand asks for ${dry} boxes. Your sand is damp and has swollen by ${percent} %. How many boxes of it do you need?`,
      unit: 'volumes',
      answer,
      tolerance: 0.06,
      mistakes: {
        'Damp sand is puffed up. So many boxes hold too little sand.': dry,
        'You went the wrong way: damp sand takes more boxes, not fewer.': dry * (1 - percent / 100),
        'Percent are a share. Multiply.': dry + percent,
      },
      explanation: `${dry} × (1 + ${percent / 100}) = ${formatNumber(answer, 2)} boxes.`,
      source: citeFormula('damp sand = dry sand × (1 + swelling)'),
    });
  }),

  familyOf(TOPIC, 'by-when', (ask) => {
    const air = pickUsual(ask, '°C', [12, 16, 20, 23, 26, 29, 32], [54, 61, 68, 73, 79, 84, 90]);
    const airText = formatValue(air, '°C', ask.system);
    const start = 60 * ask.chance.whole(7, 13) + 5 * ask.chance.whole(0, 11);
    const limit = governingLimit(ask.rules, 'mortar-life');
    const life = boundAt(limit, { air });
    const other = boundAt(limit, { air: air < 25 ? 30 : 15 });
    const told = (minutes: number, why: string): Choice => ({ text: clock(start + minutes), why });
    return chooseDraft(ask, {
      prompt: `Rules in use: ${ruleSetTitle(ask.rules)}. A batch was mixed at ${clock(start)}. The air is at ${airText}. By when must it be in its final place?`,
      right: told(life, 'That is the time from mixing that this air allows.'),
      wrong: [
        told(other, `That is the time for ${air < 25 ? 'hot' : 'cooler'} air.`),
        told(60, 'That is sooner than it has to be.'),
        told(life + 60, 'That is an hour too late.'),
      ],
      explanation: `In air of ${airText} mortar may be ${life} minutes old: ${clock(start)} and ${life} minutes is ${clock(start + life)}.`,
      source: citeLimit(limit, ask.rules),
    });
  }),

  familyOf(TOPIC, 'batches-pass', (ask) => {
    const limit = governingLimit(ask.rules, 'mortar-life');
    const told = (air: number, age: number): Choice => ({
      text: `${age} minutes old, air ${formatValue(air, '°C', ask.system)}`,
      why: `At ${formatValue(air, '°C', ask.system)} it may be ${boundAt(limit, { air })} minutes old.`,
    });
    const airs = ask.system === 'mm' ? [14, 18, 22, 27, 30, 34] : [57, 64, 72, 81, 86, 93];
    const batches = airs.flatMap((shown) =>
      [60, 85, 110, 140, 165, 190].map((age) => ({
        air: fromSystem(shown, '°C', ask.system),
        age: age + ask.chance.pick([-4, 0, 3]),
      })),
    );
    const passes = ({ air, age }: { air: number; age: number }) => age <= boundAt(limit, { air });
    return pickDraft(ask, {
      prompt: `Rules in use: ${ruleSetTitle(ask.rules)}. Which batches may still be used?`,
      right: batches.filter(passes).map(({ air, age }) => told(air, age)),
      wrong: batches.filter((batch) => !passes(batch)).map(({ air, age }) => told(air, age)),
      explanation: 'Hot air shortens the time. Look at the air first, then at the age.',
      source: citeLimit(limit, ask.rules),
    });
  }),

  familyOf(TOPIC, 'life-limit', (ask) => {
    const air = pickUsual(ask, '°C', [10, 15, 20, 27, 30, 35], [50, 59, 68, 81, 86, 95]);
    return whichLimit(ask, 'mortar-life', { air }, `, in air of ${formatValue(air, '°C', ask.system)}`);
  }),
  familyOf(TOPIC, 'unit-cold', (ask) => whichPass(ask, 'mortar-warm')),
  commonPick(TOPIC, 'too-much-sand', {
    prompt: 'Which of these point to mortar that is too lean, too old or frozen?',
    right: {
      'A nail scratches it deep and easily': 'Sound mortar resists a nail.',
      'It rubs off as sand under a finger': 'There is too little binder, or it did not set.',
      'Its skin flakes after a night of frost': 'Frost has broken it before it was hard.',
      'Bricks lift off clean with no mortar on them': 'It was too dry or too old to stick.',
    },
    wrong: {
      'It is paler than in the wall next door': 'Sand and pigment make colour, not strength alone.',
      'White bloom that brushes off a new wall': 'Salts came out with the water. It is no decay.',
      'A soft but whole joint in a very old house': 'It may be lime, and right for those bricks.',
      'A smooth, dense and hollow-shaped face': 'That is good tooling.',
    },
    explanation: 'Scratch, rub and lift. Colour and bloom alone are no fault.',
  }),
  commonOrder(TOPIC, 'steps', {
    prompt: 'Put these steps of mixing a batch in order.',
    steps: {
      'Read the mix on the drawings': 'The mix is chosen before anything is measured.',
      'Fill the gauge box level, once for each part': 'Parts are measured by box, not by shovel.',
      'Put some of the water in the mixer': 'Water goes first, so that nothing cakes.',
      'Add sand, cement and lime': 'Solids go into the water.',
      'Mix by the clock, all of the batch': 'All the parts are in before the time counts.',
      'Write the time on the batch': 'The clock started when it was mixed.',
      'Use it up before its time is over': 'Old mortar is thrown away.',
    },
    explanation: 'Read, measure, water, solids, mix, note the time, use in time.',
  }),
  familyOf(TOPIC, 'kind', (ask) => limitKind(ask, TOPIC)),
];
