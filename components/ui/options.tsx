/** The choices of a select. */
export function Options({ of }: { readonly of: readonly (readonly [value: string, label: string])[] }) {
  return of.map(([value, label]) => (
    <option key={value} value={value}>
      {label}
    </option>
  ));
}
