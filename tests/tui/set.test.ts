import { describe, expect, it } from 'vitest';
import { summaryTexts } from '../../src/tui/summary/texts.js';
import { Bench, fakeDeps, fakeDrill, items } from './fakes.js';

const at = ({ state }: Bench): string => {
  const { screen } = state;
  if (screen.name === 'drill') return `drill ${screen.drill.id}`;
  if (screen.name === 'result') return `result ${screen.answered.drill.id}`;
  return screen.name;
};

describe('a set', () => {
  it('shows each result at once where the timing says so, then the summary', () => {
    const bench = new Bench().set(items(['one', 'two']));
    const seen = ['enter', 'enter', 'enter', 'n'].map((key) => at(bench.keys(key)));
    expect(seen).toEqual(['result one', 'drill two', 'result two', 'summary']);
    expect(bench.asked.at(-1)).toMatchObject({ type: 'summarise' });
  });

  it('keeps results back until the third answer, then shows them in order', () => {
    const bench = new Bench().set(items(['one', 'two', 'three', 'four'], 'third'));
    // The first Enter on a drill after a result that is kept back says no more than: read.
    const seen = Array.from({ length: 9 }, () => at(bench.keys('enter')));
    expect(seen).toEqual([
      'drill two',
      'drill two',
      'drill three',
      'drill three',
      'result one',
      'result two',
      'result three',
      'drill four',
      'summary',
    ]);
  });

  it('tells the learner when a result is kept back', () => {
    const bench = new Bench().set(items(['one', 'two'], 'third')).keys('enter');
    expect(bench.drill.message).toMatch(/with two others or at the end of the set/);
    expect(new Bench().set(items(['one', 'two'], 'end')).keys('enter').drill.message).toMatch(
      /end of the set/,
    );
  });

  it('keeps results back to the end where the timing says so, and marks them as not seen', () => {
    const bench = new Bench().set(items(['one', 'two'], 'end')).keys('enter', 'enter', 'enter');
    expect(at(bench)).toBe('summary');
    expect(bench.state.set?.held).toEqual([0, 1]);
    expect(at(bench.keys('down', 'enter'))).toBe('result two');
    expect(bench.state.set?.held).toEqual([0]);
    expect(at(bench.keys('enter'))).toBe('summary');
  });

  it('counts thirds across answers that are shown at once', () => {
    const mixed = [...items(['one'], 'third'), ...items(['two']), ...items(['three', 'four'], 'third')];
    const bench = new Bench().set(mixed);
    const seen = ['enter', 'enter', 'enter', 'n', 'enter', 'enter', 'enter', 'n', 'n', 'n'].map((key) =>
      at(bench.keys(key)),
    );
    expect(seen).toEqual([
      'drill two',
      'drill two',
      'result two',
      'drill three',
      'drill four',
      'drill four',
      'result one',
      'result three',
      'result four',
      'summary',
    ]);
  });

  it('keeps the first answer in the record when one tries again', () => {
    const bench = new Bench().set(items(['one', 'two'])).keys('right', 'enter', 't');
    expect(bench.drill).toMatchObject({ attempt: 2, answer: { amount: '1:16' } });
    bench.keys('right', 'right', 'enter');
    expect(bench.result.first?.answer['amount']).toBe('1:16');
    expect(bench.result.answered).toMatchObject({ attempt: 2, answer: { amount: '1:4' } });
    expect(bench.state.set?.answers.map(({ answer }) => answer['amount'])).toEqual(['1:16']);
    expect(at(bench.keys('n'))).toBe('drill two');
  });

  it('keeps two goes at the same drill in one set apart', () => {
    const bench = new Bench().set(items(['one', 'one'])).keys('enter', 'n', 'right', 'enter', 't', 'enter');
    expect(bench.result.first?.answer['amount']).toBe('1:16');
    expect(bench.state.set?.answers).toHaveLength(2);
  });

  it('carries a hint once seen into the next try', () => {
    const bench = new Bench().set(items(['one'])).keys('h', 'h', 'enter', 't');
    expect(bench.drill.hint).toBe('shown');
  });

  it('can be gone on with from the home screen', () => {
    const bench = new Bench().set(items(['one', 'two', 'three'])).keys('enter', 'escape');
    expect(at(bench)).toBe('home');
    expect(at(bench.menu('go-on'))).toBe('drill two');
  });

  it('shows what was done so far when it is left after an answer', () => {
    const bench = new Bench().set(items(['one', 'two'])).keys('enter', 'n', 'escape', 'enter');
    expect(at(bench)).toBe('summary');
  });

  it('starts no new drill once the minutes are over', () => {
    const bench = new Bench().set(items(['one', 'two']), 0.01).keys('enter');
    expect(at(bench.keys('n'))).toBe('summary');
    expect(at(bench.keys('escape').menu('go-on')), 'coming back is a new decision').toBe('drill two');
  });

  it('takes drills that are not among the written ones', () => {
    const made = { drillId: 'made-7', drill: fakeDrill('made-7'), feedback: 'each', why: 'new' } as const;
    expect(at(new Bench().set([made]))).toBe('drill made-7');
  });

  it('passes over drills that do not exist, and says so when none is left', () => {
    expect(at(new Bench().set(items(['gone', 'two'])))).toBe('drill two');
    const bench = new Bench().set(items(['gone']));
    expect(at(bench)).toBe('home');
    expect(bench.state.notice).toMatch(/No drill/);
  });

  it('counts what was saved and what was not', () => {
    const bench = new Bench().set(items(['one', 'two'])).keys('enter');
    expect(bench.state).toMatchObject({ answered: 1, unsaved: 0 });
    const { answered } = bench.result;
    bench.send({
      type: 'laid',
      answered: { ...answered, attempt: 2, kept: { saved: false, note: 'disk full' } },
      place: 0,
      worked: false,
      at: 5,
    });
    expect(bench.state).toMatchObject({ answered: 2, unsaved: 1, savingNote: 'disk full' });
  });

  it('asks for another set of the same family from the summary', () => {
    const bench = new Bench().send({
      type: 'set-ready',
      items: items(['one']),
      choice: { family: 'darken-bright', level: 4 },
      at: 1,
    });
    bench.keys('enter', 'n', 'n');
    expect(bench.asked.at(-1)).toMatchObject({
      type: 'start-set',
      choice: { family: 'darken-bright', level: 4 },
    });
  });
});

