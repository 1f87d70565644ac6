'use client';

import { type RefObject, useContext, useEffect, useRef } from 'react';
import styles from './form.module.css';
import { FormContext } from './form-problems';

/**
 * Says at the top of a form what is wrong with it, with a link to each field. Takes the focus, so that a screen reader reads it, and
 * puts "Error: " before the title of the page, which is what is read out first.
 */
export function FormSummary({ problem, fields }: { readonly problem: string; readonly fields: Problems }) {
  const { id } = useContext(FormContext);
  const box: RefObject<HTMLDivElement | null> = useRef(null);
  const named = Object.entries(fields);
  useEffect(() => {
    box.current?.focus();
    const { title } = document;
    if (!title.startsWith('Error: ')) document.title = `Error: ${title}`;
    return () => {
      document.title = document.title.replace(/^Error: /, '');
    };
  }, []);
  return (
    <div ref={box} className={styles.summary} role="alert" tabIndex={-1}>
      <h2>There is a problem</h2>
      {named.length === 0 && <p>{problem}</p>}
      {named.length > 0 && (
        <ul>
          {named.map(([field, text]) => (
            <li key={field}>
              <a
                href={`#${id}-${field}`}
                onClick={(event) => {
                  event.preventDefault();
                  document.getElementById(`${id}-${field}`)?.focus();
                }}
              >
                {text}
              </a>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

type Problems = Readonly<Record<string, string>>;
