import { resolve } from 'node:path';
import { BaseSequencer, createVitest, type TestSpecification, type Vitest } from 'vitest/node';
import { reachOf } from './reach';
import { FIRST_BLOCK, type MutatedRoom } from './rooms';

export type Outcome = 'killed' | 'survived' | 'hung';

/** A mutant that takes this long never ends; the whole set takes a minute or two. */
const HANGS_MS = 300_000;

class AsGiven extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return files;
  }
}

/** The tests of a room, kept ready: what is not mutated is read and translated once. */
export class RoomTests {
  readonly #vitest: Vitest;
  readonly #tests: readonly { spec: TestSpecification; steps: ReadonlyMap<string, number> }[];

  private constructor(vitest: Vitest, specs: readonly TestSpecification[]) {
    this.#vitest = vitest;
    this.#tests = specs.map((spec) => ({ spec, steps: reachOf(spec.moduleId.slice(process.cwd().length + 1)) }));
  }

  static async open({ project, tests }: MutatedRoom): Promise<RoomTests> {
    const vitest = await createVitest('test', {
      project,
      watch: false,
      bail: 1,
      reporters: [{}],
      pool: 'threads',
      maxWorkers: 1,
      isolate: false,
      testNamePattern: FIRST_BLOCK,
      sequence: { sequencer: AsGiven },
    });
    const found = await Promise.all(tests.map((test) => vitest.globTestSpecifications([test])));
    return new RoomTests(vitest, found.flat());
  }

  /** Runs the tests that reach a file, those of a place with the nearest first, until one fails. */
  async try(file: string): Promise<Outcome> {
    this.#vitest.invalidateFile(resolve(file));
    const specs = this.#tests
      .filter(({ steps }) => steps.has(file))
      .map(({ spec }) => spec);
    return this.#run(specs);
  }

  /** All of them. */
  async pass(): Promise<boolean> {
    return (await this.#run(this.#tests.map(({ spec }) => spec))) === 'survived';
  }

  async close(): Promise<void> {
    await this.#vitest.close();
  }

  async #run(specs: readonly TestSpecification[]): Promise<Outcome> {
    let hung = false;
    const watch = setTimeout(() => {
      hung = true;
      // Asked once, the run waits for its thread; asked twice, it ends the thread.
      void this.#vitest.cancelCurrentRun('keyboard-input');
      void this.#vitest.cancelCurrentRun('keyboard-input');
    }, HANGS_MS);
    const { testModules, unhandledErrors } = await this.#vitest.runTestSpecifications([...specs]);
    clearTimeout(watch);
    if (hung) return 'hung';
    const noticed = unhandledErrors.length > 0 || testModules.some((module) => module.state() === 'failed');
    return noticed ? 'killed' : 'survived';
  }
}
