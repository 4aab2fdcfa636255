import { afterEach, describe, expect, it, vi } from 'vitest';
import { StoreError } from '../../src/errors.js';
import { fakeDeps } from './fakes.js';
import { FULL, practice } from './routes.js';
import { DOWN, ENTER, ESC, RIGHT, Stage, strike } from './stage.js';

afterEach(strike);

describe('the home menu', () => {
  const SIZE = { columns: 80, rows: 24 };

  it('opens the list of families with one Enter, and nothing after it', async () => {
    const stage = new Stage(SIZE, fakeDeps());
    await stage.type([DOWN, ENTER], /practise it/);
  });

  it('opens the bench with one Enter, not its list of paints', async () => {
    const stage = new Stage(SIZE, fakeDeps());
    await stage.type([DOWN, DOWN, ENTER], 'ON THE BENCH');
  });

  it('goes back to a set that was left without answering its drill', async () => {
    const stage = new Stage(SIZE, fakeDeps());
    await stage.type([ENTER], /SECOND PAINT/);
    await stage.type([ESC], 'Leave this set?');
    await stage.type([ENTER], /Go on with the set/);
    await stage.type([ENTER], /SECOND PAINT/);
    expect(stage.deps.saved).toEqual([]);
  });
});

describe('a drill', () => {
  it('names every paint in words and value where there are no colours', async () => {
    const stage = new Stage(
      { columns: 80, rows: 24 },
      fakeDeps({ env: { ...FULL, NO_COLOR: '1' }, ...practice }),
    );
    await stage.shows('SECOND PAINT');
    for (const paint of ['alizarin crimson', 'ultramarine blue', 'cadmium red', 'ivory black']) {
      expect(stage.lines.find((line) => line.includes(paint))).toMatch(
        new RegExp(`${paint} +\\S+.*step \\d|${paint} +\\S+ \\S+`),
      );
    }
    expect(stage.text).toMatch(/step \d\.\d/);
  });

  it('does not show what the choice will give', async () => {
    const stage = new Stage({ columns: 120, rows: 40 }, fakeDeps(practice));
    await stage.shows('SECOND PAINT');
    const before = stage.raw;
    await stage.type([RIGHT, RIGHT], '‹1:8›'.slice(1, 4));
    const differing = stage.raw.split('\n').filter((line, at) => line !== before.split('\n')[at]);
    expect(differing.length, 'only the line of amounts').toBe(1);
  });

  it('says that colours are approximate where they are', async () => {
    const stage = new Stage(
      { columns: 80, rows: 24 },
      fakeDeps({ env: { ...FULL, FORCE_COLOR: '2' }, ...practice }),
    );
    await stage.shows('Colours are approximate (256 only)');
  });

  it('takes three arrows of one read as three steps', async () => {
    const stage = new Stage({ columns: 80, rows: 24 }, fakeDeps(practice));
    await stage.shows('SECOND PAINT');
    await stage.type([DOWN + DOWN + DOWN], /❯ 4 .*ivory black/i);
  });

  it('takes several letters and a return of one read one after another', async () => {
    const stage = new Stage({ columns: 80, rows: 24 }, fakeDeps(practice));
    await stage.shows('SECOND PAINT');
    await stage.type(['j++\r'], /40 of 100/);
    expect(stage.deps.saved[0]?.answer).toMatchObject({ second: 'ultramarine-blue', amount: '1:8' });
  });

  it('cleans what a file wrote before it is drawn', async () => {
    const hostile = {
      scene: 'Quay\u001b[2J\u001b]0;owned\u0007 wall \u202egnp',
      title: 'T\u0007itle',
      ask: '\u001b[31mWhich?',
    };
    const deps = fakeDeps(practice);
    const drills = deps.drills.map((drill) => ({ ...drill, ...hostile }));
    const stage = new Stage({ columns: 80, rows: 24 }, fakeDeps({ ...practice, drills }));
    await stage.shows('Quay wall gnp');
    expect(stage.raw).not.toContain('\u202e');
    expect(stage.raw).not.toContain('owned');
    expect(stage.raw).not.toContain('\u001b[2J');
  });
});

