import { fingerTaps } from '../lib/views/fingers';

/** 2,000 taps of a finger (or as many as asked), each marked by the default path: how many end as a hit, by fault, and every miss. */
export function run(args: readonly string[] = []): void {
  const count = Number(args[0] ?? 2000);
  const taps = fingerTaps(count, Number(args[1] ?? 1));
  const misses = taps.filter(({ hit }) => !hit);
  for (const { finding, marked, where } of misses) {
    process.stdout.write(`missed: ${finding.check} at ${finding.parts[0]}, marked ${marked} (${where})\n`);
  }
  for (const check of [...new Set(taps.map(({ finding }) => finding.check))].sort()) {
    const mine = taps.filter(({ finding }) => finding.check === check);
    process.stdout.write(`${check}: ${mine.filter(({ hit }) => hit).length} of ${mine.length}\n`);
  }
  const share = ((taps.length - misses.length) / taps.length) * 100;
  process.stdout.write(`${taps.length} taps: ${share.toFixed(2)} % hits\n`);
}
