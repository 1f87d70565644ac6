import { CLAIMED_SHARE, calibrationOf, type SureAnswer } from '../../../lib/marking/confidence';
import type { Sure } from '../../../lib/marking/mark';
import { shareWithLimits } from '../../../lib/marking/wilson';
import { SharePlot } from '../../desk/plots/share-plot';
import styles from './stand.module.css';

const WORDS: Readonly<Record<Sure, string>> = { 1: 'Unsure', 2: 'Fairly sure', 3: 'Certain' };
/** Closer than this to what is claimed is close enough. */
const CLOSE = 0.1;

/** How often marks were right, by how sure the reader was of them. */
export function SureBlock({ sure }: { readonly sure: readonly SureAnswer[] }) {
  return (
    <section>
      <h2>How sure, and how right</h2>
      {sure.length === 0 ? <p>No mark says yet how sure you were.</p> : <Levels sure={sure} />}
    </section>
  );
}

function Levels({ sure }: { readonly sure: readonly SureAnswer[] }) {
  const { levels, overconfidence } = calibrationOf(sure);
  return (
    <>
      <p>
        {overconfidence > CLOSE
          ? 'You are surer than you are right. Measure before you are certain.'
          : overconfidence < -CLOSE
            ? 'You are right more often than you think.'
            : 'You are about as sure as you are right.'}
      </p>
      <dl className={styles.bars}>
        {levels.map(({ sure: level, answers, right }) => (
          <div key={level}>
            <dt>
              {WORDS[level]}{' '}
              <span className="fine">(honest near {Math.round(100 * CLAIMED_SHARE[level])} %)</span>
            </dt>
            <dd>
              {answers === 0 ? 'no marks yet' : `${right} of ${answers} right`}
              {answers > 0 && <SharePlot limits={shareWithLimits(right, answers)} />}
            </dd>
          </div>
        ))}
      </dl>
    </>
  );
}
