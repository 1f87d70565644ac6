/** What we ask of a node of a text tree: MDX's own types come with a package we do not depend on by name. */
export interface TextNode {
  readonly type: string;
  readonly value?: string;
  readonly url?: string;
  readonly depth?: number;
  readonly name?: string | null;
  readonly attributes?: readonly {
    readonly type: string;
    readonly name?: string;
    readonly value?: unknown;
  }[];
  readonly children?: readonly TextNode[];
  readonly position?: { readonly start: { readonly line: number } };
}

/** A node and all below it, in reading order. */
export function* nodesOf(node: TextNode): Generator<TextNode> {
  yield node;
  for (const child of node.children ?? []) yield* nodesOf(child);
}

export function isComponent(node: TextNode): boolean {
  return node.type === 'mdxJsxFlowElement' || node.type === 'mdxJsxTextElement';
}

/** The attributes of a component that are plain texts; a bare one is ''. */
export function plainAttributes(node: TextNode): Readonly<Record<string, string>> {
  const pairs = (node.attributes ?? []).map(({ name = '…', value }): [string, string] => [
    name,
    typeof value === 'string' ? value : value === null || value === undefined ? '' : '{…}',
  ]);
  return Object.fromEntries(pairs);
}

/** The words of a node, without what stands in its attributes. */
export function proseOf(node: TextNode): string {
  return [...nodesOf(node)].map(({ value, type }) => (type === 'text' ? (value ?? '') : '')).join('');
}
