/** Lines of many colours are kept from Ink and put in where it has written. */
import chalk from 'chalk';
import { beforeEach, expect, it } from 'vitest';
import type { Piece } from '../../src/tui/kit/row.js';
import { filledIn, standIn } from '../../src/tui/kit/stand-ins.js';

beforeEach(() => {
  chalk.level = 3;
});

const line = (hex: string, columns = 10): Piece[] => [
  { text: 'value ', role: 'muted' },
  { text: ' '.repeat(columns), style: { backgroundColor: hex } },
  { text: '▀', style: { color: '#102030', backgroundColor: hex } },
];
const plain = (text: string): string => text.replace(/\u001b\[[0-9;]*m/g, '');

it('is as wide as what it stands for, and gives it back in its colours', () => {
  const mark = standIn(line('#0a141e')) as string;
  expect(mark).toMatch(/^[ -~]{17}$/);
  const filled = filledIn(`before ${mark} after`);
  expect(plain(filled)).toBe(`before value ${' '.repeat(10)}▀ after`);
  expect(filled).toContain('\u001b[48;2;10;20;30m');
  expect(filled).toContain('\u001b[38;2;16;32;48m');
  expect(filled).toContain('\u001b[2mvalue ');
});

it('differs where the colours differ, so that the frame is drawn anew', () => {
  expect(standIn(line('#000001'))).not.toBe(standIn(line('#000002')));
  expect(standIn(line('#000001'))).toBe(standIn(line('#000001')));
});

it('fills in as much as has been left of it', () => {
  const mark = standIn(line('#123456')) as string;
  expect(plain(filledIn(mark.slice(0, 12)))).toBe(`value ${' '.repeat(6)}`);
});

it('keeps apart two that touch', () => {
  const [one, other] = [standIn(line('#111111')) as string, standIn(line('#222222')) as string];
  expect(plain(filledIn(one + other))).toBe(`value ${' '.repeat(10)}▀value ${' '.repeat(10)}▀`);
});

it('leaves short lines to Ink, and marks that stand for nothing as they are', () => {
  expect(standIn([{ text: 'x', style: { color: '#000000' } }])).toBeUndefined();
  expect(filledIn('~|zzz|__')).toBe('~|zzz|__');
});

it('knows the lines of the last thousands whatever came before them', () => {
  const hex = (n: number): string => `#${n.toString(16).padStart(6, '0')}`;
  for (let n = 0; n < 10_000; n++) {
    standIn(line(hex(n)));
    const before = standIn(line(hex(Math.max(0, n - 500)))) as string;
    if (n % 97 === 0) expect(plain(filledIn(before))).toMatch(/^value/);
  }
});
