/** The head of a table: a name over each column. */
export function ColumnHeads({ of }: { readonly of: readonly string[] }) {
  return (
    <thead>
      <tr>
        {of.map((name) => (
          <th key={name} scope="col">
            {name}
          </th>
        ))}
      </tr>
    </thead>
  );
}
