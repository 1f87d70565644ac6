import type { LengthSystem } from '../../lib/units';
import type { Measured } from '../../lib/visit/grade-visit';
import { type ReportCard, reportOf, type Urgency } from '../../lib/visit/report';
import { PrintButton } from '../ui/print-button';
import { shownWords } from './shown-words';
import styles from './visit.module.css';

const URGENCY_WORDS: Readonly<Record<Urgency, string>> = {
  now: 'Now: keep everybody away',
  soon: 'Soon: by a day that the engineer sets',
  'in its turn': 'In its turn: before the next winter',
};

/** The report of a visit, one card a finding, to be printed for the owner and for whoever is licensed to judge. */
export function VisitReport(props: {
  readonly measured: Measured;
  /** The code of the visit. */
  readonly code: string;
  readonly nameOf: (part: string) => string;
  readonly system: LengthSystem;
}) {
  const { measured, code, nameOf, system } = props;
  return (
    <section aria-labelledby="report-heading" className={`stack ${styles.report}`}>
      <h2 id="report-heading">The report</h2>
      <p>
        Drawn wall {code}: an exercise. A drawing is no survey, and a report of a real wall is signed by
        somebody licensed for it.
      </p>
      <ol className="cards">
        {reportOf(measured).map((card) => (
          <li key={`${card.shown.condition} ${card.shown.parts[0]}`}>
            <Card card={card} seen={shownWords(card.shown, nameOf, system)} />
          </li>
        ))}
      </ol>
      <p className={styles.screen}>
        <PrintButton />
      </p>
    </section>
  );
}

function Card({ card, seen }: { readonly card: ReportCard; readonly seen: string }) {
  const { urgency, requirement, consequence, hazard, act, who, unseen } = card;
  const lines = [
    ['What should be', requirement],
    ['What comes of it', consequence],
    ['Hazard', hazard],
    ['What to do', act],
    ['Who', who],
    ['Not seen', unseen],
  ] as const;
  return (
    <>
      <p>
        <strong>{URGENCY_WORDS[urgency]}</strong>
      </p>
      <p>{seen}</p>
      <dl>
        {lines.map(([term, words]) => (
          <div key={term}>
            <dt>{term}</dt>
            <dd>{words}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}
