import Link from 'next/link';

/** A panel with the warning sign and a word: colour only helps. */
export function Caution(props: {
  readonly word?: string;
  readonly lines: readonly string[];
  /** Leads on to what to do when masonry looks loose. */
  readonly toSafety?: boolean;
}) {
  const { word = 'Take care', lines, toSafety = false } = props;
  return (
    <div className="caution" role="note">
      <p className="caution-word">
        <span aria-hidden="true">⚠ </span>
        {word}
      </p>
      {lines.join(' ')}
      {toSafety && (
        <>
          {' '}
          <Link href="/safety">If masonry looks loose</Link>
        </>
      )}
    </div>
  );
}
