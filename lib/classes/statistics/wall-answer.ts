import type { HAZARD_WEIGHT } from '../../marking/hazard-weight';
import type { Sure } from '../../marking/mark';

/** What a learner can get right of a fault, in the order in which it is done. */
export const STEPS = ['found', 'named', 'measured', 'judged', 'acted'] as const;
export type Step = (typeof STEPS)[number];

/** So many got right of so many asked. */
export interface Tally {
  readonly got: number;
  readonly of: number;
}

/** One fault of a wall, as one learner met it. */
export interface FaultAnswer {
  /** Its check. */
  readonly fault: string;
  readonly hazard: keyof typeof HAZARD_WEIGHT;
  readonly found: boolean;
  /** The fault the learner named there; null when it was not found. */
  readonly named: string | null;
  readonly sure: Sure | null;
}

/** A mark where nothing is wrong. */
export interface FalseMark {
  /** The fault it names. */
  readonly fault: string;
  readonly part: string;
  readonly sure: Sure;
}

/** All that one learner answered on one wall: what the statistics are made of. */
export interface WallAnswer {
  readonly learner: string;
  readonly work: string;
  /** From 1: which wall of the set work. */
  readonly place: number;
  readonly code: string;
  /** 0 to 1. */
  readonly score: number;
  readonly saysSound: boolean;
  /** False where nothing was marked and it was not said to be sound: the wall was perhaps never opened. */
  readonly answered: boolean;
  readonly faults: readonly FaultAnswer[];
  readonly falseMarks: readonly FalseMark[];
  /** A step that was not asked for is absent. */
  readonly steps: Readonly<Partial<Record<Step, Tally>>>;
}

/** Sums the steps of many walls; a step nobody was asked for is null. */
export function tallySteps(answers: readonly WallAnswer[]): Readonly<Record<Step, Tally | null>> {
  const sumOf = (step: Step): Tally | null =>
    answers.reduce<Tally | null>((sum, { steps }) => {
      const tally = steps[step];
      if (tally === undefined || tally.of === 0) return sum;
      return { got: (sum?.got ?? 0) + tally.got, of: (sum?.of ?? 0) + tally.of };
    }, null);
  return {
    found: sumOf('found'),
    named: sumOf('named'),
    measured: sumOf('measured'),
    judged: sumOf('judged'),
    acted: sumOf('acted'),
  };
}
