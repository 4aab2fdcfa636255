/** The keyed hash of the seals against the published test cases: RFC 4231, section 4 (cases 1 to 7, SHA-256). */
import { describe, expect, it } from 'vitest';
import { hmacSha256 } from '../../src/quiz/seals.js';

const bytes = (byte: number, count: number): string => byte.toString(16).padStart(2, '0').repeat(count);
const hex = (text: string): string => Buffer.from(text, 'ascii').toString('hex');

const CASES: readonly (readonly [name: string, keyHex: string, dataHex: string, expected: string])[] = [
  [
    '4.2',
    bytes(0x0b, 20),
    hex('Hi There'),
    'b0344c61d8db38535ca8afceaf0bf12b881dc200c9833da726e9376c2e32cff7',
  ],
  [
    '4.3',
    hex('Jefe'),
    hex('what do ya want for nothing?'),
    '5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843',
  ],
  [
    '4.4',
    bytes(0xaa, 20),
    bytes(0xdd, 50),
    '773ea91e36800e46854db8ebd09181a72959098b3ef8c122d9635514ced565fe',
  ],
  [
    '4.5',
    Array.from({ length: 25 }, (_, index) => bytes(index + 1, 1)).join(''),
    bytes(0xcd, 50),
    '82558a389a443c0ea4cc819899f2083a85f0faa3e578f8077a2e3ff46729665b',
  ],
  // Cut to 128 bits, as the seals are.
  ['4.6', bytes(0x0c, 20), hex('Test With Truncation'), 'a3b6167473100ee06e0c796c2955552b'],
  [
    '4.7',
    bytes(0xaa, 131),
    hex('Test Using Larger Than Block-Size Key - Hash Key First'),
    '60e431591ee0b67f0d8a26aacbf5b77f8e0bc6213728c5140546040f0ee37f54',
  ],
  [
    '4.8',
    bytes(0xaa, 131),
    hex(
      'This is a test using a larger than block-size key and a larger than block-size data. The key needs to be hashed before being used by the HMAC algorithm.',
    ),
    '9b09ffa71b942fcb27635fbcd5b0e944bfdc63644f0713938a7f51535c3a35e2',
  ],
];

describe('HMAC-SHA256 against RFC 4231', () => {
  it.each(CASES)('section %s', (_name, key, data, expected) => {
    expect(hmacSha256(key, Buffer.from(data, 'hex')).slice(0, expected.length)).toBe(expected);
  });
});
