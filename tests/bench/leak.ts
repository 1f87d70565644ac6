import { formFor } from '../../lib/classes/forms';
import { templateOf } from '../../lib/classes/templates';
import { WALL_PROBE } from '../../lib/exercise/wall-probe';

const LEARNERS = 1000;
/** Upper 1 % points of chi-square by degrees of freedom: NIST/SEMATECH e-Handbook of Statistical Methods, table 1.3.6.7.4. */
const CHI_SQUARE_99: Readonly<Record<number, number>> = { 1: 6.635, 3: 11.345, 9: 21.666, 11: 24.725 };

interface Wall {
  readonly kind: string;
  readonly faults: number;
}

/**
 * What one learner's form of the fair test tells of another's, and what a wall's kind and place tell of what is in it: mutual
 * information in bits beside what chance alone gives in 99 of 100 runs (G-test: χ² ÷ 2 N ln 2).
 */
export function run([count]: readonly string[]): void {
  const { spec } = templateOf('fair-test');
  const forms: readonly (readonly Wall[])[] = Array.from(
    { length: Number(count ?? LEARNERS) },
    (_, learner) =>
      formFor(spec, 'leak', { learner: String(learner), attempt: 1 }, WALL_PROBE).map((brief) => ({
        kind: brief.kind,
        faults: WALL_PROBE.measured(brief).length,
      })),
  );
  const walls = forms.flat();
  const pairs = forms.flatMap((form, at) => {
    const next = forms[(at + 1) % forms.length] ?? [];
    return form.map((wall, place) => [wall, next[place] ?? wall] as const);
  });
  const soundIn = (form: readonly Wall[]) => form.filter(({ faults }) => faults === 0).length;
  print(
    'kind of a wall, sound or not',
    3,
    walls.map(({ kind, faults }) => [kind, faults === 0]),
  );
  print(
    'place of a wall, sound or not',
    11,
    forms.flatMap((form) => form.map(({ faults }, place) => [place, faults === 0])),
  );
  print(
    'sound or not, a neighbour’s at that place',
    1,
    pairs.map(([a, b]) => [a.faults === 0, b.faults === 0]),
  );
  print(
    'number of faults, a neighbour’s at that place',
    9,
    pairs.map(([a, b]) => [a.faults, b.faults]),
  );
  print(
    'number of sound walls, a neighbour’s',
    9,
    forms.map((form, at) => [soundIn(form), soundIn(forms[(at + 1) % forms.length] ?? [])]),
  );
}

function print(what: string, freedom: number, pairs: readonly (readonly [unknown, unknown])[]): void {
  const chance = (CHI_SQUARE_99[freedom] ?? Number.NaN) / (2 * pairs.length * Math.LN2);
  const bits = mutualInformation(pairs);
  process.stdout.write(
    `${what}: ${bits.toFixed(5)} bits, chance up to ${chance.toFixed(5)}${bits > chance ? '  LEAK' : ''}\n`,
  );
}

/** Bits that one of a pair tells of the other, from their counts. */
function mutualInformation(pairs: readonly (readonly [unknown, unknown])[]): number {
  const shares = (texts: readonly string[]) => {
    const counts = new Map<string, number>();
    for (const text of texts) counts.set(text, (counts.get(text) ?? 0) + 1 / texts.length);
    return counts;
  };
  const first = shares(pairs.map(([a]) => String(a)));
  const second = shares(pairs.map(([, b]) => String(b)));
  const both = shares(pairs.map(([a, b]) => `${a}\n${b}`));
  let bits = 0;
  for (const [key, share] of both) {
    const [a = '', b = ''] = key.split('\n');
    bits += share * Math.log2(share / ((first.get(a) ?? 1) * (second.get(b) ?? 1)));
  }
  return bits;
}
