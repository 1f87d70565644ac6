import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

interface LockedPackage {
  readonly version: string;
  readonly license?: string;
  readonly integrity?: string;
  readonly resolved?: string;
  readonly link?: boolean;
  readonly hasInstallScript?: boolean;
}

const { packages } = JSON.parse(readFileSync('package-lock.json', 'utf8')) as {
  readonly packages: Readonly<Record<string, LockedPackage>>;
};
const own = JSON.parse(readFileSync('package.json', 'utf8'));
/** The lock's first entry is the site itself. */
const locked = Object.entries(packages).filter(([path]) => path !== '');

/** Of SPDX: those that ask for no more than to be named, and those that ask for changes to the package itself to be handed on. */
const LICENCES = [
  '0BSD',
  'Apache-2.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'BlueOak-1.0.0',
  'CC-BY-4.0',
  'CC0-1.0',
  'ISC',
  'LGPL-3.0-or-later',
  'MIT',
  'MIT-0',
  'MPL-2.0',
  'OFL-1.1',
];
/** Says MIT in the old way, which the lock does not take over. */
const SAID_ELSEWHERE = ['node_modules/format'];

describe('what is installed', () => {
  test('is every package of the lock, a few hundred', () => {
    expect(locked.length).toBeGreaterThan(300);
  });

  test('is exactly what was looked at: each package by the hash of its contents, none from a folder or an address', () => {
    const loose = locked.filter(
      ([, { integrity, link, resolved }]) =>
        !/^sha512-[\w+/]{86}==$/.test(integrity ?? '') || link !== undefined || resolved !== undefined,
    );
    expect(loose.map(([path]) => path)).toEqual([]);
  });

  test('is asked for by exact version', () => {
    const asked = { ...own.dependencies, ...own.optionalDependencies, ...own.devDependencies };
    const loose = Object.entries<string>(asked).filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version));
    expect(loose).toEqual([]);
  });

  test('runs no program of its own while it is installed, but for those named', () => {
    const running = locked.filter(([, { hasInstallScript }]) => hasInstallScript).map(([path]) => path);
    expect(running.map((path) => path.replace('node_modules/', ''))).toEqual(Object.keys(own.allowScripts));
  });

  test('may be used: each licence is one that was read', () => {
    const unread = locked.filter(([path, { license = '' }]) => {
      const named = license.split(/ (?:AND|OR) |[()]/).filter((name) => name !== '');
      const isKnown = license.includes(' OR ')
        ? named.some((name) => LICENCES.includes(name))
        : named.length > 0 && named.every((name) => LICENCES.includes(name));
      return !isKnown && !SAID_ELSEWHERE.includes(path);
    });
    expect(unread.map(([path, { license }]) => `${path}: ${license}`)).toEqual([]);
  });
});
