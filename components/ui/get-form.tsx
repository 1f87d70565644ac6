'use client';

import { type ReactNode, useId } from 'react';
import styles from './form.module.css';
import { FormContext } from './form-problems';
import { FormSummary } from './form-summary';

/** A form that asks for a page and changes nothing: works without script. The page says in `problems` what was wrong with it. */
export function GetForm(props: {
  readonly action: string;
  readonly send: string;
  readonly children: ReactNode;
  readonly problems?: Readonly<Record<string, string>>;
  readonly plain?: boolean;
  readonly name?: string;
}) {
  const { action, send, children, problems = {}, plain = false, name } = props;
  const id = useId();
  const [problem] = Object.values(problems);
  return (
    <FormContext value={{ id, problems }}>
      <form method="get" action={action} noValidate className={styles.form} aria-label={name}>
        {problem && <FormSummary problem={problem} fields={problems} />}
        {children}
        <p className={styles.send}>
          <button type="submit" className={plain ? 'button button-plain' : 'button'}>
            {send}
          </button>
        </p>
      </form>
    </FormContext>
  );
}
