import { grade } from '../../exercise/grade';
import { keyOf } from '../../exercise/key';
import { type MetOnWall, metOnWall } from '../../exercise/met-on-wall';
import { CATALOGUE } from '../../inspect/catalogue';
import { explainMarks } from '../../inspect/explain';
import type { CheckId } from '../../inspect/finding';
import { namesOf } from '../../wall/part-names';
import { surveyedWall } from '../../wall/surveyed';
import { type ExplainedFinding, explainedFinding } from '../explained-finding';
import type { Pair } from './measured-pair';

/** One difference between the two walls. */
export interface PairRow extends ExplainedFinding {
  readonly outcome: 'found' | 'wrong name' | 'one joint off' | 'missed';
  /** The same measure at the same place of the sound wall; null where there is none. */
  readonly onSound: number | null;
}

export interface PairFalseMark {
  readonly name: string;
  readonly place: string;
  readonly within: {
    readonly value: number;
    readonly limit: number;
    readonly end: 'at most' | 'at least';
    readonly unit: string;
  } | null;
}

export interface PairRows {
  /** Whether the wall pointed to is the spoiled one. */
  readonly rightSide: boolean;
  readonly findings: readonly PairRow[];
  readonly falseMarks: readonly PairFalseMark[];
  /** The same for the practice record. */
  readonly met: MetOnWall;
}

export interface PairMark {
  readonly part: string;
  readonly fault: CheckId;
}

/** What differs; and what of it was found. Marks count on the spoiled wall only. */
export function pairRows(
  { brief: { rules }, sound, spoiled }: Pair,
  marks: readonly PairMark[],
  rightSide: boolean,
): PairRows {
  const key = keyOf(surveyedWall(spoiled), rules);
  const nameOf = namesOf(key);
  const result = rightSide ? grade(key, marks) : null;
  const soundWall = surveyedWall(sound);
  const findings = key.findings.map((finding, index): PairRow => {
    const places = finding.parts.slice(0, 1).map((part) => ({ part, fault: finding.check }));
    const [onSound] = explainMarks(soundWall, rules, places);
    return {
      ...explainedFinding(finding, index + 1, rules, nameOf),
      outcome: result?.findings[index]?.outcome ?? 'missed',
      onSound: onSound?.measured?.value ?? null,
    };
  });
  const falseMarks = (result?.marks ?? [])
    .filter(({ outcome }) => outcome === 'false')
    .map(({ mark, explanation }) => ({
      name: CATALOGUE[mark.fault].name,
      place: nameOf(mark.part),
      within: explanation?.measured ?? null,
    }));
  const met: MetOnWall = result
    ? metOnWall(result)
    : {
        faults: key.findings.map(({ check, hazard }) => ({
          ...{ fault: check, hazard, outcome: 'missed' },
          ...{ named: null, sure: null, readRight: null },
        })),
        falseCalls: [],
      };
  return { rightSide, findings, falseMarks, met: withoutSure(met) };
}

/** On a pair nobody is asked how sure they are. */
function withoutSure({ faults, falseCalls }: MetOnWall): MetOnWall {
  return {
    faults: faults.map((each) => ({ ...each, sure: null })),
    falseCalls: falseCalls.map((each) => ({ ...each, sure: null })),
  };
}
