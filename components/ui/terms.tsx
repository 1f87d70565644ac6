import type { ReactNode } from 'react';

/** Terms, each with what is said of it. */
export function Terms(props: {
  readonly of: readonly (readonly [term: string, says: ReactNode])[];
  readonly className: string | undefined;
}) {
  return (
    <dl className={props.className}>
      {props.of.map(([term, says]) => (
        <div key={term}>
          <dt>{term}</dt>
          <dd>{says}</dd>
        </div>
      ))}
    </dl>
  );
}
