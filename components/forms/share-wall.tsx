'use client';

import { useState } from 'react';
import styles from './share-wall.module.css';

/** For a group: the address of this page to hand on, and the page on paper. */
export function ShareWall() {
  const [notice, setNotice] = useState<string | null>(null);
  const copy = async () => {
    const address = window.location.href;
    try {
      await navigator.clipboard.writeText(address);
      setNotice('The link is copied.');
    } catch {
      // No clipboard here, or it is forbidden: the address can still be copied by hand.
      setNotice(address);
    }
  };
  return (
    <div className={styles.share}>
      <button type="button" onClick={copy}>
        Copy link
      </button>
      <button type="button" onClick={() => window.print()}>
        Print
      </button>
      <span role="status">{notice}</span>
    </div>
  );
}
