import { describe, expect, test } from 'vitest';
import { checkDrill } from '../../../src/drills/check.js';
import { kindOf, STUDIO, said } from '../../studio.js';
import { drillOf, gradeOf } from './helpers.js';

describe('shade chroma', () => {
  const drill = drillOf(
    'shade-chroma',
    `lit: { paints: { cadmium-red: 1 }, strength: 0.2 }
shade: 7
asks: [chroma, swatch, turn]`,
    'shade-chroma',
  );

  test('too much glows, too little is mud; the lit chroma is not the answer', () => {
    const { chroma } = gradeOf(drill);
    expect(chroma?.shadingLine).toBeLessThan(0.85 * (chroma?.before ?? 0));
    expect(gradeOf(drill, { chroma: '10' })).toMatchObject({ idea: 'shade-to-mud' });
    expect(gradeOf(drill, { chroma: '80' })).toMatchObject({ idea: 'shade-glows' });
  });

  test('a small turn of hue the usual way counts as much as none', () => {
    expect(gradeOf(drill, { turn: 'to-red' }).mark).toBe(100);
    expect(gradeOf(drill, { turn: 'to-yellow' })).toMatchObject({ idea: 'turned-against' });
  });

  test('only one of the three swatches is right, whatever its place', () => {
    const marks = ['left', 'middle', 'right'].map((swatch) => gradeOf(drill, { swatch }).mark);
    expect(marks.filter((mark) => mark === 100)).toHaveLength(1);
    expect(marks.filter((mark) => mark < 85)).toHaveLength(2);
  });
});

describe('drying', () => {
  const drill = drillOf(
    'drying',
    `wash: { paints: { ultramarine-blue: 1 }, strength: 0.3 }
target: { step: 6.8, chroma: 83 }
asks: [value, chroma, mend, wait]`,
    'wet-and-dry',
  );

  test('value hardly moves, chroma falls, and the wet match needs more paint', () => {
    expect(kindOf(drill).best(drill)).toEqual({
      value: 'same',
      chroma: 'falls-little',
      mend: 'paint',
      wait: 'dry',
    });
    expect(gradeOf(drill, { value: 'much-lighter' })).toMatchObject({ idea: 'expected-paler' });
    expect(gradeOf(drill, { wait: 'at-once' })).toMatchObject({ idea: 'judged-wet' });
    expect(gradeOf(drill, { chroma: 'rises' }).mark).toBeLessThan(
      gradeOf(drill, { chroma: 'falls-clearly' }).mark,
    );
  });
});

const PASSAGE = `
areas:
  - { id: roof, name: roof, laid: { paints: { burnt-sienna: 1 }, strength: 0.35 }, plan: { step: [4, 5], chroma: [60, 80] } }
  - { id: doorway, name: doorway, laid: { paints: { prussian-blue: 1 }, strength: 0.9 }, plan: { step: [4.8, 6], chroma: [25, 40] } }
repairs:
  - { id: lift, repair: { lift: 0.6 } }
  - { id: anew, repair: { anew: { paints: { prussian-blue: 1 }, strength: 0.35 } } }
  - { id: dark, repair: { glaze: { paints: { ultramarine-blue: 1 }, strength: 0.4 } } }`;

