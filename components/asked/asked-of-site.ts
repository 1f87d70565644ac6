/** What the site answers to questions, each asked once it is wanted and kept after. */
export interface AskedOfSite<T> {
  readonly subscribe: (changed: () => void) => () => void;
  /** Undefined while it is on its way, or was never wanted. */
  readonly answerTo: (question: string) => T | 'failed' | undefined;
  /** Asks, unless the answer is here or on its way. */
  readonly want: (question: string) => void;
}

/** `known` are answers that are here already. */
export function askedOfSite<T>(
  ask: (question: string) => Promise<T>,
  known: ReadonlyMap<string, T> = new Map(),
): AskedOfSite<T> {
  const answers = new Map<string, T | 'failed'>(known);
  const underWay = new Set<string>();
  const listeners = new Set<() => void>();
  const settle = (question: string, answer: T | 'failed') => {
    underWay.delete(question);
    answers.set(question, answer);
    for (const changed of listeners) changed();
  };
  return {
    subscribe: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    answerTo: (question) => answers.get(question),
    want: (question) => {
      const answer = answers.get(question);
      if (underWay.has(question) || (answer !== undefined && answer !== 'failed')) return;
      underWay.add(question);
      ask(question).then(
        (arrived) => settle(question, arrived),
        () => settle(question, 'failed'),
      );
    },
  };
}
