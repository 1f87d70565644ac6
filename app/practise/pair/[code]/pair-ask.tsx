'use client';

import { NameFault } from '../../../../components/drills/name-fault';
import styles from '../../../../components/drills/pair/pair.module.css';
import { ChoiceBar } from '../../../../components/ui/choice-bar';
import { LoadingNotice } from '../../../walls/loading-notice';
import type { usePair } from './use-pair';

const SIDES = [
  { value: '1', label: 'Wall 1' },
  { value: '2', label: 'Wall 2' },
] as const;

/** What is asked: which wall is spoiled, where, and how. */
export function PairAsk({
  pair,
  lifted,
}: {
  readonly pair: ReturnType<typeof usePair>;
  /** The unit lifted in this look, which can then be picked. */
  readonly lifted: string | null;
}) {
  const { side, pickedPart, picked, marks, pointed, faults, loading } = pair;
  const faultName = (fault: string) => faults.loaded?.find(({ id }) => id === fault)?.name ?? fault;
  return (
    <section aria-labelledby="ask-heading" className={`stack ${styles.asked}`}>
      <h2 id="ask-heading">What differs?</h2>
      <ChoiceBar
        legend="The spoiled one is"
        options={SIDES}
        value={side === null ? null : side === 1 ? '1' : '2'}
        onChoose={(value) => pair.pointTo(value === '1' ? 1 : 2)}
      />
      {side === null && <p>Look at both walls in every look first. Then say which one is spoiled.</p>}
      {side !== null && !pickedPart && (
        <p>
          Now pick on wall {side} each place where it differs, and say what is wrong there.
          {lifted !== null && (
            <>
              {' '}
              <button type="button" className="button button-plain" onClick={() => pair.pick(lifted, null)}>
                Pick the lifted unit
              </button>
            </>
          )}
        </p>
      )}
      {pickedPart &&
        (faults.loaded ? (
          <NameFault key={picked} picked={pickedPart} faults={faults.loaded} onMark={pair.mark} />
        ) : (
          <LoadingNotice of={[faults]} />
        ))}
      {marks.length > 0 && (
        <ol className={`stack tight ${styles.marks}`} aria-label="Your marks">
          {marks.map(({ part, fault }, index) => (
            <li key={`${part} ${fault}`}>
              <span>
                {index + 1}. {faultName(fault)}. {pointed?.nameOf(part)}
              </span>
              <button
                type="button"
                aria-label={`Take mark ${index + 1} away`}
                onClick={() => pair.remove(index)}
              >
                Take away
              </button>
            </li>
          ))}
        </ol>
      )}
      {side !== null && (
        <p>
          <button type="button" className="button" onClick={pair.tell}>
            {marks.length === 0 ? 'Tell me what is different' : 'I am done: measure both walls'}
          </button>
        </p>
      )}
      {loading && <LoadingNotice of={[loading]} />}
    </section>
  );
}
