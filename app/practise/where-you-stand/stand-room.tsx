'use client';

import Link from 'next/link';
import { useMemo, useState } from 'react';
import { useKeptRecord } from '../../../components/record/use-kept-record';
import { PrintButton } from '../../../components/ui/print-button';
import { standingOf } from '../../../lib/learning/standing';
import { ENOUGH_WALLS, whereYouStand } from '../../../lib/learning/where-you-stand';
import { CurveBlock } from './curve-block';
import { FamiliesBlock } from './families-block';
import { MissesBlock } from './misses-block';
import styles from './stand.module.css';
import { SureBlock } from './sure-block';

/** What the record on this device says of whoever practised here. */
export function StandRoom() {
  const { read } = useKeptRecord();
  const [now] = useState(() => Date.now());
  const stand = useMemo(
    () => (read === null || read === 'none' ? null : whereYouStand(read.record, standingOf(read.record))),
    [read],
  );
  if (read === null) return <p role="status">One moment …</p>;
  if (stand === null || stand.walls === 0) {
    return (
      <div className="column">
        <p>
          {stand === null
            ? 'This browser keeps nothing for this site, so there is nothing to tell. You can practise all the same.'
            : 'There is nothing to tell yet. Once you have read walls on your own, this page shows what you read well, what you miss, how sure you are when you are right, and what is due to come back.'}
        </p>
        <p>
          <Link className="button" href="/practise/today" prefetch={false}>
            Begin with ten minutes
          </Link>
        </p>
      </div>
    );
  }
  const { walls } = stand;
  return (
    <div className={styles.sheet}>
      <p className="column">
        {walls === 1 ? 'One wall' : `${walls.toLocaleString('en')} walls`} read on your own, each counted the
        first time.
        {walls < ENOUGH_WALLS &&
          ` Chance still has a large part in figures from fewer than ${ENOUGH_WALLS} walls, so do not make much of them.`}{' '}
        All of it is worked out from the record on this device, and none of it is sent anywhere.
      </p>
      <CurveBlock curve={stand.curve} />
      <FamiliesBlock families={stand.families} now={now} />
      <div className={styles.beside}>
        <MissesBlock misses={stand.misses} misnamed={stand.misnamed} />
        <SureBlock sure={stand.sure} />
      </div>
      <p className={styles.print}>
        <PrintButton />
      </p>
    </div>
  );
}
