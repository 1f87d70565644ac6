import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ROOMS } from './mutants/rooms';
import { asCode, drawMutants } from './mutants/slips';
import { RoomTests } from './mutants/tests';

const SEED = 7;

/** @param args rooms to try, all when none is named; a number draws other mutants. */
export async function run(args: readonly string[]): Promise<void> {
  const seed = Number(args.find((arg) => /^\d+$/.test(arg)) ?? SEED);
  const named = args.filter((arg) => !/^\d+$/.test(arg));
  const home = process.cwd();
  const copy = copiedTree();
  process.chdir(copy);
  try {
    for (const room of ROOMS.filter((each) => named.length === 0 || named.includes(each.room))) {
      const start = Date.now();
      const tests = await RoomTests.open(room);
      if (!(await tests.pass())) throw new Error(`the tests of ${room.room} fail before anything is changed`);
      console.log(`${room.room}: all tests ${Date.now() - start} ms`);
      for (const { file, line, was, change, text } of drawMutants([`lib/${room.room}`], room.count, seed)) {
        const before = readFileSync(file, 'utf8');
        const begun = Date.now();
        if (asCode(text) === null) { console.log('no parse', file, line, change); continue; }
        writeFileSync(file, text);
        const outcome = await tests.try(file);
        writeFileSync(file, before);
        console.log(`${outcome}\t${Date.now() - begun} ms\t${file}:${line}  ${change}  in  ${was}`);
      }
      await tests.close();
    }
  } finally {
    process.chdir(home);
    rmSync(copy, { recursive: true, force: true });
  }
}

/** What git would keep of this folder, changed or not, with the packages beside it. */
function copiedTree(): string {
  const copy = mkdtempSync(join(tmpdir(), 'mutants-'));
  const kept = execFileSync('git', ['ls-files', '-z', '--cached', '--others', '--exclude-standard'], { encoding: 'utf8' });
  for (const path of kept.split('\0').filter((each) => each !== '')) cpSync(path, join(copy, path));
  symlinkSync(join(process.cwd(), 'node_modules'), join(copy, 'node_modules'));
  return copy;
}