describe('the end of a set', () => {
  const ended = (choice = {}): Bench => {
    const bench = new Bench()
      .send({ type: 'set-ready', items: items(['one']), choice, at: 1 })
      .keys('enter', 'n');
    const summary = bench.deps.summarise([bench.state.set?.answers[0] as never]);
    if (summary === undefined) throw new Error('the fake sums up every set');
    return bench.send({ type: 'summary-ready', summary });
  };

  it('starts one drill for each mistake on one key', () => {
    const bench = ended({ family: 'darken-bright' });
    const mistakes = bench.state.set?.summary?.mistakes;
    expect(mistakes?.length).toBe(2);
    bench.keys('m');
    expect(bench.asked.at(-1)).toMatchObject({ choice: { family: 'darken-bright', mend: mistakes } });
    expect(at(bench)).toBe('drill one');
  });

  it('does neither the placing round nor a mending twice when another set is asked for', () => {
    expect(ended({ placing: true }).keys('n').asked.at(-1)).toMatchObject({ choice: {} });
    const again = ended({ level: 4, mend: [] }).keys('n').asked.at(-1);
    expect(again).toMatchObject({ choice: { level: 4 } });
    expect(again).not.toMatchObject({ choice: { mend: [] } });
  });

  it('comes early where the placing round has nothing more to ask', () => {
    const over = { drillId: 'placing-1', feedback: 'each', why: '', drill: undefined } as const;
    const bench = new Bench()
      .set([...items(['one']), over, { ...over, drillId: 'placing-2' }])
      .keys('enter', 'n');
    expect(at(bench)).toBe('summary');
  });

  it('says the mistakes in words, and each figure beside bars once', () => {
    const { set } = ended().state;
    if (set === undefined) throw new Error('there is a set');
    const { head, mend } = summaryTexts(set, true);
    expect(head).toEqual([
      'Well done: two good answers in a row.',
      'This set: 1 of 1 good. A fuller bar is better.',
    ]);
    expect(mend[0]).toMatch(/^Twice you went across the wheel .*\. Go round the wheel/);
    expect(mend[1]).toMatch(/^Once you stopped too light\./);
    expect(summaryTexts(set, false).head[1]).toBe('This set: closer than before.');
  });
});

describe('starting', () => {
  it('goes straight to practice with the family and the minutes asked for', () => {
    const asked: unknown[] = [];
    const nextSet = (choice: object) => {
      asked.push(choice);
      return items(['one']);
    };
    const startAt = { screen: 'practice', choice: { family: 'darken-bright' }, minutes: 5 } as const;
    const bench = new Bench(fakeDeps({ startAt, nextSet }));
    expect(asked).toEqual([{ family: 'darken-bright' }]);
    expect(bench.state.set?.deadline).toBeDefined();
    expect(at(bench)).toBe('drill one');
  });

  it('makes a drill only when it is shown', () => {
    let made = 0;
    const lazy = (id: string) => ({
      drillId: id,
      feedback: 'each' as const,
      why: 'new',
      get drill() {
        made += 1;
        return fakeDrill(id);
      },
    });
    const bench = new Bench().set([lazy('a'), lazy('b'), lazy('c')]);
    expect(made).toBe(1);
    bench.keys('enter', 'n');
    expect(made).toBe(2);
  });

  it('passes over a drill that cannot be made', () => {
    const broken = {
      drillId: 'broken',
      feedback: 'each' as const,
      why: 'new',
      get drill() {
        return undefined;
      },
    };
    expect(at(new Bench().set([broken, ...items(['two'])]))).toBe('drill two');
    expect(at(new Bench().set([broken]))).toBe('home');
  });

  it('opens with the welcome on the first run only', () => {
    expect(new Bench(fakeDeps({ firstRun: true })).state.screen.name).toBe('welcome');
    expect(new Bench().state.screen.name).toBe('home');
  });
});
