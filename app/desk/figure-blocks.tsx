import { type Swap, swapWords } from '../../lib/classes/statistics/confusion';
import type { CertainButWrong, Figures } from '../../lib/classes/statistics/learner-figures';
import { STEPS, type Step } from '../../lib/classes/statistics/wall-answer';
import { CLAIMED_SHARE } from '../../lib/marking/confidence';
import { ENOUGH_WALLS } from '../../lib/marking/sound-or-faulty';
import { shareWithLimits } from '../../lib/marking/wilson';
import { faultName } from '../../lib/wall-page/fault-choices';
import { percentText, shareText, signedText, times } from './book-numbers';
import styles from './mark-book.module.css';
import { SharePlot } from './plots/share-plot';

const STEP_WORDS: Readonly<Record<Step, string>> = {
  found: 'Found',
  named: 'Named, of those found',
  measured: 'Measured',
  judged: 'Right kind of limit',
  acted: 'Right remedy',
};

/** Found, named, measured, judged, acted: each with its share and limits. A step nobody was asked for says so. */
export function StepsTable({ figures: { steps } }: { readonly figures: Figures }) {
  return (
    <table className={styles.steps}>
      <caption className="visually-hidden">Step by step</caption>
      <thead className="visually-hidden">
        <tr>
          <th scope="col">Step</th>
          <th scope="col">Right, with 95 % limits</th>
          <th scope="col">Drawn</th>
        </tr>
      </thead>
      <tbody>
        {STEPS.map((step) => {
          const tally = steps[step];
          const limits = tally && shareWithLimits(tally.got, tally.of);
          return (
            <tr key={step}>
              <th scope="row">{STEP_WORDS[step]}</th>
              <td>{tally && limits ? shareText(tally.got, tally.of, limits) : 'not asked'}</td>
              <td>{limits && <SharePlot limits={limits} />}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

/** "Sound or faulty?": plain shares, and d' only from enough walls. */
export function SoundOrFaultyBlock({
  figures: { soundOrFaulty, verdicts, kappa },
}: {
  readonly figures: Figures;
}) {
  if (soundOrFaulty === null) {
    return <p>To say how well sound and faulty walls are told apart, it takes at least one of each.</p>;
  }
  const { hits, misses, falseAlarms, soundCalls } = verdicts;
  const { hitShare, falseAlarmShare, enough, dPrime, standardError, criterion } = soundOrFaulty;
  return (
    <ul>
      <li>Faulty walls called faulty: {shareText(hits, hits + misses, hitShare)}.</li>
      <li>Sound walls called faulty: {shareText(falseAlarms, falseAlarms + soundCalls, falseAlarmShare)}.</li>
      <li>
        {enough
          ? `d′ ${signedText(dPrime, 2)}, standard error ${standardError.toFixed(2)}: how far apart sound and faulty walls look. 0 is guessing. c ${signedText(criterion, 2)}: ${criterionWords(criterion)}`
          : `d′ is shown from ${ENOUGH_WALLS} sound and ${ENOUGH_WALLS} faulty walls. So far: ${soundCalls + falseAlarms} and ${hits + misses}.`}
      </li>
      {kappa !== null && (
        <li>
          Agreement with the key, Cohen’s kappa: {signedText(kappa, 2)} (1 is full agreement, 0 is chance).
          Read it with the two shares above: it does not say which mistake costs more.
        </li>
      )}
    </ul>
  );
}

function criterionWords(criterion: number): string {
  if (Math.abs(criterion) < 0.2) return 'neither too careful nor too quick to call a fault.';
  return criterion > 0 ? 'careful: calls a fault only when sure, and misses some.' : 'quick to call a fault.';
}

/** What was said to be sure against what came of it. */
export function ConfidenceBlock({ figures: { calibration } }: { readonly figures: Figures }) {
  if (calibration === null) return <p>No marks yet.</p>;
  const { levels, brier, overconfidence } = calibration;
  const words = { 1: 'Unsure', 2: 'Fairly sure', 3: 'Certain' } as const;
  return (
    <>
      <ul>
        {levels.map(({ sure, answers, right }) => (
          <li key={sure}>
            {words[sure]}: {answers === 0 ? 'never said' : `${right} of ${answers} right`} (such answers ought
            to be right {percentText(CLAIMED_SHARE[sure])} % of the time).
          </li>
        ))}
      </ul>
      <p>
        {Math.abs(overconfidence) < 0.05
          ? 'On the whole the certainty fits.'
          : overconfidence > 0
            ? `On the whole too sure, by ${percentText(overconfidence)} points.`
            : `On the whole too modest, by ${percentText(-overconfidence)} points.`}{' '}
        Brier score {brier.toFixed(2)} (0 is perfect, 0.25 is a coin).
      </p>
    </>
  );
}

/** Marks made with certainty that were wrong: talk about these first, they are put right best. */
export function CertainList({
  wrong,
  nameOf,
}: {
  readonly wrong: readonly CertainButWrong[];
  /** Where it was, in words. */
  readonly nameOf: (at: CertainButWrong) => string;
}) {
  if (wrong.length === 0) return <p>Nothing was certain and wrong.</p>;
  const shown = wrong.slice(0, 12);
  return (
    <>
      <ul>
        {shown.map((at) => (
          <li key={`${at.learner}${at.work}${at.place}${at.said}${at.truth}`}>
            {nameOf(at)}: said “{faultName(at.said)}”,{' '}
            {at.truth === null ? 'and nothing was wrong there.' : `and it was “${faultName(at.truth)}”.`}
          </li>
        ))}
      </ul>
      {wrong.length > shown.length && <p>And {times(wrong.length - shown.length, 'more', 'more')}.</p>}
    </>
  );
}

/** Faults that were called by another name. */
export function SwapList({ swaps }: { readonly swaps: readonly Swap[] }) {
  if (swaps.length === 0) return <p>No fault was called by another name.</p>;
  return (
    <ul>
      {swaps.map((swap) => (
        <li key={`${swap.fault}${swap.saidToBe}`}>{swapWords(swap, faultName)}</li>
      ))}
    </ul>
  );
}
