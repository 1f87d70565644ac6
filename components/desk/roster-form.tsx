'use client';

import { useRouter } from 'next/navigation';
import { useId, useRef, useState } from 'react';
import { hasFields } from '../../lib/json/read-json';
import styles from '../ui/form.module.css';
import { type Answer, refusal, sendJson } from '../ui/send-fields';
import roster from './roster-form.module.css';

const isRow = (value: unknown) => hasFields(value, { line: 'number', name: 'string', timeFactor: 'number' });
const isProblem = (value: unknown) => hasFields(value, { line: 'number', message: 'string' });

/** What the site says of the lines of a text; null for an answer that says nothing of them. */
function checkedIn({ rows, problems }: Readonly<Record<string, unknown>>, text: string) {
  const isChecked = Array.isArray(rows) && Array.isArray(problems);
  return isChecked ? { text, rows: rows.filter(isRow), problems: problems.filter(isProblem) } : null;
}
type Checked = NonNullable<ReturnType<typeof checkedIn>>;

const LARGEST_FILE = 1024 * 1024;

/** Names typed, pasted or from a file. Every line is checked first; nothing is written while one is wrong. */
export function RosterForm({ group }: { readonly group: string }) {
  const id = useId();
  const router = useRouter();
  const [text, setText] = useState('');
  const [checked, setChecked] = useState<Checked>();
  const [refused, setRefused] = useState<string>();
  const [news, setNews] = useState('');
  const box = useRef<HTMLTextAreaElement>(null);
  const asking = useRef(false);

  const ask = async (dry: boolean): Promise<Extract<Answer, { ok: true }> | null> => {
    // Tapped twice: the second would find the names of the first.
    if (asking.current) return null;
    asking.current = true;
    setNews('');
    const answer = await sendJson('/api/groups/roster', { group, text, dry });
    asking.current = false;
    setRefused(answer.ok ? undefined : answer.problem);
    return answer.ok ? answer : null;
  };
  const check = async () => {
    const answer = await ask(true);
    const lines = answer && checkedIn(answer, text);
    if (lines) setChecked(lines);
    else if (answer) setRefused(refusal(answer).problem);
  };
  const add = async () => {
    const answer = await ask(false);
    if (!answer) return;
    setText('');
    setChecked(undefined);
    setNews(answer.added === 1 ? '1 learner is added.' : `${String(answer.added)} learners are added.`);
    router.refresh();
  };
  const readFile = async (file: File | undefined) => {
    if (!file) return;
    if (file.size > LARGEST_FILE) setRefused('This file is larger than 1 MB. A roster is a short text.');
    else change(decodeText(new Uint8Array(await file.arrayBuffer())));
  };
  const change = (typed: string) => {
    setText(typed);
    setRefused(undefined);
  };
  // What was checked is what is added: a change asks for another check.
  const current = checked?.text === text ? checked : undefined;
  const isGood = current !== undefined && current.problems.length === 0;
  return (
    <div className={styles.form}>
      {refused && (
        <div className={styles.summary} role="alert">
          <h3>There is a problem</h3>
          <p>{refused}</p>
        </div>
      )}
      <div className={styles.field}>
        <label htmlFor={`${id}-text`}>Names, one on each line</label>
        <p id={`${id}-help`} className={styles.help}>
          Or a table whose first line names the columns: “name”, or “first name” and “last name”; and if you
          want “time” in percent.
        </p>
        <textarea
          ref={box}
          id={`${id}-text`}
          rows={6}
          value={text}
          aria-describedby={`${id}-help`}
          onChange={(event) => change(event.target.value)}
        />
      </div>
      <div className={styles.field}>
        <label htmlFor={`${id}-file`}>Or take them from a file (CSV or plain text)</label>
        <input
          id={`${id}-file`}
          type="file"
          accept=".csv,.txt,text/csv,text/plain"
          onChange={({ target }) => {
            void readFile(target.files?.[0]);
            // Or the same file, put right and chosen again, would be no change.
            target.value = '';
          }}
        />
      </div>
      {current && <CheckedLines checked={current} />}
      <p className={styles.send}>
        {isGood ? (
          <button type="button" className="button" onClick={add}>
            {current.rows.length === 1 ? 'Add 1 learner' : `Add ${current.rows.length} learners`}
          </button>
        ) : (
          <button type="button" className="button" onClick={check}>
            Check the names
          </button>
        )}
      </p>
      <p className={styles.news} role="status">
        {news}
      </p>
    </div>
  );
}

function CheckedLines({ checked: { rows, problems } }: { readonly checked: Checked }) {
  if (problems.length > 0) {
    return (
      <div className={styles.summary} role="alert">
        <h3>There is a problem</h3>
        <p>Nothing is added yet. Put these lines right, then check again.</p>
        <ul>
          {problems.map(({ line, message }) => (
            <li key={`${line} ${message}`}>
              Line {line}: {message}
            </li>
          ))}
        </ul>
      </div>
    );
  }
  return (
    <div className={roster.good} role="status">
      <p>Every line is good. Nothing is added yet.</p>
      <ol className={roster.names}>
        {rows.map(({ line, name, timeFactor }) => (
          <li key={line}>
            {name}
            {timeFactor !== 100 && `, time ${timeFactor} %`}
          </li>
        ))}
      </ol>
    </div>
  );
}

/**
 * The text of a file as spreadsheet programs write it: UTF-8; with a mark at its front UTF-16; and what is neither is the old
 * code page of western Windows, in which every byte is a sign.
 */
export function decodeText(bytes: Uint8Array): string {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (first === 0xfe && second === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
