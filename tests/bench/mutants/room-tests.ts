import { relative, resolve } from 'node:path';
import {
  BaseSequencer,
  createVitest,
  type Reporter,
  type TestModule,
  type TestSpecification,
  type Vitest,
} from 'vitest/node';
import { reachOf } from './reach';
import { FIRST_BLOCK, type MutatedRoom } from './rooms';

export type Outcome = 'killed' | 'survived' | 'hung';

/** The tests of a room, kept ready: what is not mutated is read and translated once. */
export interface RoomTests {
  /** All of them, as the code stands. */
  readonly pass: () => Promise<boolean>;
  /** Those that reach a file that was just changed, the quickest first, until one fails. */
  readonly tryFile: (file: string) => Promise<Outcome>;
  readonly close: () => Promise<void>;
}

/** Longer than any room's tests take on a busy machine: what is not done by then never ends. */
const HANGS_MS = 900_000;

class AsGiven extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return files;
  }
}

/** What became of each test file in the run that goes on; vitest's own list holds earlier runs too. */
interface RunLog extends Reporter {
  readonly failed: Set<string>;
  readonly passed: Set<string>;
  readonly tookMs: Map<string, number>;
}

export async function openRoomTests({ project, tests }: MutatedRoom): Promise<RoomTests> {
  const log = newLog();
  const vitest = await createVitest('test', {
    project,
    watch: false,
    bail: 1,
    reporters: [log],
    pool: 'threads',
    maxWorkers: 1,
    isolate: false,
    testNamePattern: FIRST_BLOCK,
    sequence: { sequencer: AsGiven },
  });
  const found = await Promise.all(tests.map((test) => vitest.globTestSpecifications([test])));
  const all = found.flat().map((spec) => ({ spec, reach: reachOf(relative('', spec.moduleId)) }));
  const tookMs = ({ moduleId }: TestSpecification) => log.tookMs.get(moduleId) ?? 0;
  return {
    pass: async () => {
      const specs = all.map(({ spec }) => spec);
      return (await outcomeOf(vitest, log, specs)) === 'survived';
    },
    tryFile: async (file) => {
      vitest.invalidateFile(resolve(file));
      const specs = all.filter(({ reach }) => reach.has(file)).map(({ spec }) => spec);
      return outcomeOf(
        vitest,
        log,
        specs.sort((a, b) => tookMs(a) - tookMs(b)),
      );
    },
    close: () => vitest.close(),
  };
}

function newLog(): RunLog {
  const log = { failed: new Set<string>(), passed: new Set<string>(), tookMs: new Map<string, number>() };
  return {
    ...log,
    onTestModuleEnd: (module: TestModule) => {
      const { collectDuration, duration } = module.diagnostic();
      if (!log.tookMs.has(module.moduleId)) log.tookMs.set(module.moduleId, collectDuration + duration);
      if (module.state() === 'passed') log.passed.add(module.moduleId);
      if (!module.ok()) log.failed.add(module.moduleId);
    },
  };
}

async function outcomeOf(vitest: Vitest, log: RunLog, specs: readonly TestSpecification[]): Promise<Outcome> {
  log.failed.clear();
  log.passed.clear();
  let hung = false;
  const watch = setTimeout(() => {
    hung = true;
    endThread(vitest);
  }, HANGS_MS);
  const { unhandledErrors } = await vitest.runTestSpecifications([...specs]);
  clearTimeout(watch);
  if (hung) return 'hung';
  if (log.failed.size > 0 || unhandledErrors.length > 0) return 'killed';
  // The bail of the run before may reach into this one and leave files out.
  const left = specs.filter(({ moduleId }) => !log.passed.has(moduleId));
  return left.length === 0 ? 'survived' : outcomeOf(vitest, log, left);
}

/** A thread in an endless loop hears nothing. Asked once, the pool waits for it; asked again, it ends it. */
function endThread(vitest: Vitest): void {
  const pool: unknown = Reflect.get(vitest, 'pool');
  if (typeof pool !== 'object' || pool === null || !('close' in pool) || typeof pool.close !== 'function')
    return;
  void pool.close();
  void pool.close();
}
