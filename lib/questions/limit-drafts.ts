import { type At, boundAt } from '../limits/bound';
import { capital } from '../limits/format-amount';
import type { Limit, LimitKind } from '../limits/limit';
import { limitsOf, namedLimitOf, ruleSetTitle } from '../limits/limits';
import { inches, type LengthSystem } from '../units';
import { citeLimit, governingLimit, otherBounds } from './cite';
import { type Choice, chooseDraft, distinct, pickDraft } from './drafts';
import type { Ask, Draft } from './family';
import { formatValue, roundLength } from './measure';
import { someOf } from './shuffle';
import { LIMITS_OF_TOPIC, type QuestionTopic } from './topics';

const KINDS: Readonly<Record<LimitKind, string>> = {
  'code minimum': 'A code minimum is law where the code is adopted.',
  'standard tolerance':
    'A standard tolerance binds where the contract, the warranty or the code calls it up.',
  'good practice': 'Good practice is advice from the trade: you should, not you must.',
  looks: 'A limit of looks is judged from a distance, and only where it was asked for.',
};

/** Share by which a figure may differ when it was only rounded in another unit. */
const SAME_BUT_ROUNDED = 0.03;

const FACTORS = [0.5, 0.6, 0.75, 0.85, 1.05, 1.2, 1.35, 1.5, 2];
const SIXTEENTH = inches(1 / 16);
const FOOT_IN_M = inches(0, 1) / 1000;
const ROUND = [50, 25, 10, 5];
const ROUND_SIXTEENTHS = [64, 32, 16, 8, 4, 2];

const END = { 'at most': 'at most', 'at least': 'at least', is: 'just' } as const;

/** Which figure the rule set in use asks for. Wrong ones are other rule sets' figures, then figures near it. */
export function whichLimit(ask: Ask, id: string, at: At = {}, where = ''): Draft {
  const limit = governingLimit(ask.rules, id);
  const value = boundAt(limit, at);
  const shown = (each: number) => formatValue(each, limit.unit, ask.system);
  // 4 in against 100 mm is the same rule in another country's rounding: no question should hang on it.
  const elsewhere = otherBounds(ask.rules, id, at).filter(
    (other) => Math.abs(other.value - value) > SAME_BUT_ROUNDED * value,
  );
  const others: Choice[] = elsewhere.map((other) => ({
    text: shown(other.value),
    why: `That is the wrong rule set: ${shown(other.value)} is the figure of ${ruleSetTitle(other.rules)}.`,
  }));
  const near: Choice[] = distractorsOf(value, limit.unit, ask.system).map((other) => ({
    text: shown(other),
    why: `${shown(other)} is ${other < value ? 'less' : 'more'} than the figure in the source.`,
  }));
  const wrong = [...someOf(others, 2, ask.chance), ...someOf(near, near.length, ask.chance)];
  return chooseDraft(ask, {
    prompt: `Rules in use: ${ruleSetTitle(ask.rules)}. ${limit.quantity}${where}: what is the limit?`,
    right: { text: shown(value), why: 'That is the figure of the rules in use.' },
    wrong: distinct(wrong, [shown(value)]).slice(0, 3),
    explanation: `${limit.quantity}${where}: ${END[limit.end]} ${shown(value)}. A value exactly at the limit passes.`,
    source: citeLimit(limit, ask.rules),
  });
}

/**
 * Figures near a limit, as round as the limit is itself and on both sides of it: 25 among 13, 19 and 21 would be told by its form.
 * In the unit of the limit; shares not above the whole.
 */
function distractorsOf(value: number, unit: Limit['unit'], system: LengthSystem): readonly number[] {
  // A length that is no whole number of mm was published in inches.
  const inInches = unit === 'mm' && (system === 'inches' || !Number.isInteger(value));
  // And a distance that is no whole number of metres, in feet.
  const inFeet = unit === 'm' && system === 'inches' && !Number.isInteger(value);
  const step = inInches ? SIXTEENTH : inFeet ? FOOT_IN_M : Number.isInteger(value) ? 1 : 0.1;
  const steps = Math.round(value / step);
  const round = (inInches ? ROUND_SIXTEENTHS : ROUND).find((each) => steps % each === 0 && steps >= 3 * each);
  const grain = round ?? 1;
  const near = FACTORS.map((factor) => Math.round((steps * factor) / grain) * grain);
  const others = [...new Set(near)].filter((each) => each > 0 && each !== steps).map((each) => each * step);
  return unit === '%' ? others.filter((each) => each <= 100) : others;
}

