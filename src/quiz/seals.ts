/**
 * Seals: what shows that a file was changed after the program wrote it.
 *
 * Each event of a sitting carries a seal over the seal before it and over the event: 32 hex digits for what was done and 32 for
 * when, so that an edited time and an edited answer are told apart. The first follows on the digest of the handout. One more
 * seal covers the last of them and their number, so that a file cut at its end is seen. The key stands in the handout, which the
 * student has: a seal finds the hand that edits a file, not a program written to forge one.
 *
 * HMAC-SHA256 (RFC 2104, FIPS 198-1), cut to 128 bits, the least that RFC 2104 section 5 allows.
 */
import { createHmac } from 'node:crypto';
import { canonicalJson } from '../text/canonical-json.js';
import type { SittingEvent } from './events.js';
import { fromInstant } from './instant.js';

/** What a secret looks like: 256 bits. */
export const SECRET_SHAPE = /^[0-9a-f]{64}$/;

/** Hex digits of half a seal. */
const HALF = 32;

/** HMAC-SHA256 as 64 hex digits. @param keyHex the key, as hex */
export function hmacSha256(keyHex: string, data: string | Uint8Array): string {
  return createHmac('sha256', Buffer.from(keyHex, 'hex')).update(data).digest('hex');
}

function whatSeal(secret: string, before: string, { at: _at, ...what }: SittingEvent): string {
  return hmacSha256(secret, `what\n${before}\n${canonicalJson(what)}`).slice(0, HALF);
}

function timeSeal(secret: string, before: string, { at }: SittingEvent): string {
  return hmacSha256(secret, `time\n${before}\n${fromInstant(at)}`).slice(0, HALF);
}

/** The seal of an event. @param before seal of the event before it, or the digest of the handout */
function sealOf(secret: string, before: string, event: SittingEvent): string {
  return whatSeal(secret, before, event) + timeSeal(secret, before, event);
}

function endSeal(secret: string, seals: readonly string[]): string {
  return hmacSha256(secret, `end\n${seals.length}\n${seals.at(-1) ?? ''}`).slice(0, HALF);
}

/** Seals as a file holds them: one an event, empty where there is none, and the one over the end. */
export interface Seals {
  readonly each: readonly string[];
  readonly end?: string | undefined;
}

/** What is sealed. */
export interface Sealable {
  readonly handoutDigest: string;
  readonly events: readonly SittingEvent[];
  /** As the file had them, for the first events; those of events that came since are made when it is written. */
  readonly seals?: Seals | undefined;
}

/** The seals of a sitting to be written. What was read stays as it was read, sound or not: a break is never mended. */
export function sealAll(secret: string, { handoutDigest, events, seals }: Sealable): Seals {
  const each = [...(seals?.each ?? [])];
  for (const event of events.slice(each.length))
    each.push(sealOf(secret, each.at(-1) ?? handoutDigest, event));
  return { each, end: endSeal(secret, each) };
}

/** Whether the end of a file is the end that was written. */
export function isWholeAtEnd(secret: string, { seals }: Sealable): boolean {
  return seals === undefined || seals.end === endSeal(secret, seals.each);
}

/** `lost`: neither half fits, nor after any other event of the file. */
export type SealFault = 'what' | 'time' | 'moved' | 'lost' | 'unsealed';

/** What the seals of a sitting say. */
export interface SealReport {
  /** `unsealed`: there is not one seal; `foreign`: there are, and none fits. */
  readonly state: 'unsealed' | 'foreign' | 'changed' | 'whole';
  readonly faults: readonly { readonly event: SittingEvent; readonly fault: SealFault }[];
  /** Lines are missing at the end, or were put there. */
  readonly isCut: boolean;
}

/** Events whose place is looked for among all the others; more are called lost, so that a file of nonsense takes no time. */
const MOST_SOUGHT = 20;

/** Holds the seals of a file against its events. */
export function checkSeals(secret: string, sitting: Sealable): SealReport {
  const { events, handoutDigest } = sitting;
  const each = sitting.seals?.each ?? [];
  if (each.every((seal) => seal === '') && sitting.seals?.end === undefined)
    return { state: 'unsealed', faults: [], isCut: false };
  const befores = [handoutDigest, ...each];
  let sought = 0;
  const stoodElsewhere = (event: SittingEvent, seal: string): boolean =>
    sought++ < MOST_SOUGHT &&
    befores.some((before) => whatSeal(secret, before, event) === seal.slice(0, HALF));
  const faults = events.flatMap((event, index) => {
    const seal = each[index] ?? '';
    const before = befores[index] ?? '';
    const what = whatSeal(secret, before, event) === seal.slice(0, HALF);
    const time = timeSeal(secret, before, event) === seal.slice(HALF);
    if (what && time) return [];
    const fault: SealFault =
      seal === ''
        ? 'unsealed'
        : what
          ? 'time'
          : time
            ? 'what'
            : stoodElsewhere(event, seal)
              ? 'moved'
              : 'lost';
    return [{ event, fault }];
  });
  const isCut = !isWholeAtEnd(secret, sitting);
  const isForeign = isCut && faults.length === events.length && faults.every(({ fault }) => fault === 'lost');
  const isChanged = isCut || faults.length > 0 || events.some(({ event }) => event === 'gap');
  return { state: isForeign ? 'foreign' : isChanged ? 'changed' : 'whole', faults, isCut };
}
