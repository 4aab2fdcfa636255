import { describe, expect, test } from 'vitest';
import { joinDrills, parseDrillFile } from '../../src/drills/format.js';
import { DataError } from '../../src/errors.js';
import { STUDIO } from '../studio.js';

const GOOD = `format: 1
family: darken-bright
drills:
  - id: a-roof
    level: 3
    kind: mix
    title: A roof
    scene: A roof in the sun.
    start: { paints: { burnt-sienna: 1 }, strength: 0.3 }
    goal: { aim: rich, value: [5.3, 6.3] }
    tray: [alizarin-crimson, ivory-black]
`;

/** The one line that a text is refused with. */
function faultOf(text: string): string {
  try {
    parseDrillFile(STUDIO, text, 'set.yaml');
  } catch (error) {
    expect(error).toBeInstanceOf(DataError);
    const { message } = error as Error;
    expect(message.split('\n')).toHaveLength(1);
    expect(message.length).toBeLessThan(500);
    return message;
  }
  throw new Error('the text was accepted');
}

const line = (number: number, text: string): string => {
  const lines = GOOD.split('\n');
  lines[number - 1] = text;
  return lines.join('\n');
};

describe('a drill file', () => {
  test('gives its drills the family, its question, and what they leave out', () => {
    const [drill] = parseDrillFile(STUDIO, GOOD, 'set.yaml');
    expect(drill).toMatchObject({
      id: 'a-roof',
      family: 'darken-bright',
      ask: 'Make it darker and keep it bright: which second paint, and how much?',
      amounts: ['1:32', '1:16', '1:8', '1:4', '1:2', '1:1'],
      glazes: [],
      strokes: [],
      thins: [1],
    });
  });

  test('a note for teachers does not reach the drill', () => {
    const [drill] = parseDrillFile(STUDIO, `${GOOD}    note: For the second week.\n`, 'set.yaml');
    expect(drill).not.toHaveProperty('note');
  });
});