/** Which of some readings pass. */
export function whichPass(ask: Ask, id: string, at: At = {}, where = ''): Draft {
  const limit = governingLimit(ask.rules, id);
  const value = boundAt(limit, at);
  const quantity = `${limit.quantity}${where}`;
  return passDraft(ask, { limit, value, quantity, others: otherBounds(ask.rules, id, at) });
}

/** Which of some readings pass by a figure of the limit. Readings lie on both sides of it, and now and then just on it. */
export function passDraft(
  ask: Ask,
  {
    limit,
    value,
    quantity,
    others = [],
  }: {
    readonly limit: Limit;
    readonly value: number;
    readonly quantity: string;
    readonly others?: ReturnType<typeof otherBounds>;
  },
): Draft {
  const shown = (each: number) => formatValue(each, limit.unit, ask.system);
  const within = limit.end === 'at most' ? 'not above' : 'not below';
  const choices = readings(ask, limit, value).filter(
    (each) => each === value || shown(each) !== shown(value),
  );
  const passes = (each: number) => (limit.end === 'at most' ? each <= value : each >= value);
  const whyFails = (each: number): string => {
    const elsewhere = others.find((other) =>
      limit.end === 'at most' ? each <= other.value : each >= other.value,
    );
    const told =
      elsewhere === undefined ? '' : ` It would pass under ${ruleSetTitle(elsewhere.rules)}: other rules.`;
    return `${shown(each)} is ${each > value ? 'above' : 'below'} ${shown(value)}: it fails.${told}`;
  };
  return pickDraft(ask, {
    prompt: `Rules in use: ${ruleSetTitle(ask.rules)}. ${quantity}: which of these readings pass?`,
    right: choices.filter(passes).map((each) => ({
      text: shown(each),
      why:
        each === value
          ? `${shown(each)} is exactly at the limit: that passes.`
          : `${shown(each)} is ${within} ${shown(value)}: it passes.`,
    })),
    wrong: choices
      .filter((each) => !passes(each))
      .map((each) => ({ text: shown(each), why: whyFails(each) })),
    explanation: `The limit is ${END[limit.end]} ${shown(value)}. A value exactly at the limit passes.`,
    source: citeLimit(limit, ask.rules),
  });
}

function readings(ask: Ask, limit: Limit, value: number): readonly number[] {
  const factors = [0.4, 0.55, 0.7, 0.8, 1.25, 1.4, 1.6, 2].map(
    (each) => each * (1 + ask.chance.whole(-3, 3) / 100),
  );
  const drawn = factors.map((factor) =>
    limit.unit === 'mm' ? roundLength(value * factor, ask.system) : Math.round(value * factor),
  );
  const possible = limit.unit === '%' ? [...drawn.filter((each) => each < value), (value + 100) / 2] : drawn;
  return [...new Set([value, ...possible])].filter((each) => each > 0 && (limit.unit !== '%' || each <= 100));
}

/** Which kind of limit a limit of the topic is, under the rule set in use. */
export function limitKind(ask: Ask, topic: QuestionTopic): Draft {
  const limit = ask.chance.pick(limitsFor(ask, topic));
  const kinds = Object.keys(KINDS) as readonly LimitKind[];
  const choice = (kind: LimitKind): Choice => ({ text: capital(kind), why: KINDS[kind] });
  const asked = chooseDraft(ask, {
    prompt: `Rules in use: ${ruleSetTitle(ask.rules)}. Which kind of limit is this one? ${limit.quantity}.`,
    right: choice(limit.kind),
    wrong: kinds.filter((kind) => kind !== limit.kind).map(choice),
    explanation: `This one is of the kind "${limit.kind}". ${KINDS[limit.kind]}`,
    source: citeLimit(limit, ask.rules),
  });
  return asked.kind === 'choose' ? { ...asked, kind: 'limit-kind' } : asked;
}

/** Good practice also keeps codes of countries without a rule set of their own: not for asking what kind they are elsewhere. */
export function isOfThisPlace(limit: Limit): boolean {
  return limit.rules !== 'good-practice' || limit.kind === 'good practice' || limit.kind === 'looks';
}

/** Limits of the topic that govern and that someone has read; those of good practice where the rule set has none of its own. */
function limitsFor({ rules }: Ask, topic: QuestionTopic): readonly Limit[] {
  const topics = LIMITS_OF_TOPIC[topic];
  const all = [...limitsOf(rules), ...limitsOf('good-practice')];
  return all.filter(
    (limit) =>
      topics.includes(limit.topic) &&
      limit.howSure !== 'memory' &&
      isOfThisPlace(limit) &&
      namedLimitOf(rules, limit.id) === limit,
  );
}
