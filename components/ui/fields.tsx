'use client';

import type { ReactNode } from 'react';
import styles from './form.module.css';
import { useField } from './form-problems';
import { Options } from './options';

interface FieldProps {
  readonly name: string;
  readonly label: string;
  readonly help?: string;
}

/** One line of text. `kind` is the browser's own: it brings the right keyboard on a phone. */
export function TextField(
  props: FieldProps & {
    readonly kind?: 'text' | 'email' | 'password' | 'number' | 'datetime-local';
    readonly value?: string;
    /** What the browser may fill in, such as 'current-password'; 'off' when nothing. */
    readonly fills?: string;
    /** Digits only, shown as dots: a PIN. */
    readonly digits?: boolean;
    readonly most?: number;
  },
) {
  const { name, label, help, kind = 'text', value, fills = 'off', digits = false, most } = props;
  const { fieldId, attributes } = useField(name, help);
  return (
    <Frame name={name} label={label} {...(help ? { help } : {})}>
      <input
        id={fieldId}
        name={name}
        type={kind}
        defaultValue={value}
        autoComplete={fills}
        {...(digits ? { inputMode: 'numeric' as const } : {})}
        {...(most ? { maxLength: most } : {})}
        {...attributes}
      />
    </Frame>
  );
}

/** Several lines of text. */
export function AreaField(props: FieldProps & { readonly value?: string; readonly rows?: number }) {
  const { name, label, help, value, rows = 5 } = props;
  const { fieldId, attributes } = useField(name, help);
  return (
    <Frame name={name} label={label} {...(help ? { help } : {})}>
      <textarea id={fieldId} name={name} rows={rows} defaultValue={value} {...attributes} />
    </Frame>
  );
}

export interface Choice {
  readonly value: string;
  readonly label: string;
}

/** One of many, folded. */
export function SelectField(
  props: FieldProps & { readonly choices: readonly Choice[]; readonly value?: string },
) {
  const { name, label, help, choices, value } = props;
  const { fieldId, attributes } = useField(name, help);
  return (
    <Frame name={name} label={label} {...(help ? { help } : {})}>
      <select id={fieldId} name={name} defaultValue={value} {...attributes}>
        <Options of={choices.map((choice) => [choice.value, choice.label])} />
      </select>
    </Frame>
  );
}

/** A few choices in sight: one of them, or with `several` any number (then the form sends a list). */
export function ChoiceField(
  props: FieldProps & {
    readonly choices: readonly Choice[];
    readonly chosen?: readonly string[];
    readonly several?: boolean;
  },
) {
  const { name, label, help, choices, chosen = [], several = false } = props;
  const { fieldId, problem, attributes } = useField(name, help);
  return (
    <fieldset id={fieldId} tabIndex={-1} className={styles.choices} {...attributes}>
      <legend>{label}</legend>
      <Told {...{ fieldId, help, problem }} />
      {choices.map((choice) => (
        <label key={choice.value} className="tick">
          <input
            type={several ? 'checkbox' : 'radio'}
            name={several ? `${name}[]` : name}
            value={choice.value}
            defaultChecked={chosen.includes(choice.value)}
          />
          <span>{choice.label}</span>
        </label>
      ))}
    </fieldset>
  );
}

/** Yes or no: the form sends true or false. */
export function TickField({ name, label, help, ticked }: FieldProps & { readonly ticked?: boolean }) {
  const { fieldId, problem, attributes } = useField(name, help);
  return (
    <div className={styles.field}>
      <label className="tick">
        <input id={fieldId} type="checkbox" name={`${name}?`} defaultChecked={ticked} {...attributes} />
        <span>{label}</span>
      </label>
      <Told {...{ fieldId, help, problem }} />
    </div>
  );
}

function Frame({ name, label, help, children }: FieldProps & { readonly children: ReactNode }) {
  const { fieldId, problem } = useField(name, help);
  return (
    <div className={styles.field}>
      <label htmlFor={fieldId}>{label}</label>
      <Told {...{ fieldId, help, problem }} />
      {children}
    </div>
  );
}

function Told(
  props: { readonly fieldId: string } & Readonly<Record<'help' | 'problem', string | undefined>>,
) {
  const { fieldId, help, problem } = props;
  return (
    <>
      {help && (
        <p id={`${fieldId}-help`} className={styles.help}>
          {help}
        </p>
      )}
      {problem && (
        <p id={`${fieldId}-problem`} className="problem">
          <span aria-hidden="true">✕ </span>
          <span className="visually-hidden">Error: </span>
          {problem}
        </p>
      )}
    </>
  );
}
