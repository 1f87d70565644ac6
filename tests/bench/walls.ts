import { layPlan } from '../../lib/generate/generate';
import type { Plan } from '../../lib/generate/plan';
import { planWith } from '../../lib/generate/planner';
import { inspect } from '../../lib/inspect/inspect';

const ROUNDS = 60;
const SIZES = [
  { modules: 20, courses: 25 },
  { modules: 40, courses: 25 },
  { modules: 40, courses: 50 },
  { modules: 80, courses: 50 },
  { modules: 80, courses: 100 },
  { modules: 160, courses: 125 },
] as const;

/** Laying and inspecting a wall against reading the same wall's JSON, and how the cost grows with the units. Ratios of the least disturbed rounds of one run. */
export function run(): void {
  let before = 0;
  let unitsBefore = 0;
  for (const size of SIZES) {
    const rounds = Math.max(7, Math.round((ROUNDS * 500) / (size.modules * size.courses)));
    const { units, lay, key, parse } = measure(size, rounds);
    const growth =
      before === 0
        ? ''
        : `  cost × ${((lay + key) / before / (units / unitsBefore) || 0).toFixed(2)} per unit of the size before`;
    process.stdout.write(
      `${String(units).padStart(6)} units: (lay + inspect) ÷ JSON.parse = ${((lay + key) / parse).toFixed(2)}  (lay ${(lay / parse).toFixed(2)}, inspect ${(key / parse).toFixed(2)})${growth}\n`,
    );
    before = lay + key;
    unitsBefore = units;
  }
}

function measure(size: { modules: number; courses: number }, rounds: number) {
  const lays: number[] = [];
  const keys: number[] = [];
  const parses: number[] = [];
  let units = 0;
  for (let round = -5; round < rounds; round++) {
    const plan: Plan = {
      ...planWith('plain-panel', 'anchored', 'canada', [], 1000 + round),
      bond: 'running',
      ...size,
    };
    const start = performance.now();
    const wall = layPlan(plan);
    const laid = performance.now();
    inspect(wall, 'canada');
    const inspected = performance.now();
    const text = JSON.stringify(wall);
    const printed = performance.now();
    JSON.parse(text);
    const parsed = performance.now();
    units = wall.units.length;
    if (round < 0) continue;
    lays.push(laid - start);
    keys.push(inspected - laid);
    parses.push(parsed - printed);
  }
  return { units, lay: least(lays), key: least(keys), parse: least(parses) };
}

/** The machine may be shared: the quickest round is the one least disturbed. */
function least(values: readonly number[]): number {
  return values.reduce((best, value) => Math.min(best, value), Number.POSITIVE_INFINITY);
}
