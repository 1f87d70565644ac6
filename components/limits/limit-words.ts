import type { HowSure, LimitKind, LimitTopic, RuleSetId } from '../../lib/limits/limit';
import type { LengthSystem } from '../../lib/units';

/** Topics in the order a wall goes up. */
export const TOPIC_WORDS: Readonly<Record<LimitTopic, string>> = {
  support: 'What carries the wall',
  joints: 'Joints',
  'back mortar': 'Mortar on the back of stuck-on units',
  bond: 'Bond and cut pieces',
  line: 'Line, level, plumb and gauge',
  openings: 'Openings and lintels',
  ties: 'Ties',
  mortar: 'Mortar',
  water: 'Air space, flashing and weep holes',
  movement: 'Movement joints',
  'height and thickness': 'Height and thickness',
  weather: 'Cold and hot days',
  'judging the face': 'Judging the finished face',
  'keeping people away': 'Keeping people away from a wall being built',
};

export const TOPIC_ORDER = Object.keys(TOPIC_WORDS) as readonly LimitTopic[];

export const KIND_WORDS: Readonly<Record<LimitKind, string>> = {
  'code minimum': 'Code',
  'standard tolerance': 'Standard',
  'good practice': 'Good practice',
  looks: 'Looks only',
};

export const HOW_SURE_WORDS: Readonly<Record<HowSure, string>> = {
  read: 'Read in a copy of the text',
  'second-hand': 'Read in someone else’s words, not in the text',
  'worked out': 'Worked out by us from the text',
  'common practice': 'No source: common practice',
  memory: 'From memory, not looked up: decides nothing',
};

/** What each rule set is, in a line. */
export const RULE_SET_WORDS: Readonly<Record<RuleSetId, string>> = {
  canada: 'The National Building Code, Part 9: houses and small buildings.',
  ontario: 'The Ontario Building Code: much as the national one, with figures of its own.',
  'united-states': 'The International Residential Code, and a little of the International Building Code.',
  'united-kingdom': 'The standards of two bodies that give most new houses their warranty.',
  'good-practice':
    'Used where a rule set is silent: trade bodies, borrowed rules, and our own training defaults.',
};

/** The lengths a rule set is printed in come first. */
export function firstLengths(rules: RuleSetId): LengthSystem {
  return rules === 'united-states' ? 'inches' : 'mm';
}

/** An address on the page: 'back mortar' to 'topic-back-mortar'. */
export function topicAnchor(topic: LimitTopic): string {
  return `topic-${topic.replaceAll(' ', '-')}`;
}

/** Keeps a number and its unit on one line. */
export function keepTogether(text: string): string {
  return text.replace(/(\d) ((?:mm|m|m²|mm²|in|ft|lb|sq|oz|psi|MPa|kg|g)\b|\d+\/|[°%])/g, '$1\u00a0$2');
}
