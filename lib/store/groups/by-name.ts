const ORDER = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

/** By the last word of the name, as a register is kept; those with the same one by the whole name. */
export function byLastName(a: { readonly name: string }, b: { readonly name: string }): number {
  return ORDER.compare(lastWordOf(a.name), lastWordOf(b.name)) || byName(a, b);
}

function lastWordOf(name: string): string {
  return name.slice(name.lastIndexOf(' ') + 1);
}

/** As people look for a name: É by E, 2 before 10. Databases go by bytes or by their own locale, each otherwise. */
export function byName(a: { readonly name: string }, b: { readonly name: string }): number {
  return ORDER.compare(a.name, b.name);
}