describe('a result', () => {
  it('shows the plane in place of the swatches where there is one column', async () => {
    const stage = new Stage({ columns: 60, rows: 20 }, fakeDeps(practice));
    await stage.type([ENTER], /START +YOURS +BEST/);
    expect(stage.text).not.toContain('0 chroma');
    await stage.type(['p'], '0 chroma');
    expect(stage.text).not.toContain('YOURS');
    await stage.type(['p'], /START +YOURS +BEST/);
  });
});

describe('saving', () => {
  it('has the answer saved before the result is shown', async () => {
    let release = (): void => {};
    const saving = new Promise<{ saved: boolean }>((resolve) => {
      release = () => resolve({ saved: true });
    });
    const stage = new Stage({ columns: 80, rows: 24 }, fakeDeps({ ...practice, saveAnswer: () => saving }));
    await stage.shows('SECOND PAINT');
    await stage.type([ENTER], 'SECOND PAINT');
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(stage.text).not.toContain('of 100');
    release();
    await stage.shows('0 of 100');
  });

  it('shows the result with a note when saving fails', async () => {
    const saveAnswer = (): never => {
      throw new StoreError('no space left\u001b[2J');
    };
    const stage = new Stage({ columns: 80, rows: 24 }, fakeDeps({ ...practice, saveAnswer }));
    await stage.shows('SECOND PAINT');
    await stage.type([ENTER], 'This answer is not saved: no space left');
    expect(stage.text).toContain('0 of 100');
  });

  it('goes on when a port throws: one line, no stack', async () => {
    const progressText = (): never => {
      throw new StoreError('the record is locked');
    };
    const stage = new Stage({ columns: 80, rows: 24 }, fakeDeps({ progressText }));
    await stage.shows('Mixing bench');
    await stage.type(['4'], 'the record is locked');
    expect(stage.text).not.toContain('at ');
  });

  it('ends at a fault of the program, and does not tell it as the learner’s', async () => {
    const broken = (): never => {
      throw new TypeError('cannot read what is not there');
    };
    for (const ports of [
      { progressText: broken },
      { saveAnswer: broken, ...practice },
      { nextSet: broken },
    ]) {
      const stage = new Stage({ columns: 80, rows: 24 }, fakeDeps(ports));
      const fault = stage.exited.catch((error: unknown) => error);
      await stage.type(['startAt' in ports ? ENTER : 'progressText' in ports ? '4' : '1'], /^/);
      expect(await fault).toBeInstanceOf(TypeError);
    }
  });
});

describe('the terminal', () => {
  it('draws one line when it is too small, and recovers by itself', async () => {
    const stage = new Stage({ columns: 80, rows: 24 }, fakeDeps(practice));
    await stage.shows('SECOND PAINT');
    stage.resize({ columns: 40, rows: 10 });
    await stage.shows('Mudlark needs 60 x 18; this is 40 x 10.'.slice(0, 30));
    expect(stage.lines.filter((line) => line.trim() !== '')).toHaveLength(1);
    stage.resize({ columns: 60, rows: 20 });
    await stage.shows('SECOND PAINT');
  });

  it('changes from two columns to one and back on resize, keeping what was chosen', async () => {
    const stage = new Stage({ columns: 120, rows: 40 }, fakeDeps(practice));
    await stage.shows('SECOND PAINT');
    await stage.type([DOWN], /❯ 2/);
    stage.resize({ columns: 60, rows: 20 });
    await stage.shows(/^ *❯ 2/m);
    stage.resize({ columns: 120, rows: 40 });
    await stage.shows(/\S.*❯ 2/);
  });

  it('ends with 130 on Ctrl+C', async () => {
    const stage = new Stage({ columns: 80, rows: 24 });
    await stage.shows('Mixing bench');
    await stage.type(['\u0003'], /^/);
    await vi.waitFor(() => expect(stage.last?.ending).toBe(130));
  });
});
