/** Files edited by hand after the program wrote them: what was changed is named, and nothing else is. */
import { describe, expect, it } from 'vitest';
import { type Draw, pick, seededDraw, shuffled } from '../../src/chance/draw.js';
import { analyseClass } from '../../src/quiz/analysis.js';
import { parseSitting, sittingText } from '../../src/quiz/answers.js';
import { markClass } from '../../src/quiz/class.js';
import { reportCsv } from '../../src/quiz/report-csv.js';
import { reportText } from '../../src/quiz/report-text.js';
import { remarks } from '../../src/quiz/report-words.js';
import { checkSeals } from '../../src/quiz/seals.js';
import {
  closeQuestion,
  confirmAnswer,
  finishSitting,
  readyQuestion,
  showQuestion,
  takeChoices,
} from '../../src/quiz/sitting.js';
import { casesOf, IN_MUTANTS, some } from '../cases.js';
import { kindOf } from '../studio.js';
import { NINE, SECRET, sittingOf, someClass, someHandout } from './fixture.js';
import { handout, numberOf, type RawEvent, type RawFile, rawOf, saidOf } from './sealed.js';

/** The words that name an event's content and its time. */
function wordsOf({ event, drill }: RawEvent): { what: string; time: string } {
  const number = numberOf(drill);
  switch (event) {
    case 'begin':
      return { what: "the student's name", time: 'time of the beginning' };
    case 'handed-in':
      return { what: 'the handing in', time: 'time of the handing in' };
    case 'closed':
      return { what: `closing of question ${number}`, time: `time of closing question ${number}` };
    case 'taken':
    case 'chosen':
      return { what: `answer ${number}`, time: `time of answer ${number}` };
    default:
      return { what: `question ${number}`, time: `time of question ${number}` };
  }
}

/** Changes a file; the words that must be said of it, or `undefined` where nothing was changed that counts. */
type Edit = (file: RawFile, draw: Draw) => string | undefined;

const anyAt = (file: RawFile, draw: Draw, fits: (event: RawEvent) => boolean): RawEvent =>
  pick(file.events.filter(fits), draw);

const EDITS: Readonly<Record<string, Edit>> = {
  answer: (file, draw) => {
    const event = anyAt(file, draw, ({ answer }) => answer !== undefined);
    const { drill } = handout.questions[numberOf(event.drill) - 1] as (typeof handout.questions)[number];
    const field = pick(kindOf(drill).fields(drill), draw);
    const others = field.options.filter(({ id }) => id !== event.answer?.[field.id]);
    event.answer = { ...event.answer, [field.id]: pick(others, draw).id };
    return wordsOf(event).what;
  },
  time: (file, draw) => {
    const event = pick(file.events, draw);
    event.at = new Date(Date.parse(event.at) + (draw(1) === 0 ? -1 : 1) * (1 + draw(100_000))).toISOString();
    return wordsOf(event).time;
  },
  name: (file, draw) => {
    const begin = anyAt(file, draw, ({ event }) => event === 'begin');
    begin.name = pick(['Ben Otter', 'ann lee', 'X', '李明'], draw);
    return "the student's name";
  },
  order: (file, draw) => {
    const at = draw(file.events.length - 2);
    const [one, other] = file.events.slice(at, at + 2) as [RawEvent, RawEvent];
    file.events.splice(at, 2, other, one);
    return `order: `;
  },
  'a line taken out': (file, draw) => {
    const at = 1 + draw(file.events.length - 2);
    file.events.splice(at, 1);
    return at === file.events.length ? 'its end: lines were taken out' : 'lines before it were taken out';
  },
  'the last lines taken out': (file, draw) => {
    file.events.splice(-1 - draw(4));
    return 'its end: lines were taken out';
  },
  'a line put in': (file, draw) => {
    const like = anyAt(file, draw, ({ event }) => event === 'taken');
    const { seal: _seal, ...bare } = like;
    file.events.splice(1 + draw(file.events.length - 2), 0, draw(1) === 0 ? bare : { ...like });
    return wordsOf(like).what;
  },
  'another question': (file, draw) => {
    const event = anyAt(file, draw, ({ drill }) => drill !== undefined);
    event.drill = pick(
      handout.questions.map(({ drill }) => drill.id).filter((id) => id !== event.drill),
      draw,
    );
    return wordsOf(event).what;
  },
  'seals taken off': (file) => {
    for (const event of file.events) delete event.seal;
    delete file.end;
    return 'not sealed';
  },
  'the order of keys': (file, draw) => {
    file.events = file.events.map(
      (event) => Object.fromEntries(shuffled(Object.entries(event), draw)) as never,
    );
    return undefined;
  },
  'a zone': (file, draw) => {
    const event = pick(file.events, draw);
    event.at = `${new Date(Date.parse(event.at) + 3_600_000).toISOString().slice(0, -1)}+01:00`;
    return undefined;
  },
};

/** Layouts that mean the same. */
const LAYOUTS: readonly ((file: RawFile) => string)[] = [
  (file) => JSON.stringify(file),
  (file) => JSON.stringify(file, null, 2),
  (file) => JSON.stringify(file, null, '\t').replaceAll('\n', '\r\n'),
  (file) => JSON.stringify(file).replaceAll('"begin"', '"\\u0062egin"'),
];

