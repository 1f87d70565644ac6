import { type ParseArgsConfig, parseArgs } from 'node:util';
import { RULE_SETS, type RuleSetId } from '../../lib/limits/limit';
import { oneLine } from '../request/one-line';

/** What is wrong with a call, in one sentence. */
export class CallError extends Error {
  override name = 'CallError';
}

/** The options of a call. @throws CallError for one that there is not. */
export function readOptions<Config extends ParseArgsConfig>(config: Config) {
  try {
    return parseArgs(config);
  } catch (error) {
    throw new CallError(`${firstLine(error)} (--help lists the options)`);
  }
}

/** @throws CallError */
export function ruleSetOf(text: string): RuleSetId {
  const rules = RULE_SETS.find((known) => known === text);
  if (rules === undefined) throw new CallError(`--rules: "${text}" is not one of ${RULE_SETS.join(', ')}`);
  return rules;
}

export function firstLine(error: unknown): string {
  return (error instanceof Error ? error.message : String(error)).split('\n')[0] ?? '';
}

/** Prints what a command has to say; of a CallError, or an error of a name given, its message alone, and exit code 2. */
export function printCommand(run: () => string, expected: readonly string[] = []): void {
  // A reader that has seen enough (head, less) closes the pipe: that is no failure.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
  });
  try {
    process.stdout.write(`${run().trimEnd()}\n`);
  } catch (error) {
    if (!(error instanceof Error) || !['CallError', ...expected].includes(error.name)) throw error;
    process.stderr.write(`${oneLine(error.message)}\n`);
    process.exitCode = 2;
  }
}
