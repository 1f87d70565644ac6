import type { KeyLine } from './preview';

/** The key of one wall in words. */
export function KeyList({ lines }: { readonly lines: readonly KeyLine[] }) {
  if (lines.length === 0) return <p>Sound.</p>;
  return (
    <ul>
      {lines.map(({ fault, place, measured, couldFall }) => (
        <li key={`${fault} ${place}`}>
          <strong>{fault}</strong>. {place}: {measured}
          {couldFall && '. Could fall'}
        </li>
      ))}
    </ul>
  );
}
