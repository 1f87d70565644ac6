'use client';

export default function ErrorPage({ reset }: { readonly reset: () => void }) {
  return (
    <div className="column" role="alert">
      <h1>This page broke</h1>
      <p>The fault is ours, not yours. Try again. If it breaks again, go back to the start.</p>
      <p>
        <button type="button" className="button" onClick={reset}>
          Try again
        </button>
      </p>
    </div>
  );
}
