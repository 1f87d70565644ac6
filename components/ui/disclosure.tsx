'use client';

import { type ReactNode, useContext, useState } from 'react';
import styles from './disclosure.module.css';
import { FormContext } from './form-problems';

/** Fields with good defaults, folded away. Opens by itself when one of them (by `names`) is wrong. */
export function Disclosure(props: {
  readonly title: string;
  /** What the fields say now, in a few words. */
  readonly now: string;
  readonly names: readonly string[];
  readonly children: ReactNode;
}) {
  const { title, now, names, children } = props;
  const { problems } = useContext(FormContext);
  const [isOpen, setOpen] = useState(false);
  const isWrong = names.some((name) => problems[name] !== undefined);
  return (
    <details
      className={`disclosure ${styles.disclosure}`}
      open={isOpen || isWrong}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>
        <span>{title}</span> <span className={styles.now}>{now}</span>
      </summary>
      <div className={styles.fields}>{children}</div>
    </details>
  );
}
