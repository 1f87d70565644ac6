import { CodeBox } from '../../components/forms/code-box';

/** In place of a wall whose code cannot be read. */
export function WrongCode({ code, problem }: { readonly code: string; readonly problem: string }) {
  return (
    <div className="column">
      <h1>That wall code does not open a wall</h1>
      <p>Nothing is lost: a wall is laid afresh from its code each time. Put the code right and try again.</p>
      <CodeBox typed={code} problem={problem} />
      <p>
        A code has ten letters and digits, like 3K7-Q2WF-9TB. It never has 0, 1, I, L or O in it. Capitals,
        spaces and hyphens do not matter.
      </p>
      <p>
        <a href="/walls">Lay a new wall instead</a>
      </p>
    </div>
  );
}
