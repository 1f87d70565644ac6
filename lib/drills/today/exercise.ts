import { BriefError } from '../../generate/brief';
import { codeOf, parseCode } from '../../generate/wall-code';
import type { Attempt } from '../../learning/attempt';
import type { Draw, Step } from '../../learning/chooser';
import type { Family } from '../../learning/family';
import { RULE_SETS, type RuleSetId } from '../../limits/limit';
import type { QuickLook } from '../quick/quick-look';
import { MOST_ROUND } from '../quick/quick-round';
import { roundAddress } from '../quick/round-address';
import { wallForStep } from './wall-for-step';

/** The look in which most faults of a family show. */
const LOOKS: Readonly<Record<Family, QuickLook>> = {
  'back-mortar': 'back',
  joints: 'close',
  line: 'face',
  bond: 'close',
  support: 'cut',
  ties: 'ties',
  water: 'cut',
  mortar: 'tickets',
};

const WAYS = { 'full wall': '/walls', pair: '/practise/pair', 'guided wall': '/practise/guided' } as const;

/** Where the exercise of a step is done. `seen` holds the codes of walls read before. */
export function exerciseAddress(step: Step, rules: RuleSetId, seen: ReadonlySet<string>, draw: Draw): string {
  if (step.kind !== 'quick look') return `${WAYS[step.kind]}/${codeOf(wallForStep(step, rules, seen, draw))}`;
  const round = Math.floor(draw() * (MOST_ROUND + 1));
  return roundAddress({ rules, round, look: LOOKS[step.family], level: step.difficulty < 3 ? 1 : 3 });
}

/** The rule set that the reader practised by last: nobody is asked again. */
export function usualRules(record: readonly Attempt[]): RuleSetId {
  const last = record.at(-1);
  const named = last === undefined ? null : 'rules' in last ? last.rules : rulesOfCode(last.wall);
  return RULE_SETS.find((each) => each === named) ?? 'canada';
}

function rulesOfCode(code: string): RuleSetId | null {
  try {
    return parseCode(code).rules;
  } catch (error) {
    if (error instanceof BriefError) return null;
    throw error;
  }
}
