import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { copiedTree } from './mutants/copied-tree';
import { whyEquivalent } from './mutants/equivalent';
import { type Outcome, openRoomTests } from './mutants/room-tests';
import { type MutatedRoom, ROOMS } from './mutants/rooms';
import { asCode, drawMutants, type Mutant } from './mutants/slips';

type Fate = Outcome | 'does not parse';

interface Tried {
  readonly mutant: Mutant;
  readonly fate: Fate;
}

const SEED = 7;
const SIGNS: Readonly<Record<Fate, string>> = {
  killed: '.',
  survived: 'S',
  hung: 'H',
  'does not parse': 'x',
};

/**
 * Puts slips of the hand into a copy of the code, one at a time, and counts those that a test notices.
 * @param args rooms to try, all when none is named; a number draws other slips.
 */
export async function run(args: readonly string[]): Promise<void> {
  const seed = Number(args.find((arg) => /^\d+$/.test(arg)) ?? SEED);
  const named = args.filter((arg) => !/^\d+$/.test(arg));
  const home = process.cwd();
  const copy = copiedTree();
  process.chdir(copy);
  const tried: Tried[] = [];
  try {
    for (const room of ROOMS.filter((each) => named.length === 0 || named.includes(each.room))) {
      tried.push(...(await triedIn(room, seed)));
    }
  } finally {
    if (tried.length > 0) process.stdout.write(`\n${report(tried)}\n`);
    process.chdir(home);
    rmSync(copy, { recursive: true, force: true });
  }
}

async function triedIn(room: MutatedRoom, seed: number): Promise<readonly Tried[]> {
  const tests = await openRoomTests(room);
  if (!(await tests.pass())) throw new Error(`the tests of ${room.room} fail before anything is changed`);
  process.stdout.write(`\n${room.room} `);
  const tried: Tried[] = [];
  for (const mutant of drawMutants([`lib/${room.room}`], room.count, seed)) {
    const fate = asCode(mutant.text) === null ? 'does not parse' : await fateOf(mutant, tests.tryFile);
    tried.push({ mutant, fate });
    process.stdout.write(SIGNS[fate]);
    if (fate === 'survived') process.stdout.write(`\n${lineOf(mutant)}\n`);
  }
  await tests.close();
  return tried;
}

async function fateOf({ file, text }: Mutant, tryFile: (file: string) => Promise<Outcome>): Promise<Outcome> {
  const before = readFileSync(file, 'utf8');
  writeFileSync(file, text);
  const outcome = await tryFile(file);
  writeFileSync(file, before);
  return outcome;
}

function report(tried: readonly Tried[]): string {
  const of = (fate: Fate) => tried.filter((each) => each.fate === fate).map(({ mutant }) => mutant);
  const survivors = of('survived');
  const same = survivors.filter((mutant) => whyEquivalent(mutant) !== null);
  const killed = of('killed').length;
  const counted = killed + survivors.length - same.length;
  return [
    `${killed} of ${counted} mutants were killed (${((100 * killed) / counted).toFixed(1)} %).`,
    `Besides: ${of('hung').length} hung, ${of('does not parse').length} did not parse, ${same.length} change nothing.`,
    ...survivors.map((mutant) => `survived: ${lineOf(mutant)}${reasonOf(mutant)}`),
  ].join('\n');
}

function lineOf({ file, line, change, was }: Mutant): string {
  return `${file}:${line}  ${change}  in  ${was}`;
}

function reasonOf(mutant: Mutant): string {
  const why = whyEquivalent(mutant);
  return why === null ? '' : `\n    changes nothing: ${why}`;
}
