import { type Chance, chanceOf } from '../../../lib/generate/chance';
import { FAMILIES, type Family } from '../../../lib/learning/family';
import { harderAt } from '../../../lib/learning/skill';

/** A learner made of a published model. What it truly can do is known, which is never so of a person. */
export interface SimulatedLearner {
  /** True chance of finding and naming a fault of the family at a difficulty on a day. */
  readonly hitChance: (family: Family, difficulty: number, day: number) => number;
  /** True chance of calling something on a sound wall of the family. */
  readonly falseCallChance: (family: Family) => number;
  /** Was shown how a wall of the family measures, after reading it. */
  readonly learn: (family: Family, wasSound: boolean, day: number) => void;
}

export type LearnerKind = 'graded' | 'all or none' | 'forgetting' | 'prone to false calls' | 'guessing';

export const LEARNERS: Readonly<Record<LearnerKind, (seed: number) => SimulatedLearner>> = {
  graded: (seed) => graded(chanceOf(seed, 1)),
  'all or none': (seed) => allOrNone(chanceOf(seed, 2)),
  forgetting: (seed) => forgetting(chanceOf(seed, 3)),
  'prone to false calls': (seed) => proneToFalseCalls(chanceOf(seed, 4)),
  guessing: () => guessing(),
};

const GUESSES = 0.05;
/** Calls on sound walls of a reader who is not prone to them. */
const FEW_CALLS = 0.04;

/** Evenly from 0 to under 1. */
export function shareOf(chance: Chance): number {
  return chance.whole(0, 999_999) / 1_000_000;
}

/** About normal, of mean 0: the sum of twelve even draws. */
function normal(chance: Chance, deviation: number): number {
  let sum = -6;
  for (let draw = 0; draw < 12; draw++) sum += shareOf(chance);
  return sum * deviation;
}

function logistic(x: number): number {
  return GUESSES + (1 - GUESSES) / (1 + Math.exp(-x));
}

function byFamily<T>(value: (family: Family) => T): Map<Family, T> {
  return new Map(FAMILIES.map((family) => [family, value(family)]));
}

function of<T>(map: ReadonlyMap<Family, T>, family: Family): T {
  const value = map.get(family);
  if (value === undefined) throw new RangeError(family);
  return value;
}

/** G. Rasch's model with an offset for each family (SD .5), families of unequal difficulty (SD .7), and slow learning. */
function graded(chance: Chance): SimulatedLearner {
  const start = normal(chance, 0.7) - 0.5;
  const abilities = byFamily(() => start + normal(chance, 0.5) + normal(chance, 0.7));
  return {
    hitChance: (family, difficulty) => logistic(of(abilities, family) - harderAt(difficulty)),
    falseCallChance: () => FEW_CALLS,
    learn: (family, wasSound) => {
      if (!wasSound) abilities.set(family, Math.min(4, of(abilities, family) + 0.25));
    },
  };
}

/** Knowledge tracing after Corbett and Anderson: known or not, learnt at one stroke (T .1, slip .15, guess .1, known at first .2). */
function allOrNone(chance: Chance): SimulatedLearner {
  const known = byFamily(() => chance.happens(20));
  return {
    hitChance: (family) => (of(known, family) ? 0.85 : 0.1),
    falseCallChance: () => FEW_CALLS,
    learn: (family, wasSound) => {
      if (!wasSound && chance.happens(10)) known.set(family, true);
    },
  };
}

/** Graded, and what was learnt fades by a power of time; each day on which it comes back makes it last longer. */
function forgetting(chance: Chance): SimulatedLearner {
  const start = normal(chance, 0.7) - 0.5;
  const traces = byFamily(() => ({ base: start + normal(chance, 0.8), learnt: 0, lasts: 4, day: 0 }));
  const left = ({ learnt, lasts, day: last }: { learnt: number; lasts: number; day: number }, day: number) =>
    learnt * (1 + Math.max(0, day - last) / lasts) ** -0.5;
  return {
    hitChance: (family, difficulty, day) => {
      const trace = of(traces, family);
      return logistic(trace.base + left(trace, day) - harderAt(difficulty));
    },
    falseCallChance: () => FEW_CALLS,
    learn: (family, wasSound, day) => {
      if (wasSound) return;
      const trace = of(traces, family);
      const lasts = day > trace.day ? Math.min(120, trace.lasts * 1.8) : trace.lasts;
      traces.set(family, { base: trace.base, learnt: Math.min(4.5, left(trace, day) + 0.35), lasts, day });
    },
  };
}

/** Graded, and calls something on half of all sound walls at first; learns to leave sound work alone from sound walls only. */
function proneToFalseCalls(chance: Chance): SimulatedLearner {
  const eye = graded(chance);
  const calls = byFamily(() => 0.5);
  return {
    ...eye,
    falseCallChance: (family) => of(calls, family),
    learn: (family, wasSound, day) => {
      eye.learn(family, wasSound, day);
      if (wasSound) calls.set(family, Math.max(0.05, of(calls, family) * 0.8));
    },
  };
}

/** Marks at random and never learns. */
function guessing(): SimulatedLearner {
  return { hitChance: () => 0.15, falseCallChance: () => 0.6, learn: () => undefined };
}
