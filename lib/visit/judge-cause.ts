import type { Weighed } from '../failing/causes/causes';
import { type FurtherReading, tellsApart } from './further-readings';

/** What was said of the cause: one of them with the signs that carry it, or what would have to be read first. */
export type CauseAnswer =
  | { readonly cause: string; readonly signs: readonly string[] }
  | { readonly cause: null; readonly reading: FurtherReading | null };

export type CauseVerdict =
  | {
      /** `the cause`: the wall allows it alone. `one of several`: it goes beyond the evidence. */
      readonly kind: 'the cause' | 'one of several';
      /** Signs of it on this wall that were named, and those that were not. */
      readonly named: readonly string[];
      readonly unnamed: readonly string[];
      /** Named as signs of it, but not on this wall, or signs against it. */
      readonly notSo: readonly string[];
    }
  | { readonly kind: 'barred'; readonly by: string }
  | { readonly kind: 'lacks'; readonly need: string }
  /** `told apart`: more than one is allowed, and the reading splits them. `would not tell`: it does not. `could be told`: one alone is allowed. */
  | { readonly kind: 'told apart' | 'would not tell' | 'could be told' };

/** What the evidence says to an answer. @throws RangeError for a cause that was not weighed. */
export function judgeCause(answer: CauseAnswer, weighed: readonly Weighed[]): CauseVerdict {
  const allowed = weighed.filter(({ inK }) => inK).map(({ cause }) => cause);
  if (answer.cause === null) {
    if (allowed.length < 2) return { kind: 'could be told' };
    const splits = answer.reading !== null && tellsApart(answer.reading, allowed);
    return { kind: splits ? 'told apart' : 'would not tell' };
  }
  const said = weighed.find(({ cause }) => cause === answer.cause);
  if (said === undefined) throw new RangeError(`cause: "${answer.cause}" was not weighed`);
  const bar = said.bars.find(({ there }) => there);
  if (bar !== undefined) return { kind: 'barred', by: bar.sign };
  const lacking = said.needs.find(({ there }) => !there);
  if (lacking !== undefined) return { kind: 'lacks', need: lacking.sign };
  const carrying = [...said.needs, ...said.fits].filter(({ there }) => there).map(({ sign }) => sign);
  return {
    kind: allowed.length === 1 ? 'the cause' : 'one of several',
    named: carrying.filter((sign) => answer.signs.includes(sign)),
    unnamed: said.needs.map(({ sign }) => sign).filter((sign) => !answer.signs.includes(sign)),
    notSo: answer.signs.filter((sign) => !carrying.includes(sign)),
  };
}
