import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { readdir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';

interface Keeping {
  readonly folder: string;
  readonly build: string;
}

/** One a process, whichever of its bundles asks. */
const shared = globalThis as { readTheWallKeeping?: Keeping | undefined };

/** The bytes of a SHA-256 before what a file holds. */
const DIGEST_BYTES = 32;
/** As long as a term: by then a wall is handed in, or comes back seldom. */
const LIFETIME_MS = 90 * 86_400_000;
/** Of 10 to 50 KB each. */
const MOST_FILES = 40_000;
/** Whoever sets work after work has as many walls drawn: what a process keeps is looked through after so many files. */
const LOOKED_THROUGH_EVERY = 4_000;
let written = 0;

/**
 * From now on `kept` keeps its files in `folder`, for this build. Another build may lay, measure or draw otherwise: what it kept
 * goes. Without this, as in development, nothing is kept.
 */
export function keepFiles(folder: string, build: string): void {
  const own = join(folder, build);
  mkdirSync(own, { recursive: true, mode: 0o700 });
  for (const other of readdirSync(folder)) if (other !== build) drop(join(folder, other));
  shared.readTheWallKeeping = { folder: own, build };
}

/** Drops what was kept too long ago, and of more than `most` files the oldest. */
export async function dropOld(now: number, most = MOST_FILES): Promise<void> {
  const { folder } = shared.readTheWallKeeping ?? {};
  if (folder === undefined) return;
  const files = [];
  for (const name of await readdir(folder)) {
    const path = join(folder, name);
    const at = await stat(path).then(
      ({ mtimeMs }) => mtimeMs,
      () => 0,
    );
    files.push({ path, at });
  }
  files.sort((a, b) => b.at - a.at);
  for (const [index, { path, at }] of files.entries())
    if (index >= most || now - at > LIFETIME_MS) drop(path);
}

/** Whoever else drops it was faster, or still writes: it goes the next time. */
function drop(path: string): void {
  try {
    rmSync(path, { recursive: true, force: true });
  } catch {}
}

/** What `make` gives, as JSON in gzip: from its file where there is one that can be believed, else made and kept. */
export function keptPacked(name: string, make: () => unknown): Buffer {
  const keeping = shared.readTheWallKeeping;
  const known = keeping && readKept(keeping, name);
  if (known !== undefined) return known;
  const packed = gzipSync(JSON.stringify(make()));
  if (keeping) keep(keeping, name, packed);
  return packed;
}

/** What `make` gives, read from its file where there is one that can be believed. It has to be what JSON can hold. */
export function kept<T>(name: string, make: () => T): T {
  if (shared.readTheWallKeeping === undefined) return make();
  // What it was made as: the digest in front says that this very build wrote it under this name.
  return JSON.parse(gunzipSync(keptPacked(name, make)).toString('utf8')) as T;
}

/** Undefined where there is no such file, or one that this build did not write under this name just so. */
function readKept(keeping: Keeping, name: string): Buffer | undefined {
  try {
    const bytes = readFileSync(fileOf(keeping, name));
    const packed = bytes.subarray(DIGEST_BYTES);
    return digestOf(keeping, name, packed).equals(bytes.subarray(0, DIGEST_BYTES)) ? packed : undefined;
  } catch {
    return undefined;
  }
}

/** Beside its place first, so that nobody reads half of it. Where it cannot be written, it is made again the next time. */
function keep(keeping: Keeping, name: string, packed: Buffer): void {
  const file = fileOf(keeping, name);
  const beside = `${file}.${process.pid}`;
  try {
    writeFileSync(beside, Buffer.concat([digestOf(keeping, name, packed), packed]), { mode: 0o600 });
    renameSync(beside, file);
    written += 1;
    if (written % LOOKED_THROUGH_EVERY === 1) void dropOld(Date.now()).catch(() => undefined);
  } catch {
    drop(beside);
  }
}

function fileOf({ folder }: Keeping, name: string): string {
  return join(folder, createHash('sha256').update(name).digest('base64url'));
}

function digestOf({ build }: Keeping, name: string, packed: Buffer): Buffer {
  return createHash('sha256')
    .update(JSON.stringify([build, name]))
    .update(packed)
    .digest();
}
