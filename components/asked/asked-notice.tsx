/** In place of what the site was asked for. */
export function AskedNotice(props: {
  /** 'This look', 'This reading'. */
  readonly what: string;
  readonly failed: boolean;
  readonly onAgain: () => void;
}) {
  const { what, failed, onAgain } = props;
  return (
    <p role="status">
      {failed ? `${what} did not arrive. Your marks are kept. ` : 'One moment …'}
      {failed && (
        <button type="button" className="button button-plain" onClick={onAgain}>
          Try again
        </button>
      )}
    </p>
  );
}
