import type { QuestionsBySystem } from '../../components/questions/question-set';
import { chanceOf } from '../../lib/generate/chance';
import { questionSet } from '../../lib/questions/question-families';
import type { LengthSystem } from '../../lib/units';
import type { SetAddress } from './set-address';

/** The questions of one address, in both systems of lengths: the same address always asks the same. */
export function askSet({ topic, rules, seed }: SetAddress, count: number): QuestionsBySystem {
  const ask = (system: LengthSystem) =>
    questionSet(topic, { rules, system }, count, (stream) => chanceOf(seed, stream));
  return { mm: ask('mm'), inches: ask('inches') };
}