describe('what is wrong is named with file and line', () => {
  test.each([
    ['another format', line(1, 'format: 2'), /^set\.yaml:1: .*format must be 1/],
    ['no format', line(1, ''), /^set\.yaml:\d+: format is missing/],
    ['an unknown family', line(2, 'family: darken-brite'), /^set\.yaml:2: .*Did you mean darken-bright/],
    [
      'an unknown key',
      `${GOOD}    hnit: Look up.\n`,
      /^set\.yaml:12: "hnit" is not a known key here\. Did you mean hint/,
    ],
    ['a mistyped key that must be there', line(7, '    titel: A roof'), /^set\.yaml:7: "titel" .*title/],
    ['a missing key', line(7, ''), /^set\.yaml:4: .*title is missing/],
    ['an unknown kind', line(6, '    kind: mixx'), /^set\.yaml:6: .*kind/],
    [
      'an unknown paint',
      line(11, '    tray: [alizarin-crimsn, ivory-black]'),
      /^set\.yaml:11: .*Did you mean alizarin-crimson/,
    ],
    ['a paint twice', line(11, '    tray: [ivory-black, ivory-black]'), /^set\.yaml:11: .*twice/],
    ['a level of 6', line(5, '    level: 6'), /^set\.yaml:5: .*level is 1 to 5/],
    ['a level in words', line(5, '    level: three'), /^set\.yaml:5: .*level must be a number/],
    ['an id with blanks', line(4, '  - id: a roof'), /^set\.yaml:4: .*lower-case/],
    [
      'a band upside down',
      line(10, '    goal: { aim: rich, value: [6.3, 5.3] }'),
      /^set\.yaml:10: .*low to high/,
    ],
    ['a value of NaN', line(10, '    goal: { aim: rich, value: [.nan, 5.3] }'), /^set\.yaml:10: .*number/],
    ['an endless value', line(10, '    goal: { aim: rich, value: [5.3, .inf] }'), /^set\.yaml:10: .*value/],
    [
      'an aim that is none',
      line(10, '    goal: { aim: rihc, value: [5.3, 6.3] }'),
      /^set\.yaml:10: .*aim must be one of shade, rich,/,
    ],
    ['no aim', line(10, '    goal: { value: [5.3, 6.3] }'), /^set\.yaml:10: .*aim is missing/],
    [
      'a word for a chroma',
      line(10, '    goal: { aim: rich, value: [5.3, 6.3], chroma: bright }'),
      /^set\.yaml:10: .*chroma/,
    ],
    [
      'a shade with a chroma of its own',
      line(10, '    goal: { aim: shade, value: [5.3, 6.3], chroma: [20, 40] }'),
      /^set\.yaml:10: .*from the light/,
    ],
    [
      'a dull without a chroma',
      line(10, '    goal: { aim: dull, value: [5.3, 6.3] }'),
      /^set\.yaml:10: .*dull.* need it/,
    ],
    [
      'a lean without a hue',
      line(10, '    goal: { aim: lean, value: [5.3, 6.3], chroma: [0, 16] }'),
      /^set\.yaml:10: .*lean needs a hue/,
    ],
    [
      'strength nothing',
      line(9, '    start: { paints: { burnt-sienna: 1 }, strength: 0 }'),
      /^set\.yaml:9: .*strength/,
    ],
    [
      'endless parts',
      line(9, '    start: { paints: { burnt-sienna: .inf }, strength: 0.3 }'),
      /^set\.yaml:9: .*parts/,
    ],
    [
      'negative parts',
      line(9, '    start: { paints: { burnt-sienna: -1 }, strength: 0.3 }'),
      /^set\.yaml:9: .*parts/,
    ],
    [
      'parts of 1e308',
      line(9, '    start: { paints: { burnt-sienna: 1e308 }, strength: 0.3 }'),
      /^set\.yaml:9: .*parts/,
    ],
    ['no paints', line(9, '    start: { paints: {}, strength: 0.3 }'), /^set\.yaml:9: .*one to four paints/],
    [
      'a start with a way',
      line(9, '    start: { paints: { burnt-sienna: 1 }, strength: 0.3, way: strokes }'),
      /^set\.yaml:9: "way" is not a known key here/,
    ],
    ['nothing to choose', line(11, "    tray: [ivory-black]\n    amounts: ['1:4']"), /nothing to choose/],
    ['no drills', 'format: 1\nfamily: darken-bright\ndrills: []\n', /^set\.yaml:3: .*must hold a drill/],
    ['a list instead of a map', '- 1\n- 2\n', /^set\.yaml:1: /],
    ['an empty text', '', /^set\.yaml:1: /],
    ['a half-written YAML', 'format: 1\nfamily: [darken\n', /^set\.yaml:\d+: /],
    [
      'the same id twice',
      GOOD + GOOD.split('\n').slice(3).join('\n'),
      /^set\.yaml:12: the id "a-roof" is used twice/,
    ],
    ['a key twice', line(7, '    level: 2'), /^set\.yaml:7: "level" stands here twice/],
  ])('%s', (_what, text, message) => {
    expect(faultOf(text)).toMatch(message);
  });
});

