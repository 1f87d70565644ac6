'use client';

import { MixingTickets } from '../../../../../components/practice/mixing-tickets';
import type { Batch } from '../../../../../lib/wall/model';

export function PrintButton() {
  return (
    <button type="button" className="button" onClick={() => window.print()}>
      Print
    </button>
  );
}

/** The mixing tickets as on a sheet: open, and nothing to pick. */
export function PaperTickets({ batches }: { readonly batches: readonly Batch[] }) {
  return <MixingTickets batches={batches} open onToggle={() => undefined} picked={null} onPick={null} />;
}
