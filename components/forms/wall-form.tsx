import form from '../ui/form.module.css';
import { Options } from '../ui/options';
import styles from './forms.module.css';

export interface FieldChoice {
  readonly value: string;
  readonly label: string;
}

export interface FieldProblem {
  readonly field: string;
  readonly problem: string;
}

export interface WallFormField {
  readonly name: string;
  readonly label: string;
  readonly choices: readonly FieldChoice[];
}

/** Asks for a new wall. Works without script; what was typed stays in place when something is wrong. */
export function WallForm(props: {
  /** The page the form leads to, and what its button says. */
  readonly action: string;
  readonly send: string;
  readonly fields: readonly WallFormField[];
  readonly typed: Readonly<Record<string, string>>;
  readonly problems: readonly FieldProblem[];
  readonly mostSeed: number;
}) {
  const { action, send, fields, typed, problems, mostSeed } = props;
  const problemOf = (field: string) => problems.find((each) => each.field === field)?.problem ?? null;
  return (
    <form method="get" action={action} className="stack">
      {fields.map(({ name, label, choices }) => (
        <div key={name} className={form.field}>
          <label htmlFor={name}>{label}</label>
          <select id={name} name={name} defaultValue={typed[name]} {...described(name, problemOf(name))}>
            <Options of={choices.map((choice) => [choice.value, choice.label])} />
          </select>
          <Problem name={name} text={problemOf(name)} />
        </div>
      ))}
      <div className={form.field}>
        <label htmlFor="seed">Wall number (leave empty for any)</label>
        <input
          id="seed"
          name="seed"
          inputMode="numeric"
          autoComplete="off"
          defaultValue={typed.seed}
          {...described('seed', problemOf('seed'))}
        />
        <Problem name="seed" text={problemOf('seed')} />
        <span className={`${styles.help} fine`}>
          A whole number from 0 to {mostSeed.toLocaleString('en')}. The same number gives the same wall.
        </span>
      </div>
      <p className={styles.send}>
        <button type="submit" className="button">
          {send}
        </button>
      </p>
    </form>
  );
}

function described(name: string, problem: string | null) {
  return problem === null ? {} : { 'aria-invalid': true, 'aria-describedby': `${name}-problem` };
}

function Problem({ name, text }: { readonly name: string; readonly text: string | null }) {
  if (text === null) return null;
  return (
    <span id={`${name}-problem`} className="problem" role="alert">
      <span aria-hidden="true">✕ </span>
      {text}
    </span>
  );
}
