import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A copy of what git keeps of this folder, changed or not, with the packages beside it. */
export function copiedTree(): string {
  const copy = mkdtempSync(join(tmpdir(), 'mutants-'));
  const asked = ['ls-files', '-z', '--cached', '--others', '--exclude-standard'];
  const kept = execFileSync('git', asked, { encoding: 'utf8' }).split('\0');
  for (const path of kept.filter((each) => each !== '')) cpSync(path, join(copy, path));
  symlinkSync(join(process.cwd(), 'node_modules'), join(copy, 'node_modules'));
  return copy;
}
