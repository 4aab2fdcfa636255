/** A terminal that keeps what is written to it and can be typed into. */
import { EventEmitter } from 'node:events';
import type { Size } from '../src/tui/kit/stage.js';

export class FakeOut extends EventEmitter {
  frames: string[] = [];
  isTTY = true;
  columns: number;
  rows: number;
  constructor({ columns, rows }: Size) {
    super();
    this.columns = columns;
    this.rows = rows;
  }
  write = (frame: string): boolean => {
    this.frames.push(frame);
    return true;
  };
}

export class FakeIn extends EventEmitter {
  isTTY = true;
  private waiting: string[] = [];
  type(text: string): void {
    this.waiting.push(text);
    this.emit('readable');
  }
  read = (): string | null => this.waiting.shift() ?? null;
  setEncoding(): void {}
  setRawMode(): void {}
  ref(): void {}
  unref(): void {}
}
