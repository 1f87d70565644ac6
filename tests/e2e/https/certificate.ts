import { generateKeyPairSync, sign } from 'node:crypto';

/** DER (X.690): a tag, the length, the contents. */
function der(tag: number, ...contents: readonly Uint8Array[]): Buffer {
  const body = Buffer.concat(contents);
  const length =
    body.length < 128
      ? [body.length]
      : body.length < 256
        ? [0x81, body.length]
        : [0x82, body.length >> 8, body.length & 255];
  return Buffer.concat([Buffer.from([tag, ...length]), body]);
}

const INTEGER = 0x02;
const BITS = 0x03;
const OCTETS = 0x04;
const OID = 0x06;
const TEXT = 0x0c;
const UTC_TIME = 0x17;
const SEQUENCE = 0x30;
const SET = 0x31;

/** RFC 5758: ECDSA with SHA-256, 1.2.840.10045.4.3.2. */
const ECDSA_SHA256 = der(SEQUENCE, der(OID, Buffer.from('2a8648ce3d040302', 'hex')));
/** RFC 5280: common name, 2.5.4.3; subject's other name, 2.5.29.17. */
const COMMON_NAME = Buffer.from('550403', 'hex');
const OTHER_NAME = Buffer.from('551d11', 'hex');
const DAY_MS = 86_400_000;

/** A key and a certificate for 127.0.0.1 that it has signed itself, good from yesterday until tomorrow (RFC 5280). */
export function makeCertificate(): { readonly key: string; readonly cert: string } {
  const { privateKey, publicKey } = generateKeyPairSync('ec', { namedCurve: 'P-256' });
  const name = der(
    SEQUENCE,
    der(SET, der(SEQUENCE, der(OID, COMMON_NAME), der(TEXT, Buffer.from('wall test')))),
  );
  const moment = (ms: number) =>
    der(UTC_TIME, Buffer.from(`${new Date(ms).toISOString().slice(2, 19).replaceAll(/[-:T]/g, '')}Z`));
  const addresses = der(SEQUENCE, der(0x87, Buffer.from([127, 0, 0, 1])));
  const signed = der(
    SEQUENCE,
    der(0xa0, der(INTEGER, Buffer.from([2]))),
    der(INTEGER, Buffer.from([1])),
    ECDSA_SHA256,
    name,
    der(SEQUENCE, moment(Date.now() - DAY_MS), moment(Date.now() + DAY_MS)),
    name,
    publicKey.export({ type: 'spki', format: 'der' }),
    der(0xa3, der(SEQUENCE, der(SEQUENCE, der(OID, OTHER_NAME), der(OCTETS, addresses)))),
  );
  const signature = der(BITS, Buffer.from([0]), sign('sha256', signed, privateKey));
  const whole = der(SEQUENCE, signed, ECDSA_SHA256, signature).toString('base64');
  return {
    key: privateKey.export({ type: 'pkcs8', format: 'pem' }).toString(),
    cert: `-----BEGIN CERTIFICATE-----\n${whole.match(/.{1,64}/g)?.join('\n')}\n-----END CERTIFICATE-----\n`,
  };
}
