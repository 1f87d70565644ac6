import { useState } from 'react';
import type { RuleSetId } from '../../../lib/limits/limit';
import type { LengthSystem, MetricUnit } from '../../../lib/units';
import { useLengthsHere, useOneRuleSet } from '../../forms/rules-in-use';

interface Amount {
  readonly label: string;
  readonly start: number;
  readonly least: number;
  readonly most: number;
  readonly step: number;
}

/** One thing a reader can change in a drawing. 'rules' is the rule set it judges by; an amount is a length in mm unless it says what else. */
export type Field =
  | 'rules'
  | { readonly label: string; readonly start: boolean }
  | {
      readonly label: string;
      readonly start: string;
      readonly choices: readonly (readonly [value: string, label: string])[];
    }
  | Amount
  /** In a metric unit; the unit that goes with inches may go by another step. */
  | (Amount & { readonly quantity: MetricUnit; readonly otherStep?: number })
  /** In mm a metre; in inches it is typed as the rise in 10 ft. */
  | (Amount & { readonly slope: true })
  /** In the same unit everywhere; with `whole` no part of one is taken. */
  | (Amount & { readonly unit: string; readonly whole?: true });

export type FieldTable = Readonly<Record<string, Field>>;
export type Value = string | number | boolean;

type Values<T> = { readonly [K in keyof T]: ValueOf<T[K]> };
type ValueOf<F> = F extends 'rules'
  ? RuleSetId
  : F extends { readonly choices: readonly (readonly [infer V, string])[] }
    ? V
    : F extends { readonly start: boolean }
      ? boolean
      : number;

/** The fields of a drawing in their order, what stands in them, and the reader's lengths. */
export interface Given {
  readonly fields: FieldTable;
  readonly values: Readonly<Record<string, Value>>;
  readonly system: LengthSystem;
  change(some: Readonly<Record<string, Value>>): void;
}

/** What the reader has changed, and until then what each field starts with: rules and lengths are those that lessons are read by. */
export function useFields<T extends FieldTable>(fields: T) {
  const system = useLengthsHere();
  const rules = useOneRuleSet();
  const [changed, setChanged] = useState<Partial<Values<T>>>({});
  const starts = Object.entries(fields).map(([name, field]) => [
    name,
    field === 'rules' ? rules : field.start,
  ]);
  const values = { ...Object.fromEntries(starts), ...changed } as Values<T>;
  const change = (some: Partial<Values<T>>) => setChanged((before) => ({ ...before, ...some }));
  return { fields, values, system, change };
}
