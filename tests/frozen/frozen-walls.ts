import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { layByCode } from '../../lib/engines/engines';
import { parseCode } from '../../lib/generate/wall-code';
import type { Finding } from '../../lib/inspect/finding';
import { inspect } from '../../lib/inspect/inspect';
import { fingerprintOf } from '../../lib/wall/print';

/** A wall as it was when its engine was today's. */
export interface FrozenWall {
  readonly code: string;
  readonly fingerprint: string;
  /** Hash of all that its key says, places too. */
  readonly key: string;
}

export interface MeasuredWall extends FrozenWall {
  readonly findings: readonly Finding[];
}

export function tableOf(engine: number): string {
  return `tests/frozen/engine-${engine}.txt`;
}

/** One wall a line: code, fingerprint, key. None where there is no table. */
export function frozenWalls(engine: number): readonly FrozenWall[] {
  if (!existsSync(tableOf(engine))) return [];
  const lines = readFileSync(tableOf(engine), 'utf8').trimEnd().split('\n');
  return lines.map((line) => {
    const [code = '', fingerprint = '', key = ''] = line.split(' ');
    return { code, fingerprint, key };
  });
}

/** The same of the wall that the code opens now. */
export function wallNow(code: string): MeasuredWall {
  const brief = parseCode(code);
  const { wall, asLaid } = layByCode(brief);
  const findings = inspect(wall, brief.rules);
  return { code, fingerprint: fingerprintOf(asLaid), key: keyHash(findings), findings };
}

function keyHash(findings: readonly Finding[]): string {
  const said = findings.map(({ check, parts, region, measured, unit, limit, kind, hazard }) => [
    check,
    parts,
    [region.panel, region.x, region.y, region.width, region.height],
    measured,
    unit,
    limit,
    kind,
    hazard,
  ]);
  return createHash('sha256').update(JSON.stringify(said)).digest('hex').slice(0, 16);
}
