import type { Metadata } from 'next';
import { Comparison } from '../../components/limits/comparison';
import { HOW_SURE_WORDS } from '../../components/limits/limit-words';
import { LimitsCaution } from '../../components/limits/limits-caution';
import { RuleSetLinks } from '../../components/limits/rule-set-links';
import styles from './limits.module.css';

export const dynamic = 'error';

export const metadata: Metadata = {
  title: 'Limits',
  description: 'How far brickwork and veneer may be out, by published rules, with the source of each figure.',
};

export default function LimitsPage() {
  return (
    <div className={styles.wide}>
      <h1>Limits</h1>
      <p className="column">
        A fault is something beyond its limit. Here are the limits that the drawn walls are held to, and many
        more. A value exactly at its limit passes.
      </p>
      <LimitsCaution />
      <h2>Choose your rules</h2>
      <RuleSetLinks />
      <h2>How sure each figure is</h2>
      <ul>
        {Object.values(HOW_SURE_WORDS).map((words) => (
          <li key={words}>{words}.</li>
        ))}
      </ul>
      <p className="column">
        Every limit of a rule set says which of these it is, and names its source and clause. Below: what the
        checks ask for, side by side. A dashed frame is good practice, used because that code is silent.
      </p>
      <Comparison />
    </div>
  );
}
