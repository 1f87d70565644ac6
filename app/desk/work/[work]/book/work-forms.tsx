'use client';

import { useState } from 'react';
import { type Choice, SelectField, TextField } from '../../../../../components/ui/fields';
import { PostForm } from '../../../../../components/ui/post-form';
import styles from '../../../mark-book.module.css';

/** Lets learners see their results before, or instead of, the time that was set for it. */
export function ReleaseForm({
  work,
  shown,
  whenDue,
}: {
  readonly work: string;
  /** They see them already. */
  readonly shown: boolean;
  readonly whenDue: boolean;
}) {
  if (shown) return <p>Learners see their results.</p>;
  return (
    <>
      <p>
        Learners do not see their results yet.
        {whenDue && ' They will when the work is due.'}
      </p>
      <PostForm
        action="/api/book/release"
        also={{ work }}
        send={whenDue ? 'Release results now' : 'Release results to learners'}
        done="Released."
        plain
        name="Release results"
      />
    </>
  );
}

/** Marks everything again, after a key or a rule has changed, and says what came of it. */
export function MarkAgainForm({
  work,
  ruleSets,
}: {
  readonly work: string;
  readonly ruleSets: readonly Choice[];
}) {
  const [news, setNews] = useState<string>();
  return (
    <details className={styles.record}>
      <summary>Mark this work again</summary>
      <p className="column">
        Do this when a limit or the key was put right. Every old result stays beside the new one, with your
        name and your reason. A wall is laid so that nothing on it is near a limit of its own rule set. By
        another rule set some places may be too near to call: look at them before you release.
      </p>
      <PostForm
        action="/api/book/mark-again"
        also={{ work }}
        send="Mark again"
        done="Marked again."
        onAnswer={(answer) => setNews(countWords(answer))}
        name="Mark again"
      >
        <SelectField
          name="rules"
          label="Judge by"
          choices={[{ value: 'own', label: 'The rule set each wall was laid for' }, ...ruleSets]}
        />
        <TextField
          name="reason"
          label="Reason"
          help="The learner will read it, and so will the next instructor."
        />
      </PostForm>
      {news && <p>{news}</p>}
    </details>
  );
}

function countWords({ changed, same, notLaid }: Readonly<Record<string, unknown>>): string {
  const left =
    notLaid === 0
      ? ''
      : ` ${notLaid} could not be marked: their walls come out otherwise now. Their old result stands.`;
  return `${changed} changed, ${same} came out the same.${left}`;
}
