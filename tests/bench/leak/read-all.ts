/** Standard deviations from the mean of its kind from which a number stands out. */
const ODD = 4;
type Leaf = string | number | boolean | null;

/** What an eye sees of a drawing: where its lines run, and what is drawn at all. */
const SEEN = /\.(path|at|shapes|haze|box)(\.|\[|$)/;

/**
 * Reads all there is in what a page receives but the lines of its drawings, and knows nothing of walls: for every kind of entry how many
 * there are, how many different ones, how many numbers stand out from their fellows, and how many texts are unlike most others once
 * their digits are taken out.
 */
export function traitsIn(sent: unknown): Readonly<Record<string, string>> {
  const leaves = new Map<string, Leaf[]>();
  gather(sent, '', leaves);
  const traits: Record<string, string> = {};
  for (const [path, values] of leaves) {
    traits[`${path} count`] = String(values.length);
    traits[`${path} different`] = String(new Set(values).size);
    const numbers = values.filter((value) => typeof value === 'number');
    if (numbers.length > 2) traits[`${path} odd`] = String(oddOnes(numbers));
    const forms = values.flatMap((value) => (typeof value === 'string' ? [value.replace(/\d+/g, '#')] : []));
    if (forms.length > 2) traits[`${path} unlike`] = String(unlikeMost(forms));
    if (values.length === 1) traits[path] = String(values[0]);
  }
  return traits;
}

function gather(value: unknown, path: string, leaves: Map<string, Leaf[]>): void {
  if (SEEN.test(path)) return;
  if (Array.isArray(value)) {
    note(`${path} lengths`, value.length, leaves);
    for (const each of value) gather(each, `${path}[]`, leaves);
  } else if (typeof value === 'object' && value !== null) {
    for (const [name, each] of Object.entries(value)) gather(each, `${path}.${name}`, leaves);
  } else if (value !== undefined) {
    note(path, value as Leaf, leaves);
  }
}

function note(path: string, value: Leaf, leaves: Map<string, Leaf[]>): void {
  const known = leaves.get(path);
  if (known) known.push(value);
  else leaves.set(path, [value]);
}

function oddOnes(numbers: readonly number[]): number {
  const mean = numbers.reduce((sum, each) => sum + each, 0) / numbers.length;
  const spread = Math.sqrt(numbers.reduce((sum, each) => sum + (each - mean) ** 2, 0) / numbers.length);
  return numbers.filter((each) => Math.abs(each - mean) > ODD * spread).length;
}

function unlikeMost(forms: readonly string[]): number {
  const counts = new Map<string, number>();
  for (const form of forms) counts.set(form, (counts.get(form) ?? 0) + 1);
  return forms.length - Math.max(...counts.values());
}
