'use client';

import { useState } from 'react';
import { TextField } from '../ui/fields';
import { PostForm } from '../ui/post-form';
import { isQrPath, QrCode, type QrPath } from './qr-code';
import styles from './second-step.module.css';

interface Made {
  readonly qr: QrPath;
  readonly key: string;
  readonly codes: readonly string[];
}

/** Sets the second step up: password, key for the phone, first code, and then the recovery codes, which are shown only now. */
export function SecondStepSetUp() {
  const [made, setMade] = useState<Made>();
  const [isOn, setIsOn] = useState(false);
  if (!made) {
    return (
      <PostForm
        action="/api/account/second-step/begin"
        then="stay"
        send="Set up the second step"
        name="Set up the second step"
        onAnswer={({ qr, key, codes }) => {
          if (!isQrPath(qr) || typeof key !== 'string' || !Array.isArray(codes)) return false;
          setMade({ qr, key, codes: codes.map(String) });
          return true;
        }}
        plain
      >
        <TextField name="password" label="Your password" kind="password" fills="current-password" />
      </PostForm>
    );
  }
  if (isOn) return <RecoveryCodes codes={made.codes} done="The second step is on." />;
  return (
    <section className={styles.card} aria-label="Set up the second step" tabIndex={-1} ref={focusOn}>
      <p>Scan this with the app, or type the key into it.</p>
      <QrCode qr={made.qr} label="QR code of the key for the app" />
      <p className={styles.key}>{made.key}</p>
      <PostForm
        action="/api/account/second-step/confirm"
        then="stay"
        send="Turn it on"
        name="First code"
        onAnswer={() => setIsOn(true)}
      >
        <TextField
          name="code"
          label="Code from the app"
          help="The six digits that it shows now. You will be signed out on all other devices."
          fills="one-time-code"
          digits
        />
      </PostForm>
    </section>
  );
}

/** Ten others in the place of those that were used or lost. */
export function NewRecoveryCodes() {
  const [codes, setCodes] = useState<readonly string[]>();
  if (codes) return <RecoveryCodes codes={codes} done="The old codes no longer work." />;
  return (
    <PostForm
      action="/api/account/second-step/new-codes"
      then="stay"
      send="Make new recovery codes"
      name="New recovery codes"
      onAnswer={({ codes: made }) => {
        if (!Array.isArray(made)) return false;
        setCodes(made.map(String));
        return true;
      }}
      plain
    >
      <p>You get ten. The codes you have now stop working.</p>
      <TextField name="password" label="Your password" kind="password" fills="current-password" />
    </PostForm>
  );
}

function RecoveryCodes({ codes, done }: { readonly codes: readonly string[]; readonly done: string }) {
  return (
    <section className={styles.card} aria-label="Recovery codes" tabIndex={-1} ref={focusOn}>
      <p>
        <strong>{done}</strong> These are your recovery codes. Each signs you in once without the phone. Print
        them or write them down, and keep them away from the phone. They are not shown again.
      </p>
      <ul className={styles.codes}>
        {codes.map((code) => (
          <li key={code}>{code}</li>
        ))}
      </ul>
      <a className="button" href="/desk/account">
        I have saved them
      </a>
    </section>
  );
}

/** What has just come in the place of a form: the form had the focus. */
function focusOn(section: HTMLElement | null): void {
  section?.focus();
}