describe('diagnosis', () => {
  const drill = drillOf('diagnosis', PASSAGE, 'diagnosis');

  test('a staining paint hardly lifts, so it has to be laid anew', () => {
    expect(kindOf(drill).best(drill)).toEqual({ area: 'doorway', fault: 'value', repair: 'anew' });
    const lift = gradeOf(drill, { repair: 'lift' });
    expect(lift).toMatchObject({ idea: 'lifted-a-stain' });
    expect(said(lift).join(' ')).toMatch(/stains and hardly lifts/);
  });

  test('the wrong area gives nothing; the wrong name of the fault gives something', () => {
    expect(gradeOf(drill, { area: 'roof' })).toMatchObject({ mark: 0, idea: 'wrong-area' });
    expect(gradeOf(drill, { fault: 'chroma' })).toMatchObject({ mark: 33, idea: 'wrong-fault' });
  });

  test('none is offered only where nothing may be out, hue only where a plan states one', () => {
    const optionsOf = (text: string): string[] =>
      kindOf(drill)
        .fields(drillOf('diagnosis', text, 'diagnosis'))
        .flatMap(({ options }) => options.map(({ id }) => id));
    expect(optionsOf(PASSAGE)).not.toContain('none');
    expect(optionsOf(PASSAGE)).not.toContain('hue');
    expect(optionsOf(`${PASSAGE}\nnone: true`)).toContain('none');
    const named = PASSAGE.replace('chroma: [60, 80]', 'chroma: [60, 80], hue: { near: 50, within: 30 }');
    expect(optionsOf(named)).toContain('hue');
    const open = drillOf('diagnosis', `${PASSAGE}\nnone: true`, 'diagnosis');
    expect(gradeOf(open, { area: 'none' })).toMatchObject({ mark: 0, idea: 'wrong-area' });
  });

  test('two areas out of plan are a fault of the drill', () => {
    const two = drillOf('diagnosis', PASSAGE.replace('step: [4, 5]', 'step: [7, 8]'), 'diagnosis');
    expect(checkDrill(STUDIO, two).faults.join()).toMatch(/2 areas are out/);
  });
});

describe('worked case', () => {
  const lines = (statements: string): string => `
case:
  - { id: thin, name: thin, laid: { paints: { burnt-sienna: 1 }, strength: 0.08 } }
  - { id: thick, name: thick, laid: { paints: { burnt-sienna: 1 }, strength: 1 } }
statements: [${statements}]`;

  test('the statement that the figures bear out is right, the other is refuted with them', () => {
    const drill = drillOf(
      'worked',
      lines('{ fact: darker, of: [thin, thick] }, { fact: darker, of: [thick, thin] }'),
    );
    expect(kindOf(drill).best(drill)).toEqual({ why: 's2' });
    const grade = gradeOf(drill, { why: 's1' });
    expect(grade).toMatchObject({ mark: 0, idea: 'wrong-reason' });
    expect(said(grade)[0]).toMatch(/False: .*\. Thin at step \d\.\d, thick at \d\.\d/);
  });

  test('two true statements are a fault of the drill', () => {
    const drill = drillOf(
      'worked',
      lines('{ fact: darker, of: [thick, thin] }, { fact: stronger, of: [thick, thin] }'),
    );
    expect(checkDrill(STUDIO, drill).faults.join()).toMatch(/2 of the statements count as true/);
  });
});

test('shares that tie and a loss at the bound are faults where they are asked for', () => {
  const sheet = (share: number, asks: string) =>
    drillOf(
      'sort-values',
      `asks: [${asks}]
areas:
  - { name: sky, share: ${share}, laid: { paints: { burnt-sienna: 1 }, strength: 0.03 } }
  - { name: gap, share: ${1 - share}, laid: { paints: { burnt-sienna: 1, ultramarine-blue: 1 }, strength: 0.9 } }`,
    );
  expect(checkDrill(STUDIO, sheet(0.5, 'darkest, most')).faults.join()).toMatch(/cover the sheet alike/);
  expect(checkDrill(STUDIO, sheet(0.6, 'darkest, most')).faults.join()).not.toMatch(/alike/);
  expect(checkDrill(STUDIO, sheet(0.5, 'darkest')).faults.join()).not.toMatch(/alike/);
  const wet = (strength: number, asks: string) =>
    drillOf('drying', `wash: { paints: { sap-green: 1 }, strength: ${strength} }\nasks: [${asks}]`);
  // Half strength loses about a tenth, a thin wash hardly anything.
  expect(checkDrill(STUDIO, wet(0.5, 'chroma')).faults.join()).toMatch(/too near the bound/);
  expect(checkDrill(STUDIO, wet(0.5, 'value')).faults.join()).not.toMatch(/bound between a little/);
  expect(checkDrill(STUDIO, wet(0.1, 'chroma')).faults.join()).not.toMatch(/bound between a little/);
});
