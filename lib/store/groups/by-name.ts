const ORDER = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

/** As people look for a name: É by E, 2 before 10. Databases go by bytes or by their own locale, each otherwise. */
export function byName(a: { readonly name: string }, b: { readonly name: string }): number {
  return ORDER.compare(a.name, b.name);
}
