'use client';

import { useRouter } from 'next/navigation';
import { type ReactNode, type SyntheticEvent, useId, useState } from 'react';
import styles from './form.module.css';
import { FormContext } from './form-problems';
import { FormSummary } from './form-summary';
import { type Answer, fieldsOf, refusal, sendJson } from './send-fields';

const NO_PROBLEMS: Readonly<Record<string, string>> = {};

/**
 * A form whose fields (fields.tsx) go to `action` as JSON. On a refusal it says at its top what is wrong, with a link to each field,
 * and keeps all that was typed. When it is done it goes to the address the answer names as `go`, else to `then`; 'stay' leaves the
 * page as it is, and without either the page is shown afresh, with `done` as the news.
 */
export function PostForm(props: {
  readonly action: string;
  readonly then?: string;
  readonly send: string;
  readonly children?: ReactNode;
  /** Values sent beside the fields, such as the id of the group. */
  readonly also?: Readonly<Record<string, unknown>>;
  readonly done?: string;
  /** A second choice on the page: outlined, not filled. */
  readonly plain?: boolean;
  /** Which form this is, where a page has several. */
  readonly name?: string;
  /** Takes what the answer holds; gives false for one it cannot read. */
  readonly onAnswer?: (answer: Extract<Answer, { ok: true }>) => unknown;
}) {
  const {
    action,
    then = 'reload',
    send,
    children,
    also,
    done = 'Done.',
    plain = false,
    name,
    onAnswer,
  } = props;
  const id = useId();
  const router = useRouter();
  const [refused, setRefused] = useState<{
    readonly answer: Extract<Answer, { ok: false }>;
    readonly time: number;
  }>();
  const [sending, setSending] = useState(false);
  const [news, setNews] = useState('');

  const submit = async (event: SyntheticEvent<HTMLFormElement>) => {
    event.preventDefault();
    if (sending) return;
    const form = event.currentTarget;
    setSending(true);
    setNews('');
    const given = await sendJson(action, { ...fieldsOf(form), ...also });
    const answer = given.ok && onAnswer?.(given) === false ? refusal(given) : given;
    if (!answer.ok) {
      setRefused({ answer, time: (refused?.time ?? 0) + 1 });
      setSending(false);
      return;
    }
    setRefused(undefined);
    const address = answer.go ?? then;
    if (address !== 'reload' && address !== 'stay') {
      // A whole new page: who is signed in may have changed, and the header shows it. The button stays shut meanwhile.
      window.location.assign(address);
      return;
    }
    form.reset();
    setNews(done);
    setSending(false);
    if (address === 'reload') router.refresh();
  };

  return (
    <FormContext value={{ id, problems: refused?.answer.fields ?? NO_PROBLEMS }}>
      <form onSubmit={submit} method="post" noValidate className={styles.form} aria-label={name}>
        {/* A new one for each refusal: the same words said again are news too. */}
        {refused && (
          <FormSummary key={refused.time} problem={refused.answer.problem} fields={refused.answer.fields} />
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
