/** The file of one sitting: its events, sealed. Marks are never in it: they are computed again each time. */
import * as v from 'valibot';
import { DataError } from '../errors.js';
import { parseJson } from '../text/json-source.js';
import { DIGEST_SHAPE } from './digest.js';
import { type GivenAnswer, type SittingEvent, type SittingState, stateOf } from './events.js';
import { MOST_QUESTIONS, NOT_A_MAP } from './handout.js';
import { instantSchema } from './instant.js';
import { MOST_NAME, shownName } from './names.js';
import { type Seals, sealAll } from './seals.js';

/** Version of the file format. The second, without events and seals, is still read. */
const ANSWERS_FORMAT = 3;
const UNSEALED_FORMAT = 2;

/** Most events of a sitting; a long one has two hundred. */
export const MOST_EVENTS = 1500;

/** Largest file of answers, in characters: room for every event with the longest choices. */
export const MOST_ANSWERS = 8_000_000;

/** A sitting, whole or under way: where it stands, and the events that it is read from. */
export interface Sitting extends SittingState {
  readonly handoutDigest: string;
  readonly events: readonly SittingEvent[];
  /** As they stood in the file; absent: it was never written. */
  readonly seals?: Seals | undefined;
}

/** The sitting that events make. */
export function sittingFrom(handoutDigest: string, events: readonly SittingEvent[], seals?: Seals): Sitting {
  return { handoutDigest, ...stateOf(events), events, ...(seals === undefined ? {} : { seals }) };
}

export const word = (most: number) =>
  v.pipe(
    v.string('must be a text'),
    v.minLength(1, 'must not be empty'),
    v.maxLength(most, `must be at most ${most} characters`),
  );

export const choicesSchema = v.pipe(
  v.record(word(64), word(120), 'must be a map of choices'),
  v.check((choices) => Object.keys(choices).length <= 20, 'holds more than 20 choices'),
);

/** Answers of the first format chose among amounts that are no longer offered. */
function formatFault(format: unknown): string {
  return format === 1
    ? 'format 1 is of an earlier model of mixing; let the student sit the quiz again, with a handout written by this version'
    : `format must be ${UNSEALED_FORMAT} or ${ANSWERS_FORMAT}`;
}

const digestSchema = v.pipe(
  v.string('must be a text'),
  v.regex(DIGEST_SHAPE, 'must be the digest of a handout'),
);

const nameSchema = v.pipe(
  word(MOST_NAME * 4),
  v.transform(shownName),
  v.check((name) => name !== '', 'holds nothing that can be shown'),
);

const seal = (digits: number) =>
  v.optional(
    v.pipe(
      v.string('must be a text'),
      v.check((text) => text.length === digits && /^[0-9a-f]*$/.test(text), `must be ${digits} hex digits`),
    ),
  );

const every = { at: instantSchema, seal: seal(64) };

const eventSchema = v.variant(
  'event',
  [
    v.strictObject(
      {
        event: v.literal('begin'),
        name: nameSchema,
        source: v.optional(v.literal('paper', 'must be paper, or left out')),
        ...every,
      },
      NOT_A_MAP,
    ),
    v.strictObject({ event: v.picklist(['ready', 'shown', 'closed']), drill: word(64), ...every }, NOT_A_MAP),
    v.strictObject(
      { event: v.picklist(['chosen', 'taken']), drill: word(64), answer: choicesSchema, ...every },
      NOT_A_MAP,
    ),
    v.strictObject({ event: v.picklist(['handed-in', 'gap']), ...every }, NOT_A_MAP),
  ],
  'must be an event: begin, ready, shown, chosen, taken, closed, handed-in or gap',
);

