import { cleanup, render } from 'ink-testing-library';
import type { ReactNode } from 'react';
import { afterEach, describe, expect, it } from 'vitest';
import { glyphsFor } from '../../src/tui/kit/glyphs.js';
import { Row, Rows } from '../../src/tui/kit/row.js';
import { SurroundingsProvider } from '../../src/tui/kit/surroundings.js';
import { startedState, worldOf } from '../../src/tui/practice/start.js';
import { fakeDeps } from './fakes.js';

afterEach(cleanup);

function Around({ lang, children }: { readonly lang: string; readonly children: ReactNode }) {
  const deps = fakeDeps();
  const world = worldOf(deps);
  const state = startedState(deps, world, { columns: 100, rows: 24 });
  const glyphs = glyphsFor({ TERM: 'xterm-256color', LANG: lang });
  return <SurroundingsProvider value={{ state, world, glyphs }}>{children}</SurroundingsProvider>;
}

const shown = (lang: string, children: ReactNode): string =>
  render(<Around lang={lang}>{children}</Around>)
    .lastFrame()
    ?.replace(/\u001b\[[0-9;]*m/g, '') ?? '';

describe('a row', () => {
  it('puts its pieces one after another', () => {
    expect(shown('C.UTF-8', <Row pieces={[{ text: 'value ' }, { text: '6.5', role: 'label' }]} />)).toBe(
      'value 6.5',
    );
  });

  it('is cut where the line ends, and never broken', () => {
    const frame = shown('C.UTF-8', <Row pieces={[{ text: 'x'.repeat(60) }, { text: 'y'.repeat(60) }]} />);
    expect(frame.split('\n')).toHaveLength(1);
    expect(frame.length).toBeLessThanOrEqual(100);
  });

  it('has only ASCII where the terminal has no more', () => {
    expect(shown('C', <Row pieces={[{ text: '4.2 → 5.8 ✓' }]} />)).toMatch(/^[ -~]+$/);
  });

  it('keeps one line for each of several', () => {
    expect(shown('C.UTF-8', <Rows lines={[[{ text: 'one' }], [{ text: 'two' }]]} />)).toBe('one\ntwo');
  });
});
