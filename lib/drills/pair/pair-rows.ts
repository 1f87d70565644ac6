import type { ExplainedFinding } from '../../../components/drills/explained-finding';

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
}
