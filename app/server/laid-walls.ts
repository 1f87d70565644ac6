import { createHash } from 'node:crypto';
import { layByCode } from '../../lib/engines/engines';
import { type Key, keyOf } from '../../lib/exercise/key';
import type { Brief } from '../../lib/generate/brief';
import { codeOf } from '../../lib/generate/wall-code';
import type { RuleSetId } from '../../lib/limits/limit';
import { printWall } from '../../lib/wall/print';
import { surveyedWall } from '../../lib/wall/surveyed';
import { kept } from './kept-files';

/** A wall as the site lays it again, with its hash and its key. */
export interface LaidWall extends Key {
  readonly fingerprint: string;
}

/** A class hands in the same few walls within a minute: laying, hashing and inspecting are most of the work of a hand-in. */
const MOST_KEPT = 100;
const inMemory = new Map<string, LaidWall>();

/** The wall of a brief, judged by `rules`. The last hundred asked for are in memory; the oldest goes first. */
export function laidWall(brief: Brief, rules: RuleSetId): LaidWall {
  const name = nameOf(brief, rules);
  const known = inMemory.get(name);
  if (known !== undefined) return known;
  const { wall, ...measured } = measuredWall(brief, rules);
  const laid = { ...surveyedWall(wall), rules, ...measured };
  const [oldest] = inMemory.keys();
  if (inMemory.size >= MOST_KEPT && oldest !== undefined) inMemory.delete(oldest);
  inMemory.set(name, laid);
  return laid;
}

/** The same without its parts. Laid and measured once by a build, it comes from a file after that (kept-files.ts). */
export function measuredWall(
  brief: Brief,
  rules: RuleSetId,
): Pick<LaidWall, 'wall' | 'findings' | 'fingerprint'> {
  return kept(`key ${nameOf(brief, rules)}`, () => {
    const { wall, asLaid } = layByCode(brief);
    const { findings } = keyOf(surveyedWall(wall), rules);
    return { wall, findings, fingerprint: fingerprintOf(asLaid) };
  });
}

function nameOf(brief: Brief, rules: RuleSetId): string {
  return `${codeOf(brief)} ${rules}`;
}

/** The same as lib/wall/print.ts gives by this machine's own code: many times faster. */
function fingerprintOf(wall: Parameters<typeof printWall>[0]): string {
  return createHash('sha256').update(printWall(wall)).digest('hex').slice(0, 16);
}