const sealedSchema = v.pipe(
  v.strictObject(
    {
      format: v.literal(ANSWERS_FORMAT, ({ input }) => formatFault(input)),
      handoutDigest: digestSchema,
      events: v.pipe(
        v.array(eventSchema, 'must be a list'),
        v.maxLength(MOST_EVENTS, `holds more than ${MOST_EVENTS} events`),
        v.check(
          (events) => events.filter(({ event }) => event === 'begin').length === 1,
          'must hold one beginning, with the name of the student',
        ),
        v.check(
          (events) =>
            new Set(events.map((event) => ('drill' in event ? event.drill : ''))).size <= MOST_QUESTIONS + 1,
          `holds answers to more than ${MOST_QUESTIONS} questions`,
        ),
      ),
      end: seal(32),
    },
    NOT_A_MAP,
  ),
  v.transform(({ handoutDigest, events, end }): Sitting => {
    const each = events.map(({ seal: own = '' }) => own);
    const bare = events.map(({ seal: _seal, ...event }): SittingEvent => event);
    return sittingFrom(handoutDigest, bare, { each, ...(end === undefined ? {} : { end }) });
  }),
);

/** Events of an answer in the second format, where every choice counted. */
function eventsOf({ drill, shown, answer, at, closed }: GivenAnswer & { shown: string }): SittingEvent[] {
  return [
    { event: 'shown', drill, at: shown },
    ...(Object.keys(answer).length === 0
      ? []
      : [{ event: 'taken', drill, answer, at: at ?? shown } as const]),
    ...(closed === true ? [{ event: 'closed', drill, at: at ?? shown } as const] : []),
  ];
}

const unsealedSchema = v.pipe(
  v.strictObject(
    {
      format: v.literal(UNSEALED_FORMAT),
      handoutDigest: digestSchema,
      name: nameSchema,
      started: instantSchema,
      answers: v.pipe(
        v.array(
          v.strictObject(
            {
              drill: word(64),
              shown: instantSchema,
              answer: choicesSchema,
              at: v.optional(instantSchema),
              closed: v.optional(v.boolean('must be true or false')),
            },
            NOT_A_MAP,
          ),
          'must be a list',
        ),
        v.maxLength(MOST_QUESTIONS, `holds more than ${MOST_QUESTIONS} answers`),
      ),
      finished: v.optional(instantSchema),
    },
    NOT_A_MAP,
  ),
  v.check(
    ({ answers }) => new Set(answers.map(({ drill }) => drill)).size === answers.length,
    'a question is answered twice',
  ),
  v.transform(({ handoutDigest, name, started, answers, finished }): Sitting => {
    const events: SittingEvent[] = [
      { event: 'begin', name, at: started },
      ...answers.flatMap(eventsOf),
      ...(finished === undefined ? [] : [{ event: 'handed-in', at: finished } as const]),
    ];
    return sittingFrom(handoutDigest, events, { each: events.map(() => '') });
  }),
);

/** A sitting in either format. */
export const sittingSchema = v.lazy((input) =>
  (input as { format?: unknown } | null)?.format === UNSEALED_FORMAT ? unsealedSchema : sealedSchema,
);

/**
 * Reads a sitting.
 * @param name what to call the file in a message
 * @throws DataError `name: what is wrong`, always one line
 */
export function parseSitting(text: string, name: string): Sitting {
  return parseJson(text, sittingSchema, name, MOST_ANSWERS);
}

/** A sitting as its file holds it. @param secret of the handout; without one nothing is sealed, nor what is typed in from paper */
export function sittingData(sitting: Sitting, secret: string | undefined): object {
  const isBare = secret === undefined || sitting.source === 'paper';
  const seals = isBare ? sitting.seals : sealAll(secret, sitting);
  return {
    format: ANSWERS_FORMAT,
    handoutDigest: sitting.handoutDigest,
    events: sitting.events.map((event, index) => {
      const own = seals?.each[index] ?? '';
      return own === '' ? event : { ...event, seal: own };
    }),
    ...(seals?.end === undefined ? {} : { end: seals.end }),
  };
}

/** The text of an answers file, one line an event. @throws DataError when there are more events than are read back */
export function sittingText(sitting: Sitting, secret?: string): string {
  if (sitting.events.length > MOST_EVENTS)
    throw new DataError(`a sitting holds at most ${MOST_EVENTS} events; hand it in`);
  const { events, ...rest } = sittingData(sitting, secret) as { events: object[] };
  const [head = ''] = JSON.stringify({ ...rest, events: [] }).split(/\[\]\}$/);
  return `${head}[\n${events.map((event) => JSON.stringify(event)).join(',\n')}\n]}\n`;
}
