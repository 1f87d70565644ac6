'use client';

import { type ChangeEvent, useRef, useState } from 'react';
import { useKeptRecord } from '../../../components/record/use-kept-record';
import type { AttemptKind } from '../../../lib/learning/attempt';
import { formatRecord, type PracticeRecord, parseRecord } from '../../../lib/learning/record';

const KINDS: readonly (readonly [AttemptKind, one: string, many: string])[] = [
  ['full wall', 'full wall', 'full walls'],
  ['set work', 'wall of set work', 'walls of set work'],
  ['pair', 'pair', 'pairs'],
  ['guided wall', 'guided wall', 'guided walls'],
  ['quick look', 'round of quick looks', 'rounds of quick looks'],
  ['questions', 'set of questions', 'sets of questions'],
  ['build', 'limit crossed on a wall you built', 'limits crossed on walls you built'],
];

/** What the device keeps: how much, and what one can do with it. */
export function RecordRoom() {
  const { read, change } = useKeptRecord();
  const [said, say] = useState('');
  const [asked, ask] = useState(false);
  const file = useRef<HTMLInputElement>(null);
  if (read === null) return <p role="status">One moment …</p>;
  if (read === 'none') {
    return (
      <p role="alert">
        This browser keeps nothing for this site: it may be a private window, or its disk is full. You can
        practise all the same, and nothing is kept of it.
      </p>
    );
  }
  const { record, later } = read;
  const takeAway = () => {
    const address = URL.createObjectURL(
      new Blob([formatRecord(record, later)], { type: 'application/json' }),
    );
    const link = document.createElement('a');
    link.href = address;
    link.download = 'practice-record.json';
    link.click();
    URL.revokeObjectURL(address);
  };
  const bringBack = async (event: ChangeEvent<HTMLInputElement>) => {
    const [chosen] = event.target.files ?? [];
    if (chosen === undefined) return;
    const brought = parseRecord(await chosen.text());
    event.target.value = '';
    if (brought.kind === 'refused') return say(`This file was not taken in: ${brought.why}.`);
    const known = new Set(record.map(({ id }) => id));
    const fresh = brought.attempts.filter(({ id }) => !known.has(id)).length;
    const isIn = await change((kept) => kept.add(brought.attempts, brought.later));
    say(
      isIn
        ? `${fresh} of ${brought.attempts.length} attempts in the file were new, and are in your record now.`
        : 'The file was not taken in: this device has no room for it. Your record is as it was.',
    );
  };
  const deleteAll = async () => {
    const isGone = await change((kept) => kept.clear());
    ask(false);
    say(isGone ? 'Your practice record is deleted.' : 'It could not be deleted. Your record is as it was.');
  };
  return (
    <>
      <h2>What is in it</h2>
      {record.length === 0 ? <p>Nothing yet.</p> : <Contents record={record} />}
      {later.length > 0 && (
        <p>{later.length} more were written by a later version of this site. They are kept as they are.</p>
      )}
      <h2>Take it away, bring it back</h2>
      <p>
        Take your record to another device as a file, and bring it in there. What both have is there once. The
        file follows a <a href="/practise/record/schema/practice-record-1.json">published schema</a>.
      </p>
      <p className="row">
        <button type="button" className="button" onClick={takeAway}>
          Download my record
        </button>
        <button type="button" className="button button-plain" onClick={() => file.current?.click()}>
          Bring a record in
        </button>
        <input
          ref={file}
          type="file"
          hidden
          aria-label="A practice record"
          accept="application/json,.json"
          onChange={bringBack}
        />
      </p>
      <p role="status">{said}</p>
      <h2>Delete it</h2>
      <p className="row">
        {asked ? (
          <>
            <button type="button" className="button" onClick={deleteAll}>
              Yes, delete it for good
            </button>
            <button type="button" className="button button-plain" onClick={() => ask(false)}>
              Keep it
            </button>
          </>
        ) : (
          <button type="button" className="button button-plain" onClick={() => ask(true)}>
            Delete my record
          </button>
        )}
      </p>
    </>
  );
}

function Contents({ record }: { readonly record: PracticeRecord }) {
  return (
    <ul>
      {KINDS.flatMap(([kind, one, many]) => {
        const count = record.filter((attempt) => attempt.kind === kind).length;
        return count === 0 ? [] : [<li key={kind}>{`${count} ${count === 1 ? one : many}`}</li>];
      })}
    </ul>
  );
}
