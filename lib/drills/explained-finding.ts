import { CATALOGUE } from '../inspect/catalogue';
import type { Finding } from '../inspect/finding';
import type { RuleSetId } from '../limits/limit';
import { ruleSetTitle } from '../limits/limits';
import { type Act, rightActOf } from '../marking/act';

/** A finding with all that is to be said of it. */
export interface ExplainedFinding {
  readonly number: number;
  readonly finding: Finding;
  readonly name: string;
  readonly place: string;
  readonly looksLike: string;
  readonly measuredBy: string;
  readonly whyItMatters: string;
  readonly rightAct: Act;
  readonly putsRight: string;
  /** Whose limit it is, with edition, clause and how sure. */
  readonly source: string;
}

/** A finding with the words a reader needs: its name, its place, whose figure it breaks and why that matters. */
export function explainedFinding(
  finding: Finding,
  number: number,
  rules: RuleSetId,
  nameOf: (part: string) => string,
): ExplainedFinding {
  const { name, looksLike, measuredBy, whyItMatters, putsRight, hazard, reach } = CATALOGUE[finding.check];
  const { rules: from, title, clause, howSure } = finding.source;
  const stands = from === rules ? '' : ' (the rule set in use says nothing on this)';
  return {
    number,
    finding,
    name,
    place: finding.parts[0] === undefined ? '' : nameOf(finding.parts[0]),
    looksLike,
    measuredBy,
    whyItMatters,
    rightAct: rightActOf(hazard, reach),
    putsRight,
    source: `${[...new Set([ruleSetTitle(from), title, clause])].filter((each) => each !== '').join(' · ')}${stands} · ${howSure}`,
  };
}