describe('hostile files', () => {
  test('escape, control and direction-changing characters in a text', () => {
    for (const bad of ['\\e[2J', '\\x07', '\\u202e', '\\u2066', '\\0']) {
      expect(faultOf(line(8, `    scene: "A roof ${bad} in the sun."`))).toMatch(/^set\.yaml:8: .*control/);
    }
  });

  test('a message never carries what would steer a terminal', () => {
    const message = faultOf(line(2, 'family: "\\e[31mred\\u202e"'));
    expect(message).not.toMatch(/\p{Cc}|\u202e/u);
  });

  test('aliases, which can grow a small file without end', () => {
    const bomb = ['a: &a [x, x, x, x, x, x, x, x, x]'];
    for (const [from, to] of ['ab', 'bc', 'cd', 'de', 'ef', 'fg'].map((pair) => [...pair])) {
      bomb.push(`${to}: &${to} [${Array(9).fill(`*${from}`).join(', ')}]`);
    }
    expect(faultOf(bomb.join('\n'))).toMatch(/^set\.yaml/);
  });

  test('five megabytes, quickly', () => {
    expect(faultOf(`${GOOD}# ${'x'.repeat(5_000_000)}\n`)).toMatch(/larger than 0\.4 MB/);
  });

  test('deep nesting, flow and block', () => {
    expect(faultOf(`drills: ${'['.repeat(50_000)}`)).toMatch(/^set\.yaml.*nested/);
    expect(faultOf(`drills: ${'{a: '.repeat(20_000)}`)).toMatch(/^set\.yaml.*nested/);
    expect(faultOf(Array.from({ length: 300 }, (_, depth) => `${' '.repeat(depth)}a:`).join('\n'))).toMatch(
      /nested/,
    );
    expect(faultOf(`${'- '.repeat(5000)}x`)).toMatch(/nested/);
  });

  test.each([
    ['dashes far apart', `${'-  '.repeat(20_000)}a`],
    ['question marks', `${'? '.repeat(20_000)}a`],
    ['both', `${'- ? '.repeat(10_000)}a`],
  ])('nesting that no line shows: %s, in our own words', (_, text) => {
    expect(faultOf(text)).toMatch(/^set\.yaml:1: nested too deep; check that it is the right file$/);
  });

  test('what the parser says to programmers is said to painters', () => {
    expect(faultOf(`${GOOD}---\n${GOOD}`)).toMatch(/^set\.yaml:\d+: a second document begins here/);
    expect(faultOf('a: &x 1\nb: *x\n')).toBe(
      'set.yaml:2: a * stands for something written elsewhere; write it out',
    );
    for (const [line, said] of [
      [
        'title: Darks: not mud',
        /^set\.yaml:1: a second colon and a blank stand on this line: put the sentence in quotes/,
      ],
      ["title: 'Don't stir'", /^set\.yaml:1: there is a sign too many, .*put the sentence in quotes/],
      ['title: "Say "mud" now"', /put the sentence in quotes/],
      ['title: "open', /a quote is opened and never closed/],
      ['title: @home', /^set\.yaml:1: a sentence cannot begin with this sign: put the sentence in quotes/],
      ['title: *bold* words', /put the sentence in quotes/],
      ['title: "a\\qb"', /inside "quotes" has a meaning of its own/],
      ['a: 1\nwords alone\nb: 2', /there is no key here/],
      ['a: 1\n  b: 2', /begins too far left or right/],
      ['a:\n  b: 1\n c: 2', /begins too far left or right/],
      ['a:\n\tb: 1', /^set\.yaml:2: this line begins with a tab: use blanks/],
      ['a: [1, 2\nb: 1', /a bracket is opened and never closed/],
      ['a: { b: 1 c: 2 }', /a comma is missing/],
    ] as const) {
      expect(faultOf(`${line}\n`), line).toMatch(said);
      expect(faultOf(`${line}\n`), line).not.toMatch(/scalar|mapping|implicit|flow|token|sequence/i);
    }
    expect(faultOf('just words')).toBe('set.yaml:1: the file must hold keys and values');
  });

  test('names that every object carries', () => {
    expect(faultOf(`${GOOD}    __proto__: { level: 1 }\n`)).toMatch(/^set\.yaml:12: /);
    expect(faultOf(`${GOOD}    constructor: 1\n`)).toMatch(/^set\.yaml:12: /);
  });

  test('hundreds of drills in one file', () => {
    const many = Array.from({ length: 201 }, (_, n) =>
      GOOD.split('\n').slice(3).join('\n').replace('a-roof', `roof-${n}`),
    );
    expect(faultOf(`${GOOD.split('\n').slice(0, 3).join('\n')}\n${many.join('')}`)).toMatch(/more than 200/);
  });
});

describe('several files', () => {
  test('may not use the same id', () => {
    const drills = parseDrillFile(STUDIO, GOOD, 'one.yaml');
    expect(() =>
      joinDrills([
        { name: 'one.yaml', drills },
        { name: 'two.yaml', drills },
      ]),
    ).toThrow(/two\.yaml: the drill id "a-roof" is also used in one\.yaml/);
  });
});