/** Sittings as the program writes them, with questions covered first, choices on the way, and closed ones. */
function files(count: number): string[] {
  const draw = seededDraw(3);
  return someClass(handout, count).map((plain) => {
    let now = NINE;
    let sitting = { ...sittingOf(handout, plain.name, []) };
    sitting = parseSitting(sittingText({ ...sitting, events: sitting.events.slice(0, 1), answers: [] }), 'x');
    const { seals: _none, ...fresh } = sitting;
    let going: typeof sitting = fresh;
    for (const given of plain.answers) {
      now += 1000 + draw(20_000);
      going = showQuestion(readyQuestion(going, given.drill, now), given.drill, now + 700);
      if (draw(2) > 0)
        going = takeChoices(going, given.drill, { second: 'ivory-black', amount: '1:4' }, now + 800);
      going = confirmAnswer(going, given.drill, given.answer, now + 900 + draw(9000));
      if (draw(1) === 0) going = closeQuestion(going, given.drill, now + 10_000);
    }
    return sittingText(draw(4) === 0 ? going : finishSitting(going, now + 20_000), SECRET);
  });
}

describe('a file edited after it was written', () => {
  const written = files(20);

  it('is said to be sound as it is', () => {
    for (const text of written) {
      expect(saidOf(text)).toBe('');
      expect(checkSeals(SECRET, parseSitting(text, 'x')).state).toBe('whole');
    }
  });

  const EDITED = casesOf(200, 60);

  it('names what was changed in each of many seeded edits of 20 files, and says nothing of edits that change nothing', () => {
    const draw = seededDraw(200);
    const kinds = Object.keys(EDITS);
    const done = new Map<string, number>();
    for (let edit = 0; edit < EDITED; edit++) {
      const kind = kinds[edit % kinds.length] as string;
      const file = rawOf(pick(written, draw));
      const expected = (EDITS[kind] as Edit)(file, draw);
      const said = saidOf(pick(LAYOUTS, draw)(file), `${edit}.json`);
      done.set(kind, (done.get(kind) ?? 0) + 1);
      if (expected === undefined) expect(said, `${edit} ${kind}`).toBe('');
      else expect(said, `${edit} ${kind}`).toContain(expected);
    }
    expect([...done.values()].every((count) => count >= Math.floor((0.9 * EDITED) / kinds.length))).toBe(
      true,
    );
  });

  it('tells a changed answer from a changed time, and both places where two were changed', () => {
    const file = rawOf(written[0] as string);
    const [first, second] = file.events.filter(({ event }) => event === 'taken') as [RawEvent, RawEvent];
    first.answer = { second: 'prussian-blue', amount: '1:1' };
    second.at = new Date(Date.parse(second.at) + 1).toISOString();
    expect(saidOf(JSON.stringify(file))).toBe(
      `the file was changed after it was written: answer ${numberOf(first.drill)}, time of answer ${numberOf(second.drill)}`,
    );
  });

  it('counts all the same, and the report names the student', () => {
    const file = rawOf(written[0] as string);
    const taken = file.events.find(({ event }) => event === 'taken') as RawEvent;
    taken.answer = { second: 'prussian-blue', amount: '1:1' };
    const result = markClass(handout, [{ file: 'a.json', sitting: parseSitting(JSON.stringify(file), 'a') }]);
    expect(result.students[0]?.marks[numberOf(taken.drill) - 1]?.answer).toEqual(taken.answer);
    expect(remarks(result.students[0] as never).join()).toMatch(/changed after it was written: answer/);
    expect(reportCsv(result)).toContain('the file was changed after it was written: answer');
  });

  it('is told from one that was made with another secret or written anew', () => {
    const { events, ...rest } = rawOf(written[0] as string);
    const other = parseSitting(JSON.stringify({ ...rest, events }), 'x');
    const { seals: _seals, ...bare } = other;
    expect(saidOf(sittingText(bare, 'f'.repeat(64)))).toMatch(/^no seal in the file fits/);
    const old = {
      format: 2,
      handoutDigest: rest.handoutDigest,
      name: 'Ann',
      started: '2026-03-01T09:00:00Z',
      answers: [],
    };
    expect(saidOf(JSON.stringify(old))).toMatch(/^not sealed/);
    // A handout without a secret seals nothing, and nobody is blamed for it.
    const plain = someHandout(3);
    const { students } = markClass(plain, [{ file: 'a', sitting: sittingOf(plain, 'Ann', []) }]);
    expect(students[0]?.doubts).toEqual([]);
  });

  it.skipIf(IN_MUTANTS)('is refused at once when it is huge', () => {
    const start = (written[0] as string).split('"events"')[0];
    const items = [`{${'"a":{},'.repeat(50)}"b":1}`, '{}', '1', '{"a":1}', '[[],[]]'];
    for (const item of some(items, 5)) {
      const events = Array.from({ length: Math.floor(7_900_000 / (item.length + 1)) }, () => item).join(',');
      const said = saidOf(`${start}"events":[${events}]}`);
      expect(said).toMatch(/^a\.json: \d+ things stand in one place/);
    }
    const keys = Array.from({ length: 100_000 }, (_, index) => `"k${index}":"v"`).join(',');
    expect(saidOf(`${start}"events":[{"event":"taken","answer":{${keys}}}]}`)).toMatch(
      /100000 things stand in one place/,
    );
    expect(saidOf('['.repeat(8_000_001))).toMatch(/^a\.json: the file is larger than 8 MB/);
    expect(saidOf('['.repeat(1_000_000))).toMatch(/^a\.json: /);
  });

  it('stays harmless whatever stands in it: no control characters, bounded lines', () => {
    const file = rawOf(written[0] as string);
    for (const event of file.events) {
      if (event.drill !== undefined) event.drill = '\u001b[31mred\u202e';
      event.at = '2026-03-01T09:00:00.000Z';
    }
    const sitting = parseSitting(JSON.stringify(file), 'x');
    const result = markClass(handout, [{ file: 'a', sitting }]);
    const text = reportText(result, analyseClass(result), { columns: 80, full: '#', empty: '.' });
    expect(text.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}]/u);
  });
});
