'use client';

import { useRouter } from 'next/navigation';
import { type ReactNode, type SyntheticEvent, useEffect, useId, useRef, useState } from 'react';
import { FormContext } from './form-problems';
import styles from './post-form.module.css';
import { type Answer, fieldsOf, sendJson } from './send-fields';

const NO_PROBLEMS: Readonly<Record<string, string>> = {};

/**
 * A form whose fields (fields.tsx) go to `action` as JSON. On a refusal it says at its top what is wrong, with a link to each field,
 * and keeps all that was typed. When it is done it goes to the address the answer names as `go`, else to `then`; 'reload' shows this
 * page afresh, with `done` as the news.
 */
export function PostForm(props: {
  readonly action: string;
  readonly then: string;
  readonly send: string;
  readonly children?: ReactNode;
  /** Values sent beside the fields, such as the id of the group. */
  readonly also?: Readonly<Record<string, unknown>>;
  readonly done?: string;
  /** A second choice on the page: outlined, not filled. */
  readonly plain?: boolean;
  /** Which form this is, where a page has several. */
  readonly name?: string;
  readonly onAnswer?: (answer: Extract<Answer, { ok: true }>) => void;
}) {
  const { action, then, send, children, also, done = 'Done.', plain = false, name, onAnswer } = props;
  const id = useId();
  const router = useRouter();
  const [refused, setRefused] = useState<Extract<Answer, { ok: false }>>();
  const [sending, setSending] = useState(false);
  const [news, setNews] = useState('');
  const summary = useRef<HTMLDivElement>(null);

  // After React has drawn it: focus on the summary makes a screen reader read it.
  useEffect(() => {
    if (!refused) return undefined;
    summary.current?.focus();
    const title = document.title;
    if (!title.startsWith('Error: ')) document.title = `Error: ${title}`;
    return () => {
      document.title = title.replace(/^Error: /, '');
    };
  }, [refused]);

  const submit = async (event: SyntheticEvent<HTMLFormElement>) => {
    event.preventDefault();
    if (sending) return;
    const form = event.currentTarget;
    setSending(true);
    setNews('');
    const answer = await sendJson(action, { ...fieldsOf(form), ...also });
    if (!answer.ok) {
      setRefused(answer);
      setSending(false);
      return;
    }
    setRefused(undefined);
    const address = answer.go ?? then;
    onAnswer?.(answer);
    if (address !== 'reload') {
      // A whole new page: who is signed in may have changed, and the header shows it. The button stays shut meanwhile.
      window.location.assign(address);
      return;
    }
    form.reset();
    setNews(done);
    setSending(false);
    router.refresh();
  };

  return (
    <FormContext value={{ id, problems: refused?.fields ?? NO_PROBLEMS }}>
      <form onSubmit={submit} method="post" noValidate className={styles.form} aria-label={name}>
        {refused && (
          <div ref={summary} className={styles.summary} role="alert" tabIndex={-1}>
            <h2>There is a problem</h2>
            <ProblemList id={id} refused={refused} />
          </div>
        )}
        {children}
        <p className={styles.send}>
          <button type="submit" className={plain ? 'button button-plain' : 'button'} aria-disabled={sending}>
            {sending ? 'Sending …' : send}
          </button>
        </p>
        <p className={styles.news} role="status">
          {news}
        </p>
      </form>
    </FormContext>
  );
}

function ProblemList({
  id,
  refused,
}: {
  readonly id: string;
  readonly refused: Extract<Answer, { ok: false }>;
}) {
  const fields = Object.entries(refused.fields);
  if (fields.length === 0) return <p>{refused.problem}</p>;
  return (
    <ul>
      {fields.map(([field, problem]) => (
        <li key={field}>
          <a
            href={`#${id}-${field}`}
            onClick={(event) => {
              event.preventDefault();
              document.getElementById(`${id}-${field}`)?.focus();
            }}
          >
            {problem}
          </a>
        </li>
      ))}
    </ul>
  );
}
