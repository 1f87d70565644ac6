'use client';

import { type ReactNode, useRef, useState } from 'react';
import { hasFields } from '../../lib/json/read-json';
import { PostForm } from '../ui/post-form';
import styles from './make-link.module.css';
import { isQrPath, QrCode, type QrPath } from './qr-code';

interface Made {
  readonly name: string;
  readonly days: number;
  readonly link: string;
  readonly qr: QrPath;
}

/** A form whose answer is a link for somebody. The link is shown once, to copy or to print; the site keeps only its hash. */
export function MakeLink(props: {
  readonly action: string;
  readonly send: string;
  readonly also?: Readonly<Record<string, unknown>>;
  readonly plain?: boolean;
  readonly name?: string;
  readonly children?: ReactNode;
}) {
  const [made, setMade] = useState<Made>();
  return (
    <>
      <PostForm
        {...props}
        done="The link is below."
        onAnswer={(answer) => {
          const isMade = hasFields(answer, { name: 'string', days: 'number', link: 'string' });
          if (!isMade || !isQrPath(answer.qr)) return false;
          setMade({ ...answer, qr: answer.qr });
          return true;
        }}
      />
      {made && <LinkCard {...made} />}
    </>
  );
}

function LinkCard({ name, days, link, qr }: Made) {
  const [copied, setCopied] = useState(false);
  const card = useRef<HTMLElement>(null);
  /** The card alone: the page around it names other people. */
  const print = () => {
    const { current } = card;
    if (!current) return;
    current.dataset.printing = 'yes';
    window.addEventListener('afterprint', () => delete current.dataset.printing, { once: true });
    window.print();
  };
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(link);
      setCopied(true);
    } catch {
      setCopied(false); // over plain http a browser may refuse: the link can still be marked by hand
    }
  };
  return (
    <section ref={card} className={styles.card} aria-label={`Link for ${name}`}>
      <p>
        For <strong>{name}</strong>. Give it by hand, or send it yourself. It works once, for{' '}
        {days === 1 ? '24 hours' : `${days} days`}. You see it only now.
      </p>
      <p className={styles.link}>{link}</p>
      <QrCode qr={qr} label={`QR code of the link for ${name}`} />
      <p className={styles.buttons}>
        <button type="button" className="button button-plain" onClick={copy}>
          Copy the link
        </button>{' '}
        <button type="button" className="button button-plain" onClick={print}>
          Print it
        </button>
      </p>
      <p role="status">{copied ? 'Copied.' : ''}</p>
    </section>
  );
}
