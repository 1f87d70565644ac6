import type { RuleSetId } from '../limits/limit';
import type { LengthSystem } from '../units';
import { BACK_BUTTERING } from './families/back-buttering';
import { BOND } from './families/bond';
import { CRACKS } from './families/cracks';
import { HOLD_POINTS } from './families/hold-points';
import { JOINTS } from './families/joints';
import { LINE } from './families/line';
import { MORTAR } from './families/mortar';
import { OPENINGS } from './families/openings';
import { READING } from './families/reading';
import { SUPPORT } from './families/support';
import { TIES } from './families/ties';
import { WATER } from './families/water';
import type { Chance, Family } from './family';
import type { Question } from './question';
import { shuffled } from './shuffle';
import type { QuestionTopic } from './topics';

/** Every family of questions by the topic it belongs to. */
export const QUESTION_FAMILIES: Readonly<Record<QuestionTopic, readonly Family[]>> = {
  reading: READING,
  'back-buttering': BACK_BUTTERING,
  joints: JOINTS,
  line: LINE,
  bond: BOND,
  support: SUPPORT,
  openings: OPENINGS,
  ties: TIES,
  mortar: MORTAR,
  water: WATER,
  cracks: CRACKS,
  'hold-points': HOLD_POINTS,
};

/**
 * Some questions on a topic, each of another family. `chanceFor` gives an independent run of chance for a number from 0 up, so that
 * the same questions come in mm and in inches, with sizes that are round in each.
 */
export function questionSet(
  topic: QuestionTopic,
  by: { readonly rules: RuleSetId; readonly system: LengthSystem },
  count: number,
  chanceFor: (stream: number) => Chance,
): readonly Question[] {
  const asked = QUESTION_FAMILIES[topic].filter((family) => family.isAsked(by.rules));
  const families = shuffled(asked, chanceFor(0)).slice(0, count);
  return families.map((family, index) => family.ask({ ...by, chance: chanceFor(index + 1) }));
}
