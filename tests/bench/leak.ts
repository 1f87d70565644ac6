import { formFor } from '../../lib/classes/forms';
import { templateOf } from '../../lib/classes/templates';
import { WALL_PROBE } from '../../lib/exercise/wall-probe';
import type { Brief } from '../../lib/generate/brief';
import { layWall } from '../../lib/generate/generate';
import { TOPIC_TITLES, topicOf } from '../../lib/generate/topics';
import { inspect } from '../../lib/inspect/inspect';
import { mostTold, mutualInformation } from './leak/mutual-information';
import { traitsIn } from './leak/read-all';
import { sentOfPractice, sentOfTest } from './leak/what-is-sent';

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
export function run([count, read]: readonly string[]): void {
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
  readPages(Number(read ?? LEARNERS_READ));
}

/** Walls that somebody reads all of: a page is drawn look by look. */
const LEARNERS_READ = 50;

/**
 * What a script finds that reads all that the page of a test receives, but for the lines of its drawings, and uses no instrument, beyond
 * what the kind of wall tells; then the same of practice, whose page holds the whole wall, to show that the script can read.
 */
function readPages(learners: number): void {
  const { spec } = templateOf('fair-test');
  const briefs = Array.from({ length: learners }, (_, learner) =>
    formFor(spec, 'leak', { learner: String(learner), attempt: 1 }, WALL_PROBE),
  ).flat();
  const families = briefs.map((brief) =>
    [
      ...new Set(inspect(layWall(brief), brief.rules).map(({ check }) => TOPIC_TITLES[topicOf(check)])),
    ].sort(),
  );
  const all = [...new Set(families.flat())].sort();
  // A wall without ties has no bad tie, and anybody sees at a glance what kind of wall stands there.
  const known = briefs.map((brief) => `${brief.kind} ${layWall(brief).masonry}`);
  const read = (sent: (brief: Brief) => unknown) => briefs.map((brief) => traitsIn(sent(brief)));
  for (const [page, traits] of [
    ['a test’s page', read(sentOfTest)],
    ['a page of practice', read(sentOfPractice)],
  ] as const) {
    process.stdout.write(
      `\nread out of ${page}, ${briefs.length} walls: the most that one trait tells, bits\n`,
    );
    tell(
      'sound or not',
      traits,
      families.map((each) => each.length > 0),
      known,
    );
    for (const family of all)
      tell(
        family,
        traits,
        families.map((each) => each.includes(family)),
        known,
      );
  }
}

function tell(what: string, ...read: Parameters<typeof mostTold>): void {
  const { trait, bits, chance } = mostTold(...read);
  process.stdout.write(
    `${what}: ${bits.toFixed(4)}, chance up to ${chance.toFixed(4)}${bits > chance ? `  LEAK by ${trait}` : ''}\n`,
  );
}

function print(what: string, freedom: number, pairs: readonly (readonly [unknown, unknown])[]): void {
  const chance = (CHI_SQUARE_99[freedom] ?? Number.NaN) / (2 * pairs.length * Math.LN2);
  const bits = mutualInformation(pairs);
  process.stdout.write(
    `${what}: ${bits.toFixed(5)} bits, chance up to ${chance.toFixed(5)}${bits > chance ? '  LEAK' : ''}\n`,
  );
}
