import { ChoiceBar } from '../ui/choice-bar';

const ANSWERS = [
  { value: 'unit', label: 'The unit I pick' },
  { value: 'none', label: 'None: nothing hangs loose' },
] as const;

/** Which unit may come down next: one that is picked on the wall, or none. */
export function SayNext(props: {
  readonly said: 'unit' | 'none' | null;
  /** The unit said to come next; null before one is picked. */
  readonly name: string | null;
  /** The unit picked on the wall now. */
  readonly picked: string | null;
  readonly onSay: (said: 'unit' | 'none') => void;
  readonly onTake: () => void;
}) {
  const { said, name, picked, onSay, onTake } = props;
  return (
    <section aria-labelledby="next-heading" className="stack tight">
      <h3 id="next-heading">Which unit may come down next?</h3>
      <ChoiceBar legend="Next is" options={ANSWERS} value={said} onChoose={onSay} />
      {said === 'unit' && (
        <p>
          {name ? (
            <>
              You say: <strong>{name}</strong>.{' '}
            </>
          ) : (
            'Pick it on the wall. '
          )}
          {picked !== null && picked !== name && (
            <button type="button" className="button button-plain" onClick={onTake}>
              Say it is {picked}
            </button>
          )}
        </p>
      )}
    </section>
  );
}
