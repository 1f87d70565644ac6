import type { PageNode } from '../content/compile-mdx';

/** Puts each heading of a lesson and all that follows it, up to the next one, into a <Step title>: so that a step can be folded. */
export function inSteps() {
  return (root: PageNode): void => {
    const before: PageNode[] = [];
    const steps: PageNode[] = [];
    for (const node of root.children ?? []) {
      if (node.tagName === 'h2') {
        const title = (node.children ?? []).map(({ value }) => value ?? '').join('');
        const attributes = [{ type: 'mdxJsxAttribute', name: 'title', value: title }];
        steps.push({ type: 'mdxJsxFlowElement', name: 'Step', attributes, children: [] });
      } else {
        const into = steps.at(-1)?.children ?? before;
        into.push(node);
      }
    }
    root.children = [...before, ...steps];
  };
}
