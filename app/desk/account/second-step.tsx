import { NewRecoveryCodes, SecondStepSetUp } from '../../../components/desk/second-step';
import { Disclosure } from '../../../components/ui/disclosure';
import { TextField } from '../../../components/ui/fields';
import { PostForm } from '../../../components/ui/post-form';

/** The second step of signing in, and what a lost phone means. */
export function SecondStep(props: {
  /** How many recovery codes are left; undefined while the second step is off. */
  readonly codesLeft: number | undefined;
  readonly isOwner: boolean;
}) {
  const { codesLeft, isOwner } = props;
  return (
    <section aria-labelledby="second-step">
      <h2 id="second-step">Second step when you sign in</h2>
      {codesLeft === undefined ? (
        <>
          <p>
            With it, whoever learns your password still cannot get in: after the password the site asks for
            six digits that an app on your phone changes every 30 seconds. Any app for sign-in codes (TOTP)
            will do, and it needs no network.
          </p>
          <LostPhone isOwner={isOwner} />
          <SecondStepSetUp />
        </>
      ) : (
        <>
          <p>
            It is on. You have {codesLeft === 1 ? '1 recovery code' : `${codesLeft} recovery codes`} left. For
            a new phone, turn it off and set it up again.
          </p>
          <LostPhone isOwner={isOwner} />
          <Disclosure title="New recovery codes" now="" names={[]}>
            <NewRecoveryCodes />
          </Disclosure>
          <Disclosure title="Turn it off" now="" names={[]}>
            <PostForm
              action="/api/account/second-step/turn-off"
              send="Turn off the second step"
              name="Turn off the second step"
              plain
            >
              <TextField name="password" label="Your password" kind="password" fills="current-password" />
            </PostForm>
          </Disclosure>
        </>
      )}
    </section>
  );
}

function LostPhone({ isOwner }: { readonly isOwner: boolean }) {
  return (
    <p>
      <strong>If you lose the phone,</strong> sign in with a recovery code. You get ten of them when you set
      this up, and each works once. If they are gone too,{' '}
      {isOwner
        ? 'whoever runs the server makes you a new owner link, which turns the second step off.'
        : 'the owner of this site can turn the second step off for you.'}
    </p>
  );
}
