import styles from './lift-steps.module.css';

const STEPS = [
  { label: '← Unit before', along: 'course', by: -1 },
  { label: 'Next unit →', along: 'course', by: 1 },
  { label: '↑ Course up', along: 'wall', by: 1 },
  { label: '↓ Course down', along: 'wall', by: -1 },
] as const;

/** The way from one lifted unit to another. */
export function LiftSteps(props: {
  readonly name: string;
  readonly onStep: (along: 'course' | 'wall', by: 1 | -1) => void;
}) {
  const { name, onStep } = props;
  return (
    <div className={`bar ${styles.steps}`}>
      <p role="status">
        Lifted: <strong>{name}</strong>
      </p>
      {STEPS.map(({ label, along, by }) => (
        <button key={label} type="button" onClick={() => onStep(along, by)}>
          {label}
        </button>
      ))}
    </div>
  );
}
